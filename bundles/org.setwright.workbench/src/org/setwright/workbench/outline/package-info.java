/** The rules of the active editor at a glance. */
package org.setwright.workbench.outline;
