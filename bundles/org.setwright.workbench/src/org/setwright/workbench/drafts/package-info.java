/** Nothing typed is lost: unsaved texts are kept in the window's own notes, and offered again after a crash. */
package org.setwright.workbench.drafts;
