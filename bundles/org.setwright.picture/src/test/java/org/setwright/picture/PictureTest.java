package org.setwright.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.setwright.book.Book;
import org.setwright.book.BookReader;
import org.setwright.book.JobCase;
import org.setwright.engine.Edition;
import org.setwright.engine.outcome.Outcome;
import org.setwright.engine.outcome.SettingOutcome;
import org.setwright.picture.Picture.Box;
import org.setwright.trade.Trade;
import org.w3c.dom.Element;

/** The pictures of every setting of every job of the starter book. */
class PictureTest {
	private static Book book;
	private static Edition edition;

	@BeforeAll
	static void compile() {
		book = BookReader.read(Path.of("../../rules/starter").toAbsolutePath().normalize(), Trade.catalogue());
		edition = Edition.compile(book).edition().orElseThrow();
	}

	private static SettingOutcome setting(String job, String setting) {
		Outcome outcome = edition.run(book.jobs().stream().filter(j -> j.path().equals("jobs/" + job + ".yaml")).findFirst().orElseThrow().job());
		return outcome.setting(Trade.catalogue().setting(setting).orElseThrow()).orElseThrow();
	}

	@Test
	void everyLineRunsFromLeftToRightAndNoBoxCoversAnother() {
		int boxes = 0;
		for (JobCase job : book.jobs().subList(0, 12)) {
			for (SettingOutcome setting : edition.run(job.job()).settings()) {
				Picture picture = Picture.of(Derivation.of(setting), TextMeasure.USUAL);
				boxes += picture.boxes().size();
				picture.lines().forEach(l -> assertTrue(right(picture.boxes().get(l.link().from())) < picture.boxes().get(l.link().to()).x()));
				picture.boxes().forEach(b -> assertTrue(b.x() >= 0 && right(b) <= picture.width() && b.y() >= 0 && b.y() + b.height() <= picture.height()));
				assertFalse(IntStream.range(0, picture.boxes().size()).anyMatch(i -> IntStream.range(0, i)
						.anyMatch(j -> covers(picture.boxes().get(i), picture.boxes().get(j)))), setting.setting().label());
			}
		}
		assertTrue(boxes > 1000, boxes + " boxes");
	}

	@Test
	void typeTwiceAsLargeGetsBoxesTwiceAsHighBrokenAtTheSameWords() {
		Derivation derivation = Derivation.of(setting("demo", "CHANGEOVER_VALVE"));
		Picture usual = Picture.of(derivation, TextMeasure.USUAL);
		Picture large = Picture.of(derivation, new TextMeasure() {
			@Override
			public double width(String line, boolean strong) {
				return 2 * TextMeasure.USUAL.width(line, strong);
			}

			@Override
			public double lineHeight() {
				return 2 * Picture.LINE_HEIGHT;
			}
		});
		for (int i = 0; i < usual.boxes().size(); i++) {
			assertEquals(usual.boxes().get(i).words(), large.boxes().get(i).words());
			assertEquals(Picture.LINE_HEIGHT, usual.boxes().get(i).lineHeight());
			assertEquals(2 * Picture.LINE_HEIGHT, large.boxes().get(i).lineHeight());
		}
	}

	private static double right(Box box) {
		return box.x() + box.width();
	}

	private static boolean covers(Box a, Box b) {
		return a.x() < right(b) && b.x() < right(a) && a.y() < b.y() + b.height() && b.y() < a.y() + a.height();
	}

	@Test
	void theWayGoesFromTheJobByWayOfCalculationsAndRulesToTheSetting() {
		Derivation derivation = Derivation.of(setting("demo", "AUXILIARY_LOCKOUT"));
		Set<String> said = derivation.nodes().stream().map(Node::spoken).collect(Collectors.toSet());
		assertTrue(said.stream().anyMatch(s -> s.startsWith("calculated heat pump balance: balance point: ")), said.toString());
		assertTrue(said.stream().anyMatch(s -> s.startsWith("answer building: design heat loss: ")), said.toString());
		assertEquals(Node.Sort.SETTING, derivation.nodes().get(derivation.nodes().size() - 1).sort());
		Set<Integer> restedOn = derivation.links().stream().map(Derivation.Link::from).collect(Collectors.toSet());
		Set<Integer> resting = derivation.links().stream().map(Derivation.Link::to).collect(Collectors.toSet());
		for (int i = 0; i < derivation.nodes().size(); i++) {
			Node node = derivation.nodes().get(i);
			assertEquals(node.sort() != Node.Sort.SETTING, restedOn.contains(i), node.spoken() + " leads on");
			assertEquals(node.sort() != Node.Sort.ANSWER, resting.contains(i) || node.text().equals("speaks on every job"), node.spoken() + " rests on something");
		}
	}

	@Test
	void whatIsOutrankedIsDashed() {
		Derivation derivation = Derivation.of(setting("demo", "CHANGEOVER_VALVE"));
		List<Node> proposals = derivation.nodes().stream().filter(n -> n.sort() == Node.Sort.PROPOSAL).toList();
		assertEquals(List.of(false, true), proposals.stream().map(Node::faint).toList());
		String svg = SvgText.of(Picture.of(derivation, TextMeasure.USUAL), "valve");
		assertTrue(svg.contains("stroke-dasharray"), svg);
	}

	@Test
	void theFileIsSoundAndNothingInItCanBreakOut() throws Exception {
		Node node = new Node(Node.Sort.SETTING, "<script>&\"' ]]>", "\u001b[31m", false, java.util.Optional.empty(), java.util.Optional.empty());
		String svg = SvgText.of(Picture.of(new Derivation(List.of(node), List.of()), TextMeasure.USUAL), "</title><x/>");
		Element root = DocumentBuilderFactory.newInstance().newDocumentBuilder()
				.parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8))).getDocumentElement();
		assertEquals("svg", root.getTagName());
		assertEquals(0, root.getElementsByTagName("script").getLength() + root.getElementsByTagName("x").getLength());
		assertEquals("</title><x/>", root.getElementsByTagName("title").item(0).getTextContent());
	}
}
