/** How far a rule book can be trusted: its job cases checked, and what they reach. */
package org.setwright.check;
