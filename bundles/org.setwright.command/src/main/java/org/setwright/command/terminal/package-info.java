/**
 * The terminal: {@link org.setwright.command.terminal.Page} lays out text that fits it,
 * {@link org.setwright.command.terminal.Surroundings} says what it can show.
 */
package org.setwright.command.terminal;
