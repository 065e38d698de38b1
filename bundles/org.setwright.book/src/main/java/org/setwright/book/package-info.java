/**
 * Rule books on disk. {@link org.setwright.book.BookReader} reads a folder into a {@link org.setwright.book.Book} with
 * positions and problems; {@link org.setwright.book.JobReader} and {@link org.setwright.book.TableReader} read one text,
 * also while it is being typed. {@link org.setwright.book.JobWriter} makes a {@link org.setwright.book.JobEdit} in a job
 * file and keeps what people wrote; {@link org.setwright.book.AtomicFile} puts the text on the disk.
 */
package org.setwright.book;
