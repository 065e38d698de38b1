package org.setwright.workbench.reasons;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.jface.fieldassist.AutoCompleteField;
import org.eclipse.jface.fieldassist.ComboContentAdapter;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.setwright.engine.Edition;
import org.setwright.trade.catalogue.Setting;
import org.setwright.trade.catalogue.Value;
import org.setwright.workbench.desk.DeskState;
import org.setwright.workbench.look.Spoken;

/** Asks why a rule does not speak, or why the setting looked at does not come to another value. */
final class QuestionRow {
	private static final int LINES = 20;
	private final Button aboutRule;
	private final Button aboutValue;
	private final Combo rules;
	private final Combo values;
	private final AutoCompleteField nearest;
	private final Consumer<String> pickedRule;
	private final Runnable asked;
	private Optional<Edition> edition = Optional.empty();
	private Optional<Setting> setting = Optional.empty();
	private Optional<String> followed = Optional.empty();

	/** @param pickedRule told the name of a rule that was picked here @param asked told that the question is another one */
	QuestionRow(Composite parent, Consumer<String> pickedRule, Runnable asked) {
		this.pickedRule = pickedRule;
		this.asked = asked;
		Composite row = new Composite(parent, SWT.NONE);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(row);
		GridLayoutFactory.fillDefaults().numColumns(2).spacing(6, 2).applyTo(row);
		aboutRule = choice(row, Messages.QuestionRow_rule);
		rules = combo(row, Messages.QuestionRow_ruleName);
		nearest = new AutoCompleteField(rules, new ComboContentAdapter());
		aboutValue = choice(row, Messages.QuestionRow_noSetting);
		values = combo(row, Messages.QuestionRow_valueName);
		aboutRule.setSelection(true);
		rules.addListener(SWT.Selection, e -> pick(aboutRule));
		rules.addListener(SWT.DefaultSelection, e -> pick(aboutRule));
		rules.addListener(SWT.FocusOut, e -> rule().filter(r -> !followed.equals(Optional.of(r.name()))).ifPresent(r -> pick(aboutRule)));
		values.addListener(SWT.Selection, e -> pick(aboutValue));
		values.addListener(SWT.DefaultSelection, e -> pick(aboutValue));
	}

	private Button choice(Composite parent, String text) {
		Button button = new Button(parent, SWT.RADIO);
		button.setText(text);
		button.addListener(SWT.Selection, e -> {
			if (button.getSelection()) {
				asked.run();
			}
		});
		return button;
	}

	private static Combo combo(Composite parent, String name) {
		Combo combo = new Combo(parent, SWT.DROP_DOWN);
		combo.setVisibleItemCount(LINES);
		Spoken.as(combo, name);
		GridDataFactory.fillDefaults().grab(true, false).hint(80, SWT.DEFAULT).applyTo(combo);
		return combo;
	}

	private void pick(Button about) {
		aboutRule.setSelection(about == aboutRule);
		aboutValue.setSelection(about == aboutValue);
		if (about == aboutRule) {
			followed = rule().map(r -> r.name());
			followed.ifPresent(pickedRule);
		}
		asked.run();
	}

	/** Follows what is looked at: the rule under the cursor, and the setting picked. */
	void follow(DeskState now) {
		Optional<Edition> latest = now.latest().flatMap(e -> e.rules().edition());
		if (!latest.equals(edition)) {
			edition = latest;
			String kept = rules.getText();
			String[] names = latest.map(e -> e.rules().stream().map(r -> r.name()).sorted().toArray(String[]::new)).orElse(new String[0]);
			rules.setItems(names);
			rules.setText(kept);
			nearest.setProposals(names);
		}
		if (!now.rule().equals(followed)) {
			followed = now.rule();
			rules.setText(followed.orElse("")); //$NON-NLS-1$
			pick(aboutRule);
		}
		if (!now.setting().equals(setting)) {
			setting = now.setting();
			aboutValue.setText(setting.map(s -> NLS.bind(Messages.QuestionRow_setting, s.label())).orElse(Messages.QuestionRow_noSetting));
			values.setItems(setting.map(s -> s.domain().listed().stream().map(Value::text).toArray(String[]::new)).orElse(new String[0]));
			values.setText(""); //$NON-NLS-1$
			aboutValue.getParent().layout();
		}
	}

	private Optional<org.setwright.engine.language.Rule> rule() {
		return edition.flatMap(e -> e.rule(rules.getText()));
	}

	/** @return what is asked; empty when the rule or the value is missing or not understood */
	Optional<Question> question() {
		return aboutRule.getSelection() ? rule().map(Question.OfRule::new)
				: setting.flatMap(s -> s.domain().read(values.getText()).map(v -> new Question.OfValue(s, v)));
	}

	/** @return what to do to have a question; empty when there is one */
	List<String> missing() {
		return question().isPresent() ? List.of()
				: List.of(aboutRule.getSelection() ? Messages.QuestionRow_pickRule
						: setting.map(s -> NLS.bind(Messages.QuestionRow_pickValue, s.domain().allowed())).orElse(Messages.ReasonsView_pickSetting));
	}

	void setFocus() {
		(aboutRule.getSelection() ? rules : values).setFocus();
	}
}
