/** Files of the book edited in a way of their own, or as the text they are kept in. */
package org.setwright.workbench.twopage;
