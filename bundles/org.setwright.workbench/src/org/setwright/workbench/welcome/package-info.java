/** The first page: begin with the starter book, open a book, or go on with a recent one. */
package org.setwright.workbench.welcome;
