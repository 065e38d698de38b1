package org.setwright.landing.need;

import java.util.Optional;
import org.setwright.engine.language.Rule;
import org.setwright.engine.outcome.Finding;
import org.setwright.engine.outcome.Outcome;
import org.setwright.engine.outcome.SettingOutcome;
import org.setwright.engine.outcome.SettingOutcome.Need;
import org.setwright.trade.catalogue.Fact;
import org.setwright.trade.catalogue.Job;
import org.setwright.trade.catalogue.Job.Presence;
import org.setwright.trade.catalogue.JobField;
import org.setwright.trade.catalogue.Setting;
import org.setwright.trade.catalogue.Value;

/** What a run came to, read by the words of the trade's catalogue. */
public record SetUp(Outcome outcome) {
	/** The source of what the trade does without a document. */
	public static final String COMMON_PRACTICE = "common practice";

	/** @return the job, calculated facts included */
	public Job job() {
		return outcome.job();
	}

	/** @return what the setting {@code id} came to; empty when it is neither needed nor proposed */
	public Optional<SettingOutcome> setting(String id) {
		return outcome.settings().stream().filter(s -> s.setting().id().equals(id)).findFirst();
	}

	/** @return the word of the choice {@code id} is settled on */
	public Optional<String> word(String id) {
		return setting(id).flatMap(SettingOutcome::value).map(v -> String.valueOf(v.plain()));
	}

	/** @return the number {@code id} is settled on */
	public Optional<Integer> count(String id) {
		return setting(id).flatMap(SettingOutcome::value).filter(Value.Count.class::isInstance).map(v -> ((Value.Count) v).number());
	}

	/** @return the setting {@code id} when the job needs or may need it and nobody has settled it */
	public Optional<Setting> open(String id) {
		return setting(id).filter(s -> s.value().isEmpty() && s.need() != Need.NOT_NEEDED).map(SettingOutcome::setting);
	}

	/** @return the finding {@code name}, when some rule made it */
	public Optional<Finding> finding(String name) {
		return outcome.findings().stream().filter(f -> f.name().equals(name)).findFirst();
	}

	/** @return the only fact of {@code type}; empty when there is none or nobody has said */
	public <F extends Fact> Optional<F> one(Class<F> type) {
		return job().one(type);
	}

	/** @return whether the job certainly has a fact of {@code type} */
	public boolean has(Class<? extends Fact> type) {
		return job().entry(type).presence() == Presence.PRESENT;
	}

	/** @return the place of an answer in the job; empty when the job does not list its kind */
	public Optional<JobField> place(Class<? extends Fact> type, int item, String field) {
		return job().entries().keySet().stream().filter(k -> k.type() == type).findFirst()
				.flatMap(kind -> kind.field(field).map(f -> JobField.of(kind, item, f)));
	}

	/** @return {@code need} with the settled setting {@code id} as its ground, or held open by it; as it was when the job has none */
	org.setwright.landing.need.Need grounded(org.setwright.landing.need.Need need, String id) {
		Optional<SettingOutcome> setting = setting(id);
		if (open(id).isPresent()) {
			return need.heldOpenBy(open(id).get());
		}
		return setting.filter(s -> s.value().isPresent()).map(s -> need.restingOn(s.setting(), source(s.deciding().get(0).rule()))).orElse(need);
	}

	/** @return a rule as a source: its name, and the document it names */
	public static String source(Rule rule) {
		return rule.name() + " (" + rule.source() + ")";
	}
}
