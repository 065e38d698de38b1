package org.setwright.check.strength;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.setwright.book.JobReader;
import org.setwright.trade.Trade;

/** A check says "... the valve is {setting}." or so; which words could mean what the setting comes to? */
class ReadingsTest {
	@ParameterizedTest(name = "{0} with {1}: {2}")
	@CsvSource({ "energised in cooling, CHANGEOVER_VALVE, true", "the valve is energised, CHANGEOVER_VALVE, true", "the valve is ENER, CHANGEOVER_VALVE, true",
			"cooling. If not, CHANGEOVER_VALVE, true", "is: energised in cooling if, CHANGEOVER_VALVE, true", "disputed (, CHANGEOVER_VALVE, true",
			"loop valves, CHANGEOVER_VALVE, false", "energy, CHANGEOVER_VALVE, false", "5 min of rest, COMPRESSOR_REST, true", "the rest, COMPRESSOR_REST, false",
			"2 steps, COOL_STAGES, true", "all steps, COOL_STAGES, false" })
	void wordsMatterWhenTheyCouldStandInAReading(String words, String setting, boolean matter) {
		String job = "job: A\nexpect:\n  start-up:\n    - any: '" + words + "'\n";
		assertEquals(matter, new Readings(JobReader.read("jobs/a.yaml", job, Trade.catalogue()).job()).matter(Trade.catalogue().setting(setting).orElseThrow()));
		assertEquals(false, new Readings(JobReader.read("jobs/a.yaml", job.replace("any: '", "by: 'x "), Trade.catalogue()).job())
				.matter(Trade.catalogue().setting(setting).orElseThrow()), "a rule's name is no reading");
	}
}
