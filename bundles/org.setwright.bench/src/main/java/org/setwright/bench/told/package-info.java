/** What the bench tells: rows of words, and where in a line something could not be read. */
package org.setwright.bench.told;
