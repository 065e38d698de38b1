/** What could be typed next, with its meaning. */
package org.setwright.bench.completing;
