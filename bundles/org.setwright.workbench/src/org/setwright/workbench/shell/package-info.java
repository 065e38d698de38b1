/** The window itself: how it starts, its perspectives and menus. */
package org.setwright.workbench.shell;
