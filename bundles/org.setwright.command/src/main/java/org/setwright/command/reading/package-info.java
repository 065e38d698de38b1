/** The word "read": rules and rows of tables as trade English. */
package org.setwright.command.reading;
