/** The rule being looked at, read aloud as trade English. */
package org.setwright.workbench.aloud;
