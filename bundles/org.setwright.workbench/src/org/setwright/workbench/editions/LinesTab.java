package org.setwright.workbench.editions;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CTabFolder;
import org.eclipse.swt.custom.CTabItem;
import org.eclipse.swt.widgets.Button;
import org.setwright.editions.OtherLines.Line;
import org.setwright.workbench.rows.RowTree;

/** Lines of work: trials beside the practice that is in force. Begins one, goes over to one, joins one with what is open. */
final class LinesTab {
	private final ListPane pane;
	private final Button over;
	private final Button join;

	/**
	 * @param begin asked to begin a line
	 * @param over told which to go over to
	 * @param join told which to join with the open one
	 * @param receive asked to get what is new at another place
	 * @param send asked to send the open line to another place
	 */
	LinesTab(CTabFolder tabs, Runnable begin, Consumer<Line> over, Consumer<Line> join, Runnable receive, Runnable send) {
		pane = new ListPane(tabs, Messages.LinesTab_list, LineRows.COLUMNS);
		pane.button(Messages.LinesTab_begin, begin);
		this.over = pane.button(Messages.LinesTab_over, () -> picked().ifPresent(over));
		this.join = pane.button(Messages.LinesTab_join, () -> picked().ifPresent(join));
		pane.button(Messages.LinesTab_receive, receive);
		pane.button(Messages.LinesTab_send, send);
		pane.tree().viewer().addSelectionChangedListener(e -> enable());
		CTabItem tab = new CTabItem(tabs, SWT.NONE);
		tab.setText(Messages.LinesTab_title);
		tab.setControl(pane.control());
		enable();
	}

	RowTree tree() {
		return pane.tree();
	}

	void show(List<Line> lines) {
		pane.show(Messages.LinesTab_about, LineRows.of(lines));
		enable();
	}

	private Optional<Line> picked() {
		return pane.tree().picked().map(Line.class::cast);
	}

	private void enable() {
		over.setEnabled(picked().filter(l -> !l.open() && !l.elsewhere()).isPresent());
		join.setEnabled(picked().filter(l -> !l.open()).isPresent());
	}
}
