package org.setwright.writing.uses;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.setwright.book.ExpectedCheck;
import org.setwright.book.ExpectedFinding;
import org.setwright.book.ExpectedItem;
import org.setwright.book.JobCase;
import org.setwright.book.JobCase.DecidedBy;
import org.setwright.book.JobCase.Settled;
import org.setwright.book.JobWord;
import org.setwright.book.Position;
import org.setwright.trade.catalogue.Answer;
import org.setwright.trade.catalogue.Catalogue;
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
			Optional<Settled> settled = expectation instanceof DecidedBy by ? by.is() : Optional.of(expectation).filter(Settled.class::isInstance).map(Settled.class::cast);
			settled.ifPresent(s -> Values.of(new Thing.OfSetting(setting), s.value()).ifPresent(t -> mentions.add(t, s.at(), s.value().text())));
		});
		job.items().forEach(mentions::item);
		return mentions.found;
	}

	private void item(ExpectedItem item) {
		named(item).ifPresent(thing -> add(thing, item.at(), item instanceof ExpectedCheck ? item.words() : item.head()));
	}

	static Optional<Thing> named(ExpectedItem item) {
		if (item instanceof ExpectedFinding finding && !finding.other() && !finding.name().equals(ExpectedItem.ANY)) {
			return Optional.of(new Thing.OfFinding(finding.word()));
		}
		return item instanceof ExpectedCheck check && check.byRule() ? Optional.of(new Thing.OfRule(check.words())) : Optional.empty();
	}

	private void answer(JobField place, Position at) {
		Thing kind = new Thing.OfKind(place.kind());
		if (place.field().isEmpty()) {
			add(kind, at, place.kind().label());
			return;
		}
		Field field = place.field().get();
		String value = words(job, place).orElse("");
		Thing of = new Thing.OfField(place.kind(), field);
		add(of, at, value);
		given(job, place).flatMap(v -> Values.of(of, v).map(t -> new Written(t, v.text()))).ifPresent(w -> add(w.thing(), at, w.text()));
	}

	private record Written(Thing thing, String text) {
	}

	/** @return what the word at {@code offset} of a job stands for */
	static Optional<Thing> at(String text, int offset, Catalogue catalogue) {
		return JobWord.at(text, offset, catalogue).map(JobMentions::thing);
	}

	private static Thing thing(JobWord word) {
		if (word instanceof JobWord.OfKind of) {
			return new Thing.OfKind(of.kind());
		} else if (word instanceof JobWord.OfField of) {
			return value(new Thing.OfField(of.kind(), of.field()), of.written());
		} else if (word instanceof JobWord.OfSetting of) {
			return value(new Thing.OfSetting(of.setting()), of.written());
		} else if (word instanceof JobWord.OfFinding of) {
			return new Thing.OfFinding(of.word());
		}
		return new Thing.OfRule(((JobWord.OfRule) word).name());
	}

	private static Thing value(Thing about, Optional<String> written) {
		return written.flatMap(w -> Values.of(about, w)).orElse(about);
	}

	/** @return the shop's own words that {@code job} gives at {@code place}; empty for other answers */
	static Optional<String> words(JobCase job, JobField place) {
		return given(job, place).filter(Value.Words.class::isInstance).map(v -> ((Value.Words) v).words());
	}

	private static Optional<Value> given(JobCase job, JobField place) {
		List<Fact> facts = job.job().entry(place.kind()).facts();
		Optional<Field> field = place.field();
		if (field.isEmpty() || place.item() >= facts.size()) {
			return Optional.empty();
		}
		Answer<Value> answer = place.kind().answer(facts.get(place.item()), field.get());
		return answer.value();
	}

	private void add(Thing thing, Position at, String written) {
		int start = Offsets.of(text, at, written);
		found.add(new Mention(thing, job.path(), start, Math.min(text.length(), start + written.length()), false, job.name()));
	}
}
