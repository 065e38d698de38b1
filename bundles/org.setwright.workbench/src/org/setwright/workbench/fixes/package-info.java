/** Mending with a key: what can be done about a problem, or about the rule under the cursor, and doing it so that it can be undone. */
package org.setwright.workbench.fixes;
