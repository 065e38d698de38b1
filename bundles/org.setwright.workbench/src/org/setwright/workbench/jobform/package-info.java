/**
 * The form in which a job is filled in. It follows the catalogue, and every entry becomes a small change of the job's
 * text, so that comments stay and undo works as in any editor.
 */
package org.setwright.workbench.jobform;
