/** What a heat pump can deliver against what the building loses: load line, capacity, balance point, auxiliary heat. */
package org.setwright.trade.calculation.heatpump;
