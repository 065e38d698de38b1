/** From a word in a rule to where it comes from and where it is used, and giving it another name everywhere at once. */
package org.setwright.workbench.uses;
