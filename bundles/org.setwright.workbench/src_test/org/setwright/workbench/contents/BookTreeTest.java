package org.setwright.workbench.contents;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.setwright.workbench.contents.BookNode.Sign;
import org.setwright.workbench.desk.TestBook;

class BookTreeTest {
	private final List<BookNode> nodes = BookTree.of(TestBook.saved());

	@Test
	void listsTheBookItsRulesAndItsTables() {
		assertEquals(List.of("Alder Lane Heating", "heat-pump.drl", "stages.drl", "changeover-by-maker.csv"),
				nodes.stream().map(BookNode::text).toList());
		assertEquals("4 rules", nodes.get(1).remark());
	}

	@Test
	void saysOnHowManyJobsARuleSpeaks() {
		List<BookNode> rules = nodes.get(1).children();
		assertEquals("speaks on 3 jobs", rules.get(0).remark());
		assertEquals("speaks on 1 job", rules.get(1).remark());
		assertEquals("silent on all jobs", nodes.get(2).children().get(1).remark());
	}

	@Test
	void aFileWithMistakesSaysSo() {
		BookNode file = BookTree.of(TestBook.typing("rules/stages.drl", "rule")).get(2);
		assertEquals(Sign.PROBLEM, file.sign());
		assertTrue(file.remark().endsWith("to mend"), file.remark());
	}

	@Test
	void searchKeepsAFileWithARuleThatMatches() {
		assertTrue(nodes.get(1).matches("dual fuel"));
		assertFalse(nodes.get(2).matches("dual fuel"));
	}
}
