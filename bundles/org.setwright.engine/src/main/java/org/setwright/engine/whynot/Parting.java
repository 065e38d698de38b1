package org.setwright.engine.whynot;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.setwright.engine.outcome.Firing;
import org.setwright.engine.outcome.Outcome;
import org.setwright.engine.outcome.Proposal;
import org.setwright.engine.outcome.SettingOutcome;
import org.setwright.trade.catalogue.Setting;

/**
 * Why two jobs come to different values of one setting.
 *
 * @param setting the setting
 * @param here what it comes to on the first job; empty when neither needed nor proposed
 * @param there the same on the second job
 * @param decidesHere rules that decide on the first job and do not on the second, with why not
 * @param decidesThere rules that decide on the second job and do not on the first, with why not
 */
public record Parting(Setting setting, Optional<SettingOutcome> here, Optional<SettingOutcome> there,
		List<Part> decidesHere, List<Part> decidesThere) {
	public Parting {
		decidesHere = List.copyOf(decidesHere);
		decidesThere = List.copyOf(decidesThere);
	}

	/** A rule that decides on one job. @param firing how it came to speak there @param onOther what became of it on the other */
	public record Part(Firing firing, WhyNot onOther) {
	}

	/** Compares two jobs under the same rules. */
	public static Parting of(Setting setting, Outcome here, Silence whyHere, Outcome there, Silence whyThere) {
		Optional<SettingOutcome> one = here.setting(setting);
		Optional<SettingOutcome> other = there.setting(setting);
		return new Parting(setting, one, other, parts(one, other, whyThere), parts(other, one, whyHere));
	}

	private static List<Part> parts(Optional<SettingOutcome> one, Optional<SettingOutcome> other, Silence whyOther) {
		List<Part> parts = new ArrayList<>();
		for (Proposal proposal : deciding(one)) {
			if (deciding(other).stream().noneMatch(p -> p.rule() == proposal.rule() && p.value().same(proposal.value()))) {
				parts.add(new Part(proposal.firing(), whyOther.of(proposal.rule())));
			}
		}
		return parts;
	}

	private static List<Proposal> deciding(Optional<SettingOutcome> outcome) {
		return outcome.filter(s -> !s.proposals().isEmpty()).map(SettingOutcome::deciding).orElse(List.of());
	}
}
