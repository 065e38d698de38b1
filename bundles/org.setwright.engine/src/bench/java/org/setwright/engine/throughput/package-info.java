/** Jobs per second: this program against plain Drools and against Java written for one book, on the same rules and jobs. */
package org.setwright.engine.throughput;
