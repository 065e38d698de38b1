/** What lies on the bench: the book, the job, and what has been tried on both. */
package org.setwright.bench.hand;
