/** How far the saved jobs can be trusted to notice a slip: what they try out of the rules, and which mistakes nobody notices. */
package org.setwright.workbench.fitness;
