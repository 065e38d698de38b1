/** Since which edition, and by which change, a job comes to a value. */
package org.setwright.editions.since;
