package org.setwright.workbench.jobform;

import org.eclipse.swt.widgets.Control;
import org.setwright.trade.catalogue.Answer;
import org.setwright.trade.catalogue.Value;

/** A control in which one question is answered. */
interface FieldInput {
	/** The control, to be laid out and given the cursor. */
	Control control();

	/** Says what is asked when the pointer rests on the control. */
	default void explain(String sentence) {
		control().setToolTipText(sentence);
	}

	/** Shows {@code answer}, unless somebody is just writing another. */
	void show(Answer<Value> answer);

	/** Told about what somebody enters. */
	interface Listener {
		/** The answer is to be taken. */
		void answered(Answer<Value> answer);

		/** What stands in the field is not understood (or is again). @param refusal empty when all is well */
		void refused(String refusal);
	}
}
