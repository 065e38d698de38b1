/**
 * A shop's job history as one CSV file: {@link org.setwright.book.history.HistoryImport} makes job files of its rows,
 * {@link org.setwright.book.history.HistoryExport} the other way round. Both go row by row, however many there are.
 */
package org.setwright.book.history;
