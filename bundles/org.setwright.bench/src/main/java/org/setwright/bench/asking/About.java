package org.setwright.bench.asking;

import java.util.List;
import java.util.Optional;
import org.setwright.bench.changes.Coming;
import org.setwright.bench.hand.AtHand;
import org.setwright.bench.told.Row;
import org.setwright.bench.told.Rows;
import org.setwright.bench.told.Tone;
import org.setwright.bench.words.Facts;
import org.setwright.book.Position;
import org.setwright.engine.explaining.Bases;
import org.setwright.engine.logic.JobFacts;
import org.setwright.engine.outcome.Basis;
import org.setwright.engine.outcome.SettingOutcome;
import org.setwright.trade.catalogue.Fact;
import org.setwright.trade.catalogue.FactKind;
import org.setwright.trade.catalogue.Field;
import org.setwright.trade.catalogue.Job;
import org.setwright.trade.catalogue.JobField;
import org.setwright.trade.catalogue.Setting;

/** What is known of a fact or a setting, and how it is worked out. */
public final class About {
	private final AtHand hand;
	private final Bases bases;

	/** @param hand about which */
	public About(AtHand hand) {
		this.hand = hand;
		bases = new Bases(new JobFacts(hand.outcome().job(), hand.ground().catalogue()), hand.ground().catalogue());
	}

	/** @return what is known of what words mean */
	public List<Row> of(Facts.Meant meant) {
		if (meant.field().isEmpty()) {
			return kind(meant.kind(), meant.number());
		}
		Rows rows = new Rows();
		int count = Math.max(1, hand.outcome().job().entry(meant.kind()).facts().size());
		for (int item = 0; item < count; item++) {
			if (meant.number() == 0 || meant.number() == item + 1) {
				answer(JobField.of(meant.kind(), item, meant.field().get()), rows);
			}
		}
		if (rows.isEmpty()) {
			rows.add(0, Tone.ATTENTION, "There is no " + meant.kind().label() + " " + meant.number() + " on this job.");
		}
		return rows.add(1, Tone.QUIET, meant.field().get().meaning()).all();
	}

	private void answer(JobField place, Rows rows) {
		Basis basis = bases.of(place);
		rows.add(0, basis.known() ? Tone.PLAIN : Tone.ATTENTION, place.label() + ": " + basis.said(), at(place));
		basis.calculation().ifPresent(c -> calculation(1, c, rows));
	}

	private void calculation(int depth, Basis.Calculation calculation, Rows rows) {
		rows.add(depth, Tone.PLAIN, "worked out: " + calculation.formula());
		rows.add(depth, Tone.QUIET, "source: " + calculation.source());
		for (Basis from : calculation.from().stream().distinct().toList()) {
			rows.add(depth, from.known() ? Tone.PLAIN : Tone.ATTENTION, "from " + from.sentence(), at(from.place()));
			from.calculation().ifPresent(c -> calculation(depth + 1, c, rows));
		}
	}

	/** @param number which of several, from 1; 0 for all @return what is known of a kind of fact */
	List<Row> kind(FactKind kind, int number) {
		Rows rows = new Rows();
		Job.Entry entry = hand.outcome().job().entry(kind);
		if (entry.presence() != Job.Presence.PRESENT) {
			boolean unknown = entry.presence() == Job.Presence.UNKNOWN;
			rows.add(0, unknown ? Tone.ATTENTION : Tone.PLAIN, kind.key() + ": " + (unknown ? kind.calculated() ? "not known whether it applies" : "unknown"
					: kind.calculated() ? "does not apply to this job" : "none"), at(JobField.presence(kind)));
			return rows.add(1, Tone.QUIET, kind.meaning()).all();
		}
		int item = 0;
		for (Fact fact : entry.facts()) {
			if (number == 0 || number == item + 1) {
				fact(kind, item, fact, rows);
			}
			item++;
		}
		return rows.isEmpty() ? rows.add(0, Tone.ATTENTION, "There is no " + kind.label() + " " + number + " on this job.").all() : rows.all();
	}

	private void fact(FactKind kind, int item, Fact fact, Rows rows) {
		rows.add(0, Tone.HEADING, kind.label() + (kind.many() ? " " + (item + 1) : ""));
		boolean any = false;
		for (Field field : kind.fields()) {
			JobField place = JobField.of(kind, item, field);
			Optional<String> known = kind.answer(fact, field).value().map(v -> v.text());
			if (known.isPresent() || kind.calculated() || hand.job().positions().containsKey(place)) {
				any = true;
				rows.add(1, known.isPresent() ? Tone.PLAIN : Tone.ATTENTION, field.label() + ": "
						+ known.orElse(kind.calculated() ? "not known yet" : "unknown"), at(place));
				field.calculation().ifPresent(c -> rows.add(2, Tone.QUIET, c.formula()).add(2, Tone.QUIET, "source: " + c.source()));
			}
		}
		if (!any) {
			rows.add(1, Tone.ATTENTION, "nothing more is known of it");
		}
	}

	/** @return what a setting comes to, and what it is for */
	public List<Row> of(Setting setting) {
		Rows rows = new Rows();
		Optional<SettingOutcome> outcome = hand.outcome().setting(setting);
		rows.add(0, outcome.map(Coming::tone).orElse(Tone.PLAIN), setting.label() + ": "
				+ outcome.map(Coming::to).orElse("not needed on this job, and no rule proposes it"));
		outcome.map(Coming::by).filter(by -> !by.isEmpty()).ifPresent(by -> rows.add(1, Tone.QUIET, "says " + by));
		return rows.add(1, Tone.QUIET, setting.meaning()).all();
	}

	private String at(JobField place) {
		return Optional.ofNullable(hand.job().positions().get(place)).map(Position::toString).orElse("");
	}
}
