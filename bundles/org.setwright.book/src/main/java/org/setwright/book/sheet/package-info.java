/** The text of a look-up table edited row by row and cell by cell; what is not touched stays as it was written, to the character. */
package org.setwright.book.sheet;
