/** The reasons behind a setting in words, for reports and commands. */
package org.setwright.check.reasons;
