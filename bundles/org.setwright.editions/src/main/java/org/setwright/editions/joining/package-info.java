/** Joining two lines of work rule by rule. */
package org.setwright.editions.joining;
