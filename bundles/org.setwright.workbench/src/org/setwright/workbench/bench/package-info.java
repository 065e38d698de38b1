/** The trial bench: what if? Lines over the book and job in hand, what changed after each, and what is kept of it. */
package org.setwright.workbench.bench;
