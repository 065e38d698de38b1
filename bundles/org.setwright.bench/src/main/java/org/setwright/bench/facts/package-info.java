/** Lines that state or change a fact of the job. */
package org.setwright.bench.facts;
