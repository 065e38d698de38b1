/** What an edition is, who kept it, and why something could not be done. */
package org.setwright.editions.kept;
