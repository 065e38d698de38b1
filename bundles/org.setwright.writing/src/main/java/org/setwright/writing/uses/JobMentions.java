package org.setwright.writing.uses;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.setwright.book.ExpectedCheck;
import org.setwright.book.ExpectedFinding;
import org.setwright.book.ExpectedItem;
import org.setwright.book.JobCase;
import org.setwright.book.JobCase.DecidedBy;
import org.setwright.book.Position;
import org.setwright.trade.catalogue.Answer;
import org.setwright.trade.catalogue.Fact;
import org.setwright.trade.catalogue.Field;
import org.setwright.trade.catalogue.JobField;
import org.setwright.trade.catalogue.Value;

/** Finds what a job says something about. */
final class JobMentions {
	private final JobCase job;
	private final String text;
	private final List<Mention> found = new ArrayList<>();

	private JobMentions(JobCase job, String text) {
		this.job = job;
		this.text = text;
	}

	static List<Mention> of(JobCase job, String text) {
		JobMentions mentions = new JobMentions(job, text);
		job.positions().forEach(mentions::answer);
		job.expected().forEach((setting, expectation) -> {
			mentions.add(new Thing.OfSetting(setting), expectation.at(), expectation.text());
			if (expectation instanceof DecidedBy by) {
				mentions.add(new Thing.OfRule(by.rule()), by.at(), by.rule());
			}
		});
		job.items().forEach(mentions::item);
		return mentions.found;
	}

	private void item(ExpectedItem item) {
		if (item instanceof ExpectedFinding finding && !finding.other() && !finding.name().equals(ExpectedItem.ANY)) {
			add(new Thing.OfFinding(finding.word()), item.at(), finding.name());
		} else if (item instanceof ExpectedCheck check && check.byRule()) {
			add(new Thing.OfRule(check.words()), item.at(), check.words());
		}
	}

	private void answer(JobField place, Position at) {
		Thing kind = new Thing.OfKind(place.kind());
		if (place.field().isEmpty()) {
			add(kind, at, place.kind().label());
			return;
		}
		Field field = place.field().get();
		String value = words(job, place).orElse("");
		add(new Thing.OfField(place.kind(), field), at, value);
		if (!value.isEmpty()) {
			add(new Thing.OfValue(place.kind(), field, value), at, value);
		}
	}

	/** @return the shop's own words that {@code job} gives at {@code place}; empty for other answers */
	static Optional<String> words(JobCase job, JobField place) {
		List<Fact> facts = job.job().entry(place.kind()).facts();
		Optional<Field> field = place.field();
		if (field.isEmpty() || place.item() >= facts.size()) {
			return Optional.empty();
		}
		Answer<Value> answer = place.kind().answer(facts.get(place.item()), field.get());
		return answer.value().filter(Value.Words.class::isInstance).map(v -> ((Value.Words) v).words());
	}

	private void add(Thing thing, Position at, String written) {
		int start = Offsets.of(text, at, written);
		found.add(new Mention(thing, job.path(), start, Math.min(text.length(), start + written.length()), false, job.name()));
	}
}
