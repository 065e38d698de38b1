/** Bringing back what an earlier edition said. */
package org.setwright.editions.restoring;
