/** How much outdoor air a dwelling needs, and how long a fan has to run for it. */
package org.setwright.trade.calculation.ventilation;
