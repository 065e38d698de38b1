/** Reports of a case check for others to read: one HTML page for people, XML for build servers. */
package org.setwright.check.report;
