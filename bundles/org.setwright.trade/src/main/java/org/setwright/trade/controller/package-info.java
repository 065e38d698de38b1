/** The wall controller to be set, its terminals, and the control it replaces. */
package org.setwright.trade.controller;
