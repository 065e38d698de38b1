package org.setwright.workbench.look;

import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Table;

/** What a screen reader says of a control that has no label of its own. */
public final class Spoken {
	/** Under this key a control knows its name. */
	public static final String KEY = Spoken.class.getName();
	private static final String MORE = KEY + ".more"; //$NON-NLS-1$

	private Spoken() {
	}

	/** Has {@code control} called {@code name}, but not its rows or tabs; tests find it by that name, too. */
	public static void as(Control control, String name) {
		boolean first = control.getData(KEY) == null;
		control.setData(KEY, name);
		NativeName.name(control, plain(name));
		if (first) {
			control.getAccessible().addAccessibleListener(new AccessibleAdapter() {
				@Override
				public void getName(AccessibleEvent event) {
					event.result = event.childID == ACC.CHILDID_SELF ? plain((String) control.getData(KEY)) : event.result;
				}
			});
		}
	}

	/** @return {@code label} without the signs that say which letter is its key */
	static String plain(String label) {
		return label.replaceAll("&(\\S)", "$1"); //$NON-NLS-1$ //$NON-NLS-2$
	}

	/** Has the cell of {@code column} in the one row that is picked said, where the system tells no more than the row. @param column from 0 */
	public static void cell(Table table, int column) {
		if (table.getSelectionCount() == 1 && column >= 0 && column < table.getColumnCount()) {
			NativeName.cursor(table, table.getSelectionIndex(), table.getColumn(column));
		}
	}

	/** Has {@code words} said after the name of {@code control}, from now on until others are. */
	public static void more(Control control, String words) {
		boolean first = control.getData(MORE) == null;
		if (words.equals(control.getData(MORE))) {
			return;
		}
		control.setData(MORE, words);
		NativeName.describe(control, words);
		if (first) {
			control.getAccessible().addAccessibleListener(new AccessibleAdapter() {
				@Override
				public void getDescription(AccessibleEvent event) {
					event.result = event.childID == ACC.CHILDID_SELF ? (String) control.getData(MORE) : event.result;
				}
			});
		}
		control.getAccessible().sendEvent(ACC.EVENT_DESCRIPTION_CHANGED, null);
	}
}
