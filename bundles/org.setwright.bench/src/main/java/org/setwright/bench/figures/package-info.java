/** Expressions over the answers of a job and what its settings come to, with units. */
package org.setwright.bench.figures;
