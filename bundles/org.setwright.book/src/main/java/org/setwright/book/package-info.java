/**
 * Rule books on disk: {@link org.setwright.book.BookReader} reads a folder into a {@link org.setwright.book.Book} with
 * positions and problems; {@link org.setwright.book.JobWriter} writes job cases back.
 */
package org.setwright.book;
