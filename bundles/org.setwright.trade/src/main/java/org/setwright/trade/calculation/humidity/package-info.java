/** Moist air indoors: dew point, condensation on glass, and how humid a house may be in winter. */
package org.setwright.trade.calculation.humidity;
