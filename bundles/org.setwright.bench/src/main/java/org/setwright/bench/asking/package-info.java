/** Questions about the job at hand: what is settled, why, why not, what is unknown, what would change it. */
package org.setwright.bench.asking;
