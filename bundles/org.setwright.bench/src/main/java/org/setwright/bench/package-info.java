/**
 * The trial bench: a place to try facts and rules line by line over a book and a job. Nothing here touches the book until it is
 * kept. {@link org.setwright.bench.Session} is where to start; it is immutable, and every line gives the next one.
 */
package org.setwright.bench;
