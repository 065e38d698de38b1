/** Questions about what did not happen: rules that stayed silent, other values, other jobs, and answers that matter. */
package org.setwright.command.asking;
