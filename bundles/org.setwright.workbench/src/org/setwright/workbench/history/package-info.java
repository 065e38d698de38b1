/** A shop's own list of jobs as one CSV file: into the job files of a book, and out of them. */
package org.setwright.workbench.history;
