package org.setwright.engine.startup;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.setwright.engine.explaining.Wording;
import org.setwright.engine.language.Operand;
import org.setwright.engine.language.Sentence;
import org.setwright.engine.logic.JobFacts;
import org.setwright.engine.outcome.Line;
import org.setwright.engine.outcome.SettingOutcome;
import org.setwright.trade.catalogue.JobField;
import org.setwright.trade.catalogue.Setting;
import org.setwright.trade.catalogue.Value;

/**
 * Reads a job's answers and settings into the sentences of rules.
 *
 * @param settings what each setting came to; one that is missing is not needed
 */
record Reader(JobFacts job, Map<Setting, SettingOutcome> settings) {

	/** @param places where the answer stands that each name stands for; one that is missing is named in words */
	Line line(Sentence sentence, Map<Operand.Bound, JobField> places) {
		return new Line(sentence.pieces().stream().map(p -> part(p, places)).toList());
	}

	private Line.Part part(Sentence.Piece piece, Map<Operand.Bound, JobField> places) {
		if (piece instanceof Sentence.Words words) {
			return new Line.Words(words.words());
		} else if (piece instanceof Sentence.Given given) {
			return new Line.Amount(given.least(), given.most());
		} else if (piece instanceof Sentence.OfSetting of) {
			return setting(of.setting());
		}
		Operand.Bound bound = ((Sentence.Reading) piece).bound();
		JobField place = places.get(bound);
		return place == null ? new Line.Words(Wording.operand(bound)) : answer(place);
	}

	private Line.Part answer(JobField place) {
		return job.answer(place).value().map(Reader::known)
				.orElseGet(() -> new Line.NotKnown(place, job.toLookUp(place)));
	}

	private static Line.Part known(Value value) {
		return value instanceof Value.Amount amount ? new Line.Amount(amount.quantity(), java.util.Optional.empty())
				: new Line.Words(value.text());
	}

	private Line.Part setting(Setting setting) {
		SettingOutcome came = settings.get(setting);
		if (came == null) {
			return new Line.OfSetting(setting, "not needed here", true);
		}
		return switch (came.state()) {
			case SETTLED -> settled(setting, came.value().orElseThrow());
			case DISPUTED -> new Line.OfSetting(setting, "DISPUTED (" + values(came) + "), so do not start this", false);
			case GAP -> new Line.OfSetting(setting, "A GAP (no rule gives it), so do not start this", false);
			case PERHAPS -> new Line.OfSetting(setting, "NOT KNOWN TO BE NEEDED, so do not start this", false);
		};
	}

	private static Line.Part settled(Setting setting, Value value) {
		return value instanceof Value.Amount amount ? new Line.Amount(amount.quantity(), java.util.Optional.empty())
				: new Line.OfSetting(setting, value.text(), true);
	}

	private static String values(SettingOutcome came) {
		return came.deciding().stream().map(p -> p.value().text()).distinct().collect(Collectors.joining(" or "));
	}
}
