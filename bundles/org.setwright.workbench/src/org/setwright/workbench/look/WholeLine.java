package org.setwright.workbench.look;

import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.eclipse.jface.dialogs.PopupDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Item;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;

/** The picked lines of a list with everything that stands in them, whatever the columns cut off; Esc closes it. */
public final class WholeLine extends PopupDialog {
	private static final int LETTERS = 70;
	private static final int LINES = 14;
	private final Control list;
	private final String words;
	private Text text;

	private WholeLine(Control list, String words) {
		super(list.getShell(), SWT.RESIZE, true, false, false, false, false, Messages.WholeLine_title, Messages.WholeLine_hint);
		this.list = list;
		this.words = words;
	}

	/** Opens it for what is picked in {@code focus}; does nothing when that is no list or nothing is picked in it. @param focus may be null */
	public static void show(Control focus) {
		String words = words(focus);
		if (!words.isEmpty()) {
			new WholeLine(focus, words).open();
		}
	}

	/** @param list may be null @return each cell that says something after its heading, one a line; empty when nothing is picked */
	public static String words(Control list) {
		if (list instanceof Table table) {
			return Stream.of(table.getSelection()).map((TableItem i) -> words(table.getColumns(), i::getText, i.getText()))
					.collect(Collectors.joining("\n\n")); //$NON-NLS-1$
		} else if (list instanceof Tree tree) {
			return Stream.of(tree.getSelection()).map((TreeItem i) -> words(tree.getColumns(), i::getText, i.getText()))
					.collect(Collectors.joining("\n\n")); //$NON-NLS-1$
		}
		return ""; //$NON-NLS-1$
	}

	private static String words(Item[] columns, IntFunction<String> cells, String only) {
		return columns.length == 0 ? only
				: IntStream.range(0, columns.length).filter(i -> !cells.apply(i).isBlank())
						.mapToObj(i -> columns[i].getText().isBlank() ? cells.apply(i) : columns[i].getText() + ": " + cells.apply(i)) //$NON-NLS-1$
						.collect(Collectors.joining("\n")); //$NON-NLS-1$
	}

	@Override
	protected Control createDialogArea(Composite parent) {
		text = new Text(parent, SWT.MULTI | SWT.READ_ONLY | SWT.WRAP | SWT.V_SCROLL);
		text.setText(words);
		Spoken.as(text, Messages.WholeLine_title);
		return text;
	}

	@Override
	protected Control getFocusControl() {
		return text;
	}

	@Override
	protected Point getDefaultSize() {
		return Type.room(list, LETTERS, LINES);
	}
}
