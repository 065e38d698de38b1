/** The house, where it stands, who lives in it, and what energy costs there. */
package org.setwright.trade.house;
