/** What a change of rules means for the saved jobs, and which change is responsible: found by running the jobs again. */
package org.setwright.editions.impact;
