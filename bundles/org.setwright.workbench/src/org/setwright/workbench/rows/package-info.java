/** Lists of lines with columns, and lines below them. */
package org.setwright.workbench.rows;
