/** What was tried is kept: as a rule in a file, as a job case, as an expectation. */
package org.setwright.bench.keeping;
