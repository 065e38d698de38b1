package org.setwright.trade.calculation.facts;

import java.time.DateTimeException;
import java.time.ZoneId;
import java.util.Optional;
import org.setwright.trade.calculation.clock.DaylightSaving;
import org.setwright.trade.catalogue.About;
import org.setwright.trade.catalogue.Answer;
import org.setwright.trade.catalogue.Asked;
import org.setwright.trade.catalogue.Calculated;
import org.setwright.trade.catalogue.Fact;
import org.setwright.trade.catalogue.Job;
import org.setwright.trade.house.Climate;

/** What the time zone's rules say of the clock. */
@About(label = "local clock", meaning = "What the time zone's own rules say of the clock; there is none when nobody knows a zone of that name.")
public record LocalClock(
		@Calculated(from = "Climate.timeZone", formula = "whether the zone's standing rule changes the clock",
				source = "tz database as delivered with Java; United States: 15 U.S.C. 260a")
		@Asked(label = "changes twice a year", says = "changes twice a year|does not change", meaning = "Whether clocks in that time zone go forward in spring and back in autumn.")
		Answer<Boolean> changesTwiceAYear)
		implements Fact {

	/** @return the clock at {@code job}; none when its time zone is no name of the tz database */
	public static Job.Entry of(Job job) {
		Answer<Optional<ZoneId>> zone = new Stated(job).answer(Climate.class, Climate::timeZone).map(LocalClock::zone);
		return Stated.entry(zone.map(Optional::isPresent),
				() -> new LocalClock(zone.map(z -> DaylightSaving.hasStandingRule(z.orElseThrow()))));
	}

	private static Optional<ZoneId> zone(String name) {
		try {
			return Optional.of(ZoneId.of(name.strip()));
		} catch (DateTimeException noSuchZone) {
			return Optional.empty();
		}
	}
}
