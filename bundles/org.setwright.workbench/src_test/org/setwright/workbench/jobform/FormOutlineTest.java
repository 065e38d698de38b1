package org.setwright.workbench.jobform;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.setwright.trade.Trade;
import org.setwright.trade.catalogue.FactKind;
import org.setwright.workbench.desk.TestBook;
import org.setwright.workbench.jobform.FormNode.OfKind;
import org.setwright.workbench.jobform.FormNode.Sign;

class FormOutlineTest {
	private final List<FormNode> nodes = FormOutline.of(Trade.catalogue(), TestBook.job(TestBook.LARCH_LANE));

	@Test
	void everyKindThatIsAskedForHasAPage() {
		List<FactKind> pages = nodes.stream().map(FormNode::page).filter(OfKind.class::isInstance).map(p -> ((OfKind) p).kind()).toList();
		assertEquals(Trade.catalogue().kinds().stream().filter(k -> !k.calculated()).toList(), pages);
	}

	@Test
	void saysHowMuchIsKnown() {
		assertEquals(Sign.PARTLY_KNOWN, node("outdoor unit").sign());
		assertTrue(node("outdoor unit").remark().startsWith("3 of "), node("outdoor unit").remark());
		assertEquals(Sign.NONE, node("auxiliary heat").sign());
		assertEquals(Sign.UNKNOWN, node("humidifier").sign());
	}

	@Test
	void listsTheItemsOfAListByTheirNames() {
		assertEquals(List.of("wire 1, red", "wire 2, orange"), node("wires").children().stream().map(FormNode::text).toList());
		assertFalse(node("wires").children().get(0).remark().isEmpty());
	}

	private FormNode node(String text) {
		return nodes.stream().filter(n -> n.text().equals(text)).findFirst().orElseThrow();
	}
}
