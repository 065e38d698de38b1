/**
 * The trade: what can be known about a job, what can be set on a controller, and the calculations between them.
 * {@link org.setwright.trade.Trade} lists it all. Depends on nothing but the JDK.
 */
package org.setwright.trade;
