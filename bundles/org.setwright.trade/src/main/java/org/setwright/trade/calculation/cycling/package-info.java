/** How often equipment starts at part load, what a cycle-rate entry means in minutes, and what cycling costs. */
package org.setwright.trade.calculation.cycling;
