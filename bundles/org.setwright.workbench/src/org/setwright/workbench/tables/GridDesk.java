package org.setwright.workbench.tables;

/** What the parts of the grid share. */
interface GridDesk {
	/** @return the table being edited */
	TableDocument table();

	/** Says a sentence on the help line. @param mistake whether it tells of one */
	void say(String sentence, boolean mistake);

	/** Told that a row or cell is looked at. @param row from 0 @param column from 0; -1 for none */
	void looked(int row, int column);
}
