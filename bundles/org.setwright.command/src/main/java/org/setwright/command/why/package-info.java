/** The word "why": the reasons behind a setting, from the value down to the job's own words. */
package org.setwright.command.why;
