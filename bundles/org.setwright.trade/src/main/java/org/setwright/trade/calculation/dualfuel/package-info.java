/** When a burner takes over from a heat pump: what a unit of delivered heat costs either way. */
package org.setwright.trade.calculation.dualfuel;
