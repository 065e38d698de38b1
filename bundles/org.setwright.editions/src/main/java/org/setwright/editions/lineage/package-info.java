/** Where each rule and file came from: through which editions, by whom, and why. */
package org.setwright.editions.lineage;
