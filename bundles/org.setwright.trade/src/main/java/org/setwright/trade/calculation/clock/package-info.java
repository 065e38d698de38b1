/** The controller's clock: daylight-saving changes, schedules that meet them, and power cuts. */
package org.setwright.trade.calculation.clock;
