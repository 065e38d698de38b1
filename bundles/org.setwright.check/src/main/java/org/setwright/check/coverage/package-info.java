/** How much of a book its saved jobs try out: rules, conditions, table rows and values of settings. */
package org.setwright.check.coverage;
