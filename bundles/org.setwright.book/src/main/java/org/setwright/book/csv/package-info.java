/** Comma-separated text read into cells, every one with its place. */
package org.setwright.book.csv;
