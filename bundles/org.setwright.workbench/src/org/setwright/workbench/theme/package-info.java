/** Light and dark. */
package org.setwright.workbench.theme;
