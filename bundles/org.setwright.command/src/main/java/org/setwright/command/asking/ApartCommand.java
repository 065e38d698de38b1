package org.setwright.command.asking;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.setwright.book.JobCase;
import org.setwright.command.answer.Report;
import org.setwright.command.opening.OpenBook;
import org.setwright.command.terminal.Style;
import org.setwright.command.terminal.Surroundings;
import org.setwright.engine.Edition;
import org.setwright.engine.Inquiry;
import org.setwright.engine.change.Differences;
import org.setwright.engine.outcome.SettingOutcome;
import org.setwright.engine.whynot.Parting;
import org.setwright.engine.whynot.WhyNot;
import org.setwright.trade.catalogue.Setting;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Tells why two jobs come to different values. */
@Command(name = "apart", description = "Show where two jobs part: the settings that differ, and the rules and answers that make them.")
public final class ApartCommand extends JobQuestion {
	@Parameters(index = "1", paramLabel = "OTHER", description = "The other job's name or file, or a part of it.")
	private String other;
	@Parameters(index = "2", arity = "0..1", paramLabel = "SETTING",
			description = "The setting's name, or a part of it; every setting that differs when left out.")
	private String setting;

	/** @param surroundings where the program runs */
	public ApartCommand(Surroundings surroundings) {
		super(surroundings);
	}

	@Override
	protected Report report(OpenBook open, Edition edition, JobCase here) {
		JobCase there = open.job(other);
		Inquiry one = edition.about(here.job());
		Inquiry two = edition.about(there.job());
		Set<Setting> asked = new LinkedHashSet<>(
				setting == null ? Differences.between(one.outcome(), two.outcome()) : List.of(open.setting(setting)));
		Steps steps = new Steps();
		for (Setting each : asked) {
			Parting parting = one.comparedWith(two, each);
			steps.add(0, "setting", Style.STRONG, each.label() + ": " + said(parting.here()) + " here, " + said(parting.there()) + " there", "");
			parts(steps, "here ", parting.decidesHere(), there);
			parts(steps, "there ", parting.decidesThere(), here);
		}
		return new OutlineReport("apart", open, here, here.name() + " (here) and " + there.name() + " (there)", steps.all());
	}

	private static void parts(Steps steps, String where, List<Parting.Part> parts, JobCase onOther) {
		for (Parting.Part part : parts) {
			steps.firing(1, where, part.firing());
			boolean spoke = part.onOther().status() == WhyNot.Status.FIRED;
			steps.add(2, "on the other job", Style.PLAIN, spoke ? "on the other job it speaks too, with another value" : "on the other job:", "");
			if (!spoke) {
				steps.rule(3, part.onOther(), onOther);
			}
		}
	}

	private static String said(Optional<SettingOutcome> outcome) {
		return outcome.map(o -> o.value().map(v -> v.text()).orElse(switch (o.state()) {
			case DISPUTED -> "DISPUTED";
			case GAP -> "GAP";
			case PERHAPS, SETTLED -> "perhaps needed";
		})).orElse("not needed");
	}
}
