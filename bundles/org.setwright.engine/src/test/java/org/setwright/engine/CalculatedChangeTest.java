package org.setwright.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.setwright.engine.change.Alternatives;
import org.setwright.engine.change.Change;
import org.setwright.engine.change.Watch;
import org.setwright.engine.language.Rule;
import org.setwright.trade.catalogue.Job;

/** A stated number that only a calculation reads is changed to where the calculation comes to what a rule asks for. */
class CalculatedChangeTest {
	private static final Job JOB = Jobs.of("OutdoorUnit kind=air conditioner, coolingCapacityAt95F=24 kBtu/h",
			"IndoorUnit kind=air handler, airflow=500 cfm");

	private static Alternatives change(String asked) {
		Edition edition = Books.edition(Books.rule("r", "shop practice", "CoolingAirflow( " + asked + " )", "propose( COOL_STAGES, 1 );"));
		Rule rule = edition.rules().get(0);
		Alternatives found = edition.about(JOB).toFire(rule, Watch.PATIENT);
		found.found().forEach(a -> {
			Job changed = JOB;
			for (Change change : a.changes()) {
				changed = change.apply(changed);
			}
			assertTrue(edition.run(changed).firings().stream().anyMatch(f -> f.rule() == rule), a.toString());
		});
		return found;
	}

	private static Set<String> places(Alternatives found) {
		return found.found().stream().flatMap(a -> a.changes().stream()).map(c -> c.place().label()).collect(Collectors.toSet());
	}

	@Test
	void anAirflowOrACapacityInANarrowWindowIsFound() {
		Alternatives found = change("perTon >= \"399 cfm\", perTon <= \"402 cfm\"");
		assertEquals(1, found.found().get(0).changes().size(), found.toString());
		assertEquals(Set.of("indoor unit: airflow", "outdoor unit: cooling capacity at 95 °F"), places(found));
	}

	@Test
	void nothingIsFoundWhereNoNumberOfTheDomainWillDo() {
		assertEquals(Set.of(), places(change("perTon > \"14000 cfm\", perTon < \"1 cfm\"")));
	}
}
