/** The editions of the open book: what changed, what it means for the jobs, who answers for it, and who signed it. */
package org.setwright.workbench.editions;
