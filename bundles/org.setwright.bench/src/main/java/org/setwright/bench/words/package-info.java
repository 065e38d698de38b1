/** Pieces of what was typed, and the things of the trade and of a book that names mean. */
package org.setwright.bench.words;
