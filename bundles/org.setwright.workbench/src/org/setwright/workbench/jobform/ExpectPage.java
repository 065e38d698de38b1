package org.setwright.workbench.jobform;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.setwright.book.ExpectationText;
import org.setwright.book.ExpectedItem;
import org.setwright.book.ItemList;
import org.setwright.book.JobCase;
import org.setwright.book.JobCase.DecidedBy;
import org.setwright.book.JobCase.Expectation;
import org.setwright.book.JobCase.Settled;
import org.setwright.book.JobEdit;
import org.setwright.book.Position;
import org.setwright.trade.catalogue.Catalogue;
import org.setwright.trade.catalogue.JobField;
import org.setwright.trade.catalogue.Setting;
import org.setwright.workbench.look.Icon;
import org.setwright.workbench.look.Spoken;
import org.setwright.writing.uses.Thing;
import org.setwright.writing.uses.Uses;

/** What the job is expected to come to, setting by setting, and what besides. */
final class ExpectPage implements FormPage {
	private final Supplier<Catalogue> catalogue;
	private final FormDesk desk;
	private final Composite lines;
	private final Combo more;
	private List<Object> shown = List.of();

	ExpectPage(Composite parent, Supplier<Catalogue> catalogue, FormDesk desk) {
		this.catalogue = catalogue;
		this.desk = desk;
		lines = FormGrid.in(parent);
		Composite adding = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(2).spacing(12, 0).applyTo(adding);
		new Label(adding, SWT.NONE).setText(Messages.ExpectPage_more);
		more = new Combo(adding, SWT.READ_ONLY | SWT.DROP_DOWN);
		more.setVisibleItemCount(20);
		Spoken.as(more, Messages.ExpectPage_more);
		more.addListener(SWT.MouseVerticalWheel, e -> e.doit = false);
		more.addListener(SWT.Selection, e -> catalogue.get().settingLabelled(more.getText())
				.ifPresent(s -> desk.edit(new JobEdit.Expected(s, new JobCase.Gap(Position.whole("")))))); //$NON-NLS-1$
	}

	@Override
	public void show(JobCase job) {
		List<Object> now = new ArrayList<>();
		job.expected().forEach((setting, expectation) -> now.add(setting.label() + expectation.text()));
		job.items().forEach(item -> now.add(item.list() + item.text()));
		if (!now.equals(shown)) {
			shown = now;
			for (Control old : lines.getChildren()) {
				old.dispose();
			}
			job.expected().forEach(this::line);
			job.items().forEach(this::line);
			more.setItems(catalogue.get().settings().stream().filter(s -> !job.expected().containsKey(s)).map(Setting::label).toArray(String[]::new));
			lines.requestLayout();
		}
	}

	private void line(Setting setting, Expectation expectation) {
		Optional<DecidedBy> decided = Optional.of(expectation).filter(DecidedBy.class::isInstance).map(DecidedBy.class::cast);
		String expected = decided.map(d -> d.is().map(Expectation::text).orElse("")).orElseGet(expectation::text); //$NON-NLS-1$
		Label question = FormGrid.ask(lines, setting.label(), setting.meaning());
		List<String> offered = ExpectationText.offered(setting);
		boolean listed = !setting.domain().listed().isEmpty();
		Combo value = new Combo(lines, SWT.DROP_DOWN | (listed ? SWT.READ_ONLY : SWT.NONE));
		value.setItems(offered.toArray(String[]::new));
		if (!expected.isEmpty() && value.indexOf(expected) < 0) {
			value.add(expected);
		}
		value.setText(expected);
		desk.about(question, value, () -> new Thing.OfSetting(setting));
		Spoken.as(value, NLS.bind(Messages.ExpectPage_spoken, setting.label()));
		value.addListener(SWT.MouseVerticalWheel, e -> e.doit = false);
		value.addListener(SWT.FocusIn, e -> desk.say(NLS.bind(Messages.FactPage_help, setting.meaning(), setting.domain().allowed()), false));
		for (int taken : new int[] { SWT.Selection, SWT.DefaultSelection, SWT.FocusOut }) {
			value.addListener(taken, e -> take(setting, expected, decided, value.getText()));
		}
		FormGrid.field(value);
		remove(new JobEdit.NotExpected(setting));
		decided.ifPresent(d -> decidedBy(setting, d));
	}

	private void decidedBy(Setting setting, DecidedBy decided) {
		Label question = FormGrid.ask(lines, Messages.ExpectPage_decidedBy, Messages.ExpectPage_decidedByHelp);
		desk.about(question, readOnly(decided.rule()), () -> new Thing.OfRule(decided.rule()));
		remove(decided.is().<JobEdit>map(is -> new JobEdit.Expected(setting, is)).orElse(new JobEdit.NotExpected(setting)));
	}

	private void line(ExpectedItem item) {
		Label question = FormGrid.ask(lines, heading(item.list()), Messages.ExpectPage_itemHelp);
		Control words = readOnly(item.text());
		Uses.expected(item).ifPresent(thing -> desk.about(question, words, () -> thing));
		remove(new JobEdit.ItemNotExpected(item));
	}

	private static String heading(ItemList list) {
		return switch (list) {
			case CAUTIONS -> Messages.ExpectPage_caution;
			case NO_CAUTIONS -> Messages.ExpectPage_noCaution;
			case START_UP -> Messages.ExpectPage_startUp;
			case PERHAPS_START_UP -> Messages.ExpectPage_perhapsStartUp;
			case NO_START_UP -> Messages.ExpectPage_noStartUp;
			case FINDINGS -> Messages.ExpectPage_finding;
			case NO_FINDINGS -> Messages.ExpectPage_noFinding;
		};
	}

	private Control readOnly(String text) {
		Text words = new Text(lines, SWT.READ_ONLY | SWT.SINGLE | SWT.BORDER);
		words.setText(text);
		Spoken.as(words, NLS.bind(Messages.ExpectPage_spoken, text));
		FormGrid.field(words);
		return words;
	}

	private void remove(JobEdit edit) {
		Button remove = new Button(lines, SWT.PUSH | SWT.FLAT);
		remove.setImage(Icon.REMOVE.image());
		remove.setText(Messages.ListPage_remove);
		remove.addListener(SWT.Selection, e -> desk.edit(edit));
	}

	/** A rule that has to decide stays with the value that is typed. */
	private void take(Setting setting, String before, Optional<DecidedBy> decided, String text) {
		if (text.isBlank() || text.strip().equals(before)) {
			return;
		}
		Optional<Expectation> typed = ExpectationText.read(setting, text, Position.whole("")) //$NON-NLS-1$
				.map(e -> e instanceof Settled s && decided.isPresent() ? new DecidedBy(Optional.of(s), decided.get().rule(), s.at()) : e);
		typed.ifPresentOrElse((Expectation e) -> desk.edit(new JobEdit.Expected(setting, e)),
				() -> desk.say(NLS.bind(Messages.FieldReading_refused, text, setting.domain().allowed()), true));
	}

	@Override
	public void focus(JobField field) {
		lines.setFocus();
	}
}
