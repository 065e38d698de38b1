/** Beside each rule in its editor: what becomes of it on the saved jobs, and which jobs those are. */
package org.setwright.workbench.counts;
