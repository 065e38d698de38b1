package org.setwright.workbench.reasons;

import java.util.List;
import org.eclipse.osgi.util.NLS;
import org.setwright.engine.Inquiry;
import org.setwright.engine.change.Alternatives;
import org.setwright.engine.change.Watch;
import org.setwright.engine.language.Rule;
import org.setwright.engine.whynot.WhyNot;
import org.setwright.trade.catalogue.Setting;
import org.setwright.trade.catalogue.Value;

/** Something that did not happen on a job. */
sealed interface Question {
	/** @return what became of the rules concerned */
	List<WhyNot> whyNot(Inquiry inquiry);

	/** @return the smallest changes by which it would happen */
	Alternatives changes(Inquiry inquiry, Watch watch);

	/** @return what would happen then, in words */
	String goal();

	/** Why does a rule not speak? */
	record OfRule(Rule rule) implements Question {
		@Override
		public List<WhyNot> whyNot(Inquiry inquiry) {
			return List.of(inquiry.whyNot(rule));
		}

		@Override
		public Alternatives changes(Inquiry inquiry, Watch watch) {
			return inquiry.toFire(rule, watch);
		}

		@Override
		public String goal() {
			return NLS.bind(Messages.Question_speaks, rule.name());
		}
	}

	/** Why does a setting not come to a value? */
	record OfValue(Setting setting, Value value) implements Question {
		@Override
		public List<WhyNot> whyNot(Inquiry inquiry) {
			return inquiry.whyNot(setting, value);
		}

		@Override
		public Alternatives changes(Inquiry inquiry, Watch watch) {
			return inquiry.toSettle(setting, value, watch);
		}

		@Override
		public String goal() {
			return NLS.bind(Messages.Question_comesTo, setting.label(), value.text());
		}
	}
}
