package org.setwright.workbench.editions;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.setwright.book.ShopSettingText;
import org.setwright.editions.compare.RuleChange;
import org.setwright.editions.compare.SettingChange;
import org.setwright.editions.written.WrittenRule;
import org.setwright.workbench.rows.RowTree;
import org.setwright.workbench.rows.RowTree.Manner;

/** What is different between the two states that are compared, and the text of what is picked, before and after. */
final class ChangesTab {
	private static final int[] SHARES = { 55, 45 };
	private final Composite pane;
	private final Label title;
	private final RowTree tree;
	private final SidePane side;
	private Optional<Compared> shown = Optional.empty();

	/** @param picked told what a picked line is about @param opened told what an opened line is about */
	ChangesTab(Composite parent, Consumer<Object> picked, Consumer<Object> opened) {
		pane = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().margins(4, 4).applyTo(pane);
		title = new Label(pane, SWT.WRAP);
		GridDataFactory.fillDefaults().grab(true, false).hint(60, SWT.DEFAULT).applyTo(title);
		SashForm sash = new SashForm(pane, SWT.VERTICAL);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(sash);
		tree = new RowTree(sash, Messages.ChangesTab_list, ChangeRows.COLUMNS, Manner.READ);
		side = new SidePane(sash);
		sash.setWeights(SHARES);
		tree.onPick(about -> {
			beside(about);
			about.ifPresent(picked);
		}, opened);
	}

	Composite control() {
		return pane;
	}

	RowTree tree() {
		return tree;
	}

	void show(Compared now) {
		shown = Optional.of(now);
		say(now.changes().none() ? now.sides().title() + " " + Messages.ChangesTab_none : now.sides().title()); //$NON-NLS-1$
		tree.show(now.rows());
		beside(tree.picked());
	}

	/** Shows nothing but {@code words}, why. */
	void none(String words) {
		shown = Optional.empty();
		say(words);
		tree.show(List.of());
		side.show("", ""); //$NON-NLS-1$ //$NON-NLS-2$
	}

	/** @return the rule that is picked, if one is */
	Optional<RuleChange> picked() {
		return tree.picked().filter(RuleChange.class::isInstance).map(RuleChange.class::cast);
	}

	/** @return the picked rule as it was at the earlier of the two editions */
	Optional<OldRule> old() {
		return shown.flatMap(s -> s.sides().before())
				.flatMap(edition -> picked().flatMap(RuleChange::before).map(rule -> new OldRule(edition, rule.name())));
	}

	private void beside(Optional<Object> about) {
		if (about.isPresent() && about.get() instanceof RuleChange change) {
			side.show(change.before().map(WrittenRule::text).orElse(""), change.after().map(WrittenRule::text).orElse("")); //$NON-NLS-1$ //$NON-NLS-2$
		} else if (about.isPresent() && about.get() instanceof SettingChange change) {
			side.show(change.before().map(ShopSettingText::text).orElse(""), change.after().map(ShopSettingText::text).orElse("")); //$NON-NLS-1$ //$NON-NLS-2$
		} else if (about.isPresent() && about.get() instanceof FileTexts texts) {
			side.show(texts.before(), texts.after());
		} else {
			side.show("", ""); //$NON-NLS-1$ //$NON-NLS-2$
		}
	}

	private void say(String words) {
		title.setText(words.replace("&", "&&")); //$NON-NLS-1$ //$NON-NLS-2$
		pane.layout();
	}
}
