/** How things look: signs, colours and type, in light and in dark. */
package org.setwright.workbench.look;
