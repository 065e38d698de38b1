/** Whether the saved jobs would notice a mistake: makes small mistakes in the rules on purpose, and sees. */
package org.setwright.check.strength;
