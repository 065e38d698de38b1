/**
 * The headless program: {@link org.setwright.command.Main} takes words, hands the book to the engine and prints what
 * it answers. Each word has a package of its own.
 */
package org.setwright.command;
