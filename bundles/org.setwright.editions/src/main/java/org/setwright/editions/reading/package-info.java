/** Reading a book as it was at any edition, or as it is in hand. */
package org.setwright.editions.reading;
