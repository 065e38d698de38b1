/**
 * The 24 V control circuit: what the transformer can carry, and what the wire loses on the way. Nothing here applies to
 * line voltage: 120 V and 240 V wiring is a licensed electrician's work.
 */
package org.setwright.trade.calculation.circuit;
