package org.setwright.workbench.history;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.jface.fieldassist.ComboContentAdapter;
import org.eclipse.jface.fieldassist.ContentProposal;
import org.eclipse.jface.fieldassist.ContentProposalAdapter;
import org.eclipse.jface.fieldassist.IContentProposal;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.setwright.book.history.Mapping;
import org.setwright.book.history.Meaning;
import org.setwright.trade.catalogue.Catalogue;
import org.setwright.workbench.look.Spoken;
import org.setwright.workbench.look.Type;

/** What one column means: its meaning, the unit of its numbers, and what the words in it stand for. */
final class MeaningPane {
	private static final int LINES = 2;
	private static final int WORDS_HEIGHT = 140;
	private final Catalogue catalogue;
	private final List<String> names;
	private final Composite pane;
	private final Label heading;
	private final Combo means;
	private final Combo unit;
	private final Label says;
	private final WordTable words;
	private final Consumer<Mapping.Column> changed;
	private Mapping.Column column;
	private String of = ""; //$NON-NLS-1$
	private List<String> cells = List.of();
	private boolean showing;

	/** @param catalogue what the book may speak of */
	MeaningPane(Composite parent, Catalogue catalogue, Consumer<Mapping.Column> changed) {
		this.catalogue = catalogue;
		names = Meaning.all(catalogue).stream().map(Meaning::name).toList();
		column = new Mapping.Column(names.get(0));
		this.changed = changed;
		pane = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(4).applyTo(pane);
		heading = new Label(pane, SWT.NONE);
		GridDataFactory.fillDefaults().align(SWT.FILL, SWT.CENTER).applyTo(heading);
		means = combo(Messages.MeaningPane_means);
		means.setItems(names.toArray(String[]::new));
		GridDataFactory.fillDefaults().grab(true, false).applyTo(means);
		new Label(pane, SWT.NONE).setText(Messages.MeaningPane_unit);
		unit = combo(Messages.MeaningPane_unit);
		says = new Label(pane, SWT.WRAP);
		GridDataFactory.fillDefaults().span(4, 1).grab(true, false).hint(400, Type.room(pane, 1, LINES).y).applyTo(says);
		words = new WordTable(pane, catalogue, (written, meaning) -> become(column.reading(written, meaning)));
		GridDataFactory.fillDefaults().span(4, 1).grab(true, true).hint(SWT.DEFAULT, WORDS_HEIGHT).applyTo(words.control());
		proposals();
	}

	private Combo combo(String name) {
		Combo combo = new Combo(pane, SWT.DROP_DOWN);
		Spoken.as(combo, name);
		combo.addListener(SWT.Modify, e -> typed());
		return combo;
	}

	/** Whatever part of a name is typed, the names that hold it are offered. */
	private void proposals() {
		ContentProposalAdapter offered = new ContentProposalAdapter(means, new ComboContentAdapter(), (text, at) -> names.stream()
				.filter(n -> n.toLowerCase(Locale.ROOT).contains(text.substring(0, at).toLowerCase(Locale.ROOT).strip()))
				.map(n -> new ContentProposal(n, n, Meaning.of(n, catalogue).map(Meaning::says).orElse(n))).toArray(IContentProposal[]::new), null, null);
		offered.setProposalAcceptanceStyle(ContentProposalAdapter.PROPOSAL_REPLACE);
	}

	Control control() {
		return pane;
	}

	/** @param now what is said of the column headed {@code of} @param written what stands in its first rows */
	void show(String of, Mapping.Column now, List<String> written) {
		showing = true;
		this.of = of;
		column = now;
		cells = written;
		heading.setText(NLS.bind(Messages.MeaningPane_heading, of));
		if (!means.getText().equals(now.to())) {
			means.setText(now.to());
		}
		Optional<Meaning> meaning = Meaning.of(now.to(), catalogue);
		List<String> units = meaning.map(Meaning::units).orElse(List.of());
		unit.setItems(units.toArray(String[]::new));
		unit.setText(now.unit());
		unit.setEnabled(!units.isEmpty());
		says.setText(meaning.map(m -> m.says() + " " + NLS.bind(Messages.MeaningPane_allowed, m.allowed())).orElse(Messages.MeaningPane_unknown)); //$NON-NLS-1$
		words.show(of, meaning, now, written);
		pane.layout();
		showing = false;
	}

	private void typed() {
		if (!showing) {
			String to = means.getText().strip();
			boolean same = to.equals(column.to());
			become(new Mapping.Column(to, same ? column.values() : Map.of(), same ? unit.getText().strip() : "")); //$NON-NLS-1$
		}
	}

	private void become(Mapping.Column now) {
		if (!now.equals(column)) {
			boolean meant = !now.to().equals(column.to());
			column = now;
			changed.accept(now);
			if (meant) {
				show(of, now, cells);
			} else {
				words.show(of, Meaning.of(now.to(), catalogue), now, cells);
			}
		}
	}
}
