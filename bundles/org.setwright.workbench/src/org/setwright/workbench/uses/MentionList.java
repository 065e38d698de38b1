package org.setwright.workbench.uses;

import java.util.List;
import org.eclipse.jface.dialogs.PopupDialog;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.ui.IWorkbenchWindow;
import org.setwright.book.Position;
import org.setwright.book.ShopSettings;
import org.setwright.workbench.folder.Places;
import org.setwright.workbench.look.Icon;
import org.setwright.workbench.look.Spoken;
import org.setwright.workbench.look.Type;
import org.setwright.writing.Manuscript;
import org.setwright.writing.text.Lines;
import org.setwright.writing.uses.Mention;

/** A list of places in the book; Enter or double-click goes there. */
public final class MentionList extends PopupDialog {
	private static final int LETTERS = 90;
	private static final int LINES = 16;
	private final IWorkbenchWindow window;
	private final Manuscript manuscript;
	private final List<Mention> mentions;
	private Table table;

	private MentionList(IWorkbenchWindow window, String title, Manuscript manuscript, List<Mention> mentions) {
		super(window.getShell(), SWT.RESIZE, true, true, false, false, false, title, Messages.MentionList_hint);
		this.window = window;
		this.manuscript = manuscript;
		this.mentions = mentions;
	}

	/** Shows {@code mentions}; goes straight to the only one when {@code atOnce}. @return the list, or the window when there is none */
	static Shell show(IWorkbenchWindow window, String title, Manuscript manuscript, List<Mention> mentions, boolean atOnce) {
		if (atOnce && mentions.size() == 1) {
			open(window, manuscript, mentions.get(0));
			return window.getShell();
		}
		MentionList list = new MentionList(window, title, manuscript, mentions);
		list.open();
		return list.getShell();
	}

	static void open(IWorkbenchWindow window, Manuscript manuscript, Mention mention) {
		String text = manuscript.text(mention.path());
		int start = Math.min(mention.start(), text.length());
		Places.open(window.getActivePage(), new Position(mention.path(), Lines.number(text, start), start - Lines.startAt(text, start) + 1));
	}

	@Override
	protected Control createDialogArea(Composite parent) {
		table = new Table(parent, SWT.SINGLE | SWT.FULL_SELECTION | SWT.V_SCROLL | SWT.H_SCROLL);
		Spoken.as(table, Messages.MentionList_name);
		for (Mention mention : mentions) {
			String text = manuscript.text(mention.path());
			int start = Math.min(mention.start(), text.length());
			TableItem item = new TableItem(table, SWT.NONE);
			item.setImage(icon(mention.path()).image());
			String line = text.substring(Lines.startAt(text, start), Lines.end(text, start)).strip();
			item.setText(NLS.bind(mention.defines() ? Messages.MentionList_from : Messages.MentionList_line,
					new Object[] { mention.where(), mention.path(), Lines.number(text, start), line }));
			item.setData(mention);
		}
		if (table.getItemCount() > 0) {
			table.setSelection(0);
		}
		table.addListener(SWT.DefaultSelection, e -> {
			Mention mention = (Mention) e.item.getData();
			close();
			open(window, manuscript, mention);
		});
		return table;
	}

	private static Icon icon(String path) {
		return path.startsWith("jobs/") ? Icon.JOB : path.startsWith("tables/") ? Icon.TABLE //$NON-NLS-1$ //$NON-NLS-2$
				: path.equals(ShopSettings.FILE) ? Icon.SETUP : Icon.RULE;
	}

	@Override
	protected Control getFocusControl() {
		return table;
	}

	@Override
	protected Point getDefaultSize() {
		return Type.room(getParentShell(), LETTERS, LINES);
	}
}
