/** What is found in the wall and at its other end: power, transformers, conductors, terminals. */
package org.setwright.trade.wiring;
