package org.setwright.workbench.jobform;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.setwright.book.JobCase;
import org.setwright.book.JobEdit;
import org.setwright.trade.catalogue.Answer;
import org.setwright.trade.catalogue.Domain;
import org.setwright.trade.catalogue.Fact;
import org.setwright.trade.catalogue.FactKind;
import org.setwright.trade.catalogue.Field;
import org.setwright.trade.catalogue.JobField;
import org.setwright.trade.catalogue.Unit;
import org.setwright.trade.catalogue.UnitSystem;
import org.setwright.trade.catalogue.Value;
import org.setwright.workbench.look.Icon;
import org.setwright.workbench.look.Spoken;
import org.setwright.writing.uses.Uses;

/** The questions about one fact. */
final class FactPage implements FormPage {
	private final FactKind kind;
	private final int item;
	private final FormDesk desk;
	private final Map<Field, FieldInput> inputs = new LinkedHashMap<>();
	private final Map<Field, Answer<Value>> answers = new HashMap<>();
	private final Composite grid;

	/** @param grid where the questions go @param item which of several facts of the kind, from 0 */
	FactPage(Composite grid, FactKind kind, int item, FormDesk desk) {
		this.grid = grid;
		this.kind = kind;
		this.item = item;
		this.desk = desk;
		kind.fields().stream().filter(f -> f.calculation().isEmpty()).forEach(this::line);
	}

	private void line(Field field) {
		Label question = FormGrid.ask(grid, field.label(), field.meaning());
		FieldInput input = input(field);
		inputs.put(field, input);
		Spoken.as(input.control(), NLS.bind(Messages.FactPage_spoken, kind.label(), field.label()));
		input.explain(field.meaning());
		input.control().addListener(SWT.FocusIn, e -> desk.say(help(field), false));
		desk.about(question, input.control(), () -> Uses.value(kind, field, answers.getOrDefault(field, Answer.unknown())));
		FormGrid.field(input.control());
		FormGrid.remark(grid, unit(field.domain(), desk.units()), field.domain().listed().isEmpty()
				? Optional.of(unknown(field)) : Optional.empty());
	}

	/** Takes an answer back; that nobody has looked it up is a choice like any other. */
	private FormGrid.Push unknown(Field field) {
		return new FormGrid.Push(Icon.UNKNOWN, NLS.bind(Messages.FactPage_unknownSpoken, kind.label(), field.label()),
				() -> desk.edit(new JobEdit.Answered(JobField.of(kind, item, field), Answer.unknown())));
	}

	private FieldInput input(Field field) {
		FieldInput.Listener listener = new FieldInput.Listener() {
			@Override
			public void answered(Answer<Value> answer) {
				desk.edit(new JobEdit.Answered(JobField.of(kind, item, field), answer));
			}

			@Override
			public void refused(String refusal) {
				desk.say(refusal.isEmpty() ? help(field) : refusal, !refusal.isEmpty());
			}
		};
		return field.domain().listed().isEmpty() ? new TextInput(grid, field.domain(), desk.units(), listener)
				: new ChoiceInput(grid, field.domain().listed(), listener);
	}

	/** @return the meaning of the field and what may be written */
	static String help(Field field) {
		return field.domain().listed().isEmpty()
				? NLS.bind(Messages.FactPage_help, field.meaning(), field.domain().allowed()) : field.meaning();
	}

	/** @return what to write the unit as, when there is one */
	static String unit(Domain domain, UnitSystem shown) {
		return domain instanceof Domain.Measure measure && measure.unit() != Unit.NONE
				? NLS.bind(Messages.FactPage_unit, shown.unit(measure.unit()).symbol()) : ""; //$NON-NLS-1$
	}

	@Override
	public void show(JobCase job) {
		Optional<Fact> fact = job.job().entry(kind).facts().stream().skip(item).findFirst();
		inputs.forEach((field, input) -> {
			answers.put(field, fact.map(f -> kind.answer(f, field)).orElse(Answer.unknown()));
			input.show(answers.get(field));
		});
	}

	/** Lets the questions be answered, or not. */
	void enable(boolean enabled) {
		inputs.values().forEach(i -> i.control().setEnabled(enabled));
	}

	@Override
	public void focus(JobField field) {
		field.field().map(inputs::get).ifPresent(i -> i.control().setFocus());
	}
}
