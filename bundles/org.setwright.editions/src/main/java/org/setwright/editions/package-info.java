/** Editions of a book: history, comparison and impact, lines of work, remarks and sign-off. Begin with {@link org.setwright.editions.EditionsOf}. */
package org.setwright.editions;
