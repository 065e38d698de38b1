package org.setwright.engine.outcome;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.setwright.engine.language.Rule;
import org.setwright.trade.catalogue.JobField;
import org.setwright.trade.catalogue.Setting;
import org.setwright.trade.catalogue.StartUpPhase;

/**
 * One thing to prove when the equipment is started.
 *
 * @param callFor what to do at the controller or with a jumper
 * @param see what to see, hear or measure
 * @param ifNot what it means when that does not happen, and what to do
 * @param pause what to wait for before going on, where there is anything
 * @param saidBy the rules that say so, in book order; not empty
 * @param firings how their conditions held; empty while they are held open
 * @param heldBy the unknowns that keep it open whether this job needs the check; empty when it does
 */
public record StartUpCheck(StartUpPhase phase, Line callFor, Line see, Line ifNot, Optional<Line> pause, List<Rule> saidBy,
		List<Firing> firings, Set<JobField> heldBy) {
	public StartUpCheck {
		saidBy = List.copyOf(saidBy);
		firings = List.copyOf(firings);
		heldBy = Set.copyOf(heldBy);
	}

	/** @return whether this job certainly needs it */
	public boolean certain() {
		return heldBy.isEmpty();
	}

	/** @return the settings a certain check names that nobody has decided: until then this part is not to be started */
	public List<Setting> undecided() {
		return !certain() ? List.of() : parts().filter(Line.OfSetting.class::isInstance).map(Line.OfSetting.class::cast).filter(s -> !s.decided())
				.map(Line.OfSetting::setting).distinct().toList();
	}

	/** @return what to look up first: for the readings it shows, and to know whether it is needed */
	public Set<JobField> toFindOut() {
		Set<JobField> all = new LinkedHashSet<>(heldBy);
		parts().filter(Line.NotKnown.class::isInstance).forEach(p -> all.addAll(((Line.NotKnown) p).lookUp()));
		return all;
	}

	private Stream<Line.Part> parts() {
		return Stream.concat(Stream.of(callFor, see, ifNot), pause.stream()).flatMap(l -> l.parts().stream());
	}
}
