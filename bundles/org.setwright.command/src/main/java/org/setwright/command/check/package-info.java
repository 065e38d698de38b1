/** The word "check": whether a book can run, and what is wrong with it. */
package org.setwright.command.check;
