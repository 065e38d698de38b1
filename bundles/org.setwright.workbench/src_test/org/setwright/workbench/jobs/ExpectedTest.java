package org.setwright.workbench.jobs;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.setwright.trade.catalogue.Setting;
import org.setwright.workbench.desk.Evaluation;
import org.setwright.workbench.desk.TestBook;

class ExpectedTest {
	@Test
	void eachKindOfExpectationIsMetOrNot() {
		String job = """
				job: Larch Lane 14, upstairs
				outdoor unit: { kind: air-source heat pump, maker: Norrvik, stages: 1 }
				auxiliary heat: none
				expect:
				  changeover valve: energised in cooling
				  auxiliary heat stages: 0
				  schedule: gap
				  cooling stages: gap
				  clock format: dispute
				  auxiliary heat source: not needed
				  emergency heat: not needed
				""";
		Evaluation typed = TestBook.typing(TestBook.LARCH_LANE, job);
		List<Setting> unmet = Expected.unmet(typed.job(TestBook.LARCH_LANE).orElseThrow(),
				typed.outcome(TestBook.LARCH_LANE).orElseThrow());
		assertEquals("changeover valve, cooling stages, clock format, emergency heat",
				unmet.stream().map(Setting::label).collect(Collectors.joining(", ")));
	}
}
