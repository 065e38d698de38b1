/** Remarks on rules and decisions, and signing an edition off. */
package org.setwright.editions.signing;
