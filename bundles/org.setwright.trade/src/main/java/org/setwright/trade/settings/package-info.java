/** Everything that can be set on a controller: {@link org.setwright.trade.settings.Settings} lists it, a file per heading. */
package org.setwright.trade.settings;
