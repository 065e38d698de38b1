/** What hangs on the equipment: humidity, fresh air, filter, zones, and the sensors beyond the controller's own. */
package org.setwright.trade.accessories;
