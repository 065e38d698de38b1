/** The words "import" and "export": a shop's job history as one CSV file, into job files and out of them. */
package org.setwright.command.history;
