/** Lists of lines with columns, and lines below them; and what lists of any kind have in common: folding, sorting, searching, staying picked. */
package org.setwright.workbench.rows;
