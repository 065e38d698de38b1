/** The word "words": what the facts and settings of the trade are called, what they mean and what they may be. */
package org.setwright.command.words;
