/**
 * Facts that are computed from stated ones, so that rules can use them like any other. Each record says what it needs, by
 * which formula, and from which source; its {@code of} gives none when the calculation does not apply to the job, unknown
 * while that depends on something nobody has looked up. When everything it needs is known, every answer is known.
 */
package org.setwright.trade.calculation.facts;
