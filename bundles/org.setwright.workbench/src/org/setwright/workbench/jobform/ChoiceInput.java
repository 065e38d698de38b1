package org.setwright.workbench.jobform;

import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.setwright.trade.catalogue.Answer;
import org.setwright.trade.catalogue.Value;

/** One of a list; "unknown" is the first choice. */
final class ChoiceInput implements FieldInput {
	private final Combo combo;
	private final List<Value> values;
	private Answer<Value> shown = Answer.unknown();

	ChoiceInput(Composite parent, List<Value> values, Listener listener) {
		this.values = values;
		combo = new Combo(parent, SWT.READ_ONLY | SWT.DROP_DOWN);
		combo.add(Messages.FieldReading_unknown);
		values.forEach(v -> combo.add(v.text()));
		combo.setVisibleItemCount(20);
		combo.addListener(SWT.MouseVerticalWheel, e -> e.doit = false);
		combo.addListener(SWT.Selection, e -> {
			Answer<Value> picked = picked();
			if (!picked.equals(shown)) {
				listener.answered(picked);
			}
		});
	}

	private Answer<Value> picked() {
		int index = combo.getSelectionIndex();
		return index <= 0 ? Answer.unknown() : Answer.of(values.get(index - 1));
	}

	@Override
	public Control control() {
		return combo;
	}

	@Override
	public void show(Answer<Value> answer) {
		shown = answer;
		combo.select(answer.value().map(v -> indexOf(v) + 1).orElse(0));
	}

	private int indexOf(Value value) {
		for (int i = 0; i < values.size(); i++) {
			if (values.get(i).same(value)) {
				return i;
			}
		}
		return -1;
	}
}
