/** The text of one file with its lines: where an offset stands, and how bytes become text. */
package org.setwright.book.text;
