/**
 * The trade's calculations, usable alone: pure functions on plain numbers whose unit is part of the name, each with its
 * source. One package per topic; {@link org.setwright.trade.calculation.Range} is what they check their inputs with.
 * Figures are for choosing settings, not for designing a system: local codes, the maker's instructions and licensed
 * practice go first.
 */
package org.setwright.trade.calculation;
