/** Air as the carrier of heat: airflow for a cooling capacity, temperature rise, thin air at altitude, electric heat. */
package org.setwright.trade.calculation.airflow;
