/** Rules and table rows as they are written, told apart without judging whether they are right: old editions may hold faults. */
package org.setwright.editions.written;
