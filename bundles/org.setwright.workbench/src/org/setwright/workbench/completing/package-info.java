/** Completion in the texts of jobs, tables and settings: what may come next, with its meaning beside it. */
package org.setwright.workbench.completing;
