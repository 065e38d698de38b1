/** What becomes of each rule on the saved jobs, kept up to date while the rules are being typed. */
package org.setwright.writing.live;
