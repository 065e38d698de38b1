/**
 * What lies on the desk: the open rule book with its results, and the job and setting being looked at. Every view
 * listens to the one {@link org.setwright.workbench.desk.Desk}.
 */
package org.setwright.workbench.desk;
