/** The words about editions: history, keeping, comparing, who answers, since when, trials, joining, exchanging, remarks, signing. */
package org.setwright.command.editions;
