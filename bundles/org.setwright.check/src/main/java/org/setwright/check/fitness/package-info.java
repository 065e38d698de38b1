/** Whether a book reaches what it demands of itself in book.yaml. */
package org.setwright.check.fitness;
