/** Is the book fit to go out? Every job case, and each thing it expects: met, not met or not asked. */
package org.setwright.workbench.cases;
