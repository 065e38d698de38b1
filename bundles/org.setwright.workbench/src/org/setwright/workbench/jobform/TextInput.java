package org.setwright.workbench.jobform;

import org.eclipse.jface.fieldassist.ControlDecoration;
import org.eclipse.jface.fieldassist.FieldDecorationRegistry;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Text;
import org.setwright.trade.catalogue.Answer;
import org.setwright.trade.catalogue.Domain;
import org.setwright.trade.catalogue.UnitSystem;
import org.setwright.trade.catalogue.Value;

/** Words, a number or a quantity with its unit. Taken on Enter and on leaving the field; Escape brings back what was. */
final class TextInput implements FieldInput {
	private final Text text;
	private final Domain domain;
	private final UnitSystem units;
	private final Listener listener;
	private final ControlDecoration wrong;
	private String meaning;
	private Answer<Value> shown = Answer.unknown();

	/** @param units in which quantities are shown, and a number alone is meant */
	TextInput(Composite parent, Domain domain, UnitSystem units, Listener listener) {
		this.domain = domain;
		this.units = units;
		this.listener = listener;
		text = new Text(parent, SWT.BORDER);
		text.setMessage(Messages.FieldReading_unknown);
		wrong = new ControlDecoration(text, SWT.LEFT | SWT.TOP);
		wrong.setImage(FieldDecorationRegistry.getDefault().getFieldDecoration(FieldDecorationRegistry.DEC_ERROR).getImage());
		wrong.hide();
		text.addListener(SWT.Modify, e -> check());
		text.addListener(SWT.DefaultSelection, e -> take());
		text.addListener(SWT.FocusOut, e -> take());
		text.addListener(SWT.KeyDown, e -> {
			if (e.keyCode == SWT.ESC) {
				text.setText(FieldReading.written(shown, units));
			}
		});
	}

	private void check() {
		FieldReading reading = FieldReading.of(domain, units, text.getText());
		if (reading.refusal().isEmpty()) {
			wrong.hide();
		} else {
			wrong.setDescriptionText(reading.refusal());
			wrong.show();
		}
		listener.refused(reading.refusal());
	}

	private void take() {
		// what is shown may be rounded; only what somebody changed is taken
		if (!text.isDisposed() && !text.getText().equals(FieldReading.written(shown, units))) {
			FieldReading.of(domain, units, text.getText()).answer().filter(a -> !a.equals(shown)).ifPresent(answer -> {
				listener.answered(answer);
				if (!answer.equals(shown)) {
					text.setText(FieldReading.written(shown, units));
				}
			});
		}
	}

	@Override
	public void explain(String sentence) {
		meaning = sentence;
		text.setToolTipText(sentence);
	}

	@Override
	public Control control() {
		return text;
	}

	@Override
	public void show(Answer<Value> answer) {
		if (!answer.equals(shown)) {
			shown = answer;
			text.setText(FieldReading.written(answer, units));
			text.setToolTipText(answer.value().filter(v -> !v.text().equals(text.getText())).map(v -> NLS.bind(Messages.TextInput_asWritten, v.text()))
					.orElse(meaning));
		}
	}
}
