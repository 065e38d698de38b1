/** The word "setup": what to set on one job, or on all, and whether that is what the job expects. */
package org.setwright.command.setup;
