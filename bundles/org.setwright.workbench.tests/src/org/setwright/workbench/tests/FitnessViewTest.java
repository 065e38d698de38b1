package org.setwright.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CLabel;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.eclipse.ui.IViewPart;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.setwright.workbench.fitness.FitnessView;

@ExtendWith(NothingLogged.class)
class FitnessViewTest {
	@TempDir
	private Path folder;
	private IViewPart view;

	@BeforeEach
	void open() throws Exception {
		Bench.openTestBook(folder);
		view = Bench.page().showView(FitnessView.ID);
		Waiting.until(() -> tree("Rules").getItemCount() > 0, "the rules to be counted");
	}

	@AfterEach
	void close() {
		Bench.page().hideView(view);
		Bench.clear();
	}

	@Test
	void rulesConditionsAndRowsAreCountedAndFollowWhatIsTyped() throws Exception {
		int wanting = tree("Rules").getItemCount();
		tick(false);
		int all = Bench.desk().state().edition().orElseThrow().rules().size();
		assertEquals(all, tree("Rules").getItemCount());
		assertTrue(wanting < all);
		assertTrue(figure("rules spoken").contains(" %"), figure("rules spoken"));
		String rules = Files.readString(folder.resolve("rules/stages.drl"));
		Bench.desk().type("rules/stages.drl", rules + "\nrule \"Nobody asks\"\n@authority( shop practice )\n@because( \"x\" )\n@source( common practice )\n"
				+ "when\n    OutdoorUnit( stages == 1, stages == 2 )\nthen\n    caution( NOTE, \"Never.\" );\nend\n");
		Waiting.until(() -> tree("Rules").getItemCount() == all + 1, "the rule being typed to be counted");
		TreeItem item = Bench.item(tree("Rules"), "Nobody asks");
		assertEquals("never spoke", item.getText(1));
		assertEquals("0", item.getText(2));
	}

	@Test
	void theBookSaysHowMuchIsEnough() throws Exception {
		assertFalse(figure("rules spoken").contains("demanded"));
		Files.writeString(folder.resolve("book.yaml"), Files.readString(folder.resolve("book.yaml")) + "at least:\n  rules spoken: 100 %\n");
		Bench.desk().refresh();
		Waiting.until(() -> figure("rules spoken").contains("at least 100 % demanded"), "the demand to be shown");
	}

	@Test
	void headingsSortAndASearchNarrows() {
		tick(false);
		Tree rules = tree("Rules");
		rules.getColumn(2).notifyListeners(SWT.Selection, new Event());
		List<Integer> spoke = Arrays.stream(rules.getItems()).map(i -> Integer.parseInt(i.getText(2))).toList();
		assertEquals(spoke.stream().sorted().toList(), spoke);
		String first = rules.getItem(0).getText();
		Bench.called("Search rules, settings and mistakes", Text.class).setText(first);
		Waiting.settle();
		assertEquals(first, rules.getItem(0).getText());
		assertTrue(rules.getItemCount() < spoke.size());
	}

	@Test
	void aMistakeNobodyNoticesGetsAJobThatIsSavedAndThenNoticesIt() throws Exception {
		press("&Make Small Mistakes in the Rules");
		ended();
		assertTrue(figure("mistakes caught").contains(" %"), figure("mistakes caught"));
		String before = figure("mistakes caught");
		assertTrue(mistakes().stream().allMatch(i -> i.getText(2).equals("nobody notices")), "only what is wanting is shown");
		press("&Look for Jobs That Would Notice");
		ended();
		TreeItem found = mistakes().stream().filter(i -> i.getText(2).startsWith("would be noticed")).findFirst().orElseThrow();
		Tree tree = tree("Deliberate mistakes");
		tree.setSelection(found);
		Event event = new Event();
		event.item = found;
		tree.notifyListeners(SWT.Selection, event);
		Waiting.settle();
		assertTrue(Bench.called("The picked mistake in full", Text.class).getText().contains("would be noticed"));
		List<String> jobs = jobs();
		press("Save the &Found Job");
		Bench.worked();
		List<String> more = jobs().stream().filter(j -> !jobs.contains(j)).toList();
		assertEquals(1, more.size());
		String text = Files.readString(folder.resolve("jobs").resolve(more.get(0)));
		assertTrue(text.replaceAll("\\s+", " ").contains("from what the rules said, not reasoned"), text);
		Waiting.until(() -> Bench.desk().state().latest().flatMap(e -> e.outcome("jobs/" + more.get(0))).isPresent(), "the job to be run");
		press("&Make Small Mistakes in the Rules");
		ended();
		assertTrue(share(figure("mistakes caught")) > share(before), before + " before, now " + figure("mistakes caught"));
	}

	@Test
	void theWorkCanBeStopped() {
		press("&Make Small Mistakes in the Rules");
		if (button("S&top").isEnabled()) {
			assertFalse(button("&Make Small Mistakes in the Rules").isEnabled(), "never twice at once");
			press("S&top");
		}
		ended();
		assertTrue(button("&Make Small Mistakes in the Rules").isEnabled());
	}

	private static double share(String sentence) {
		return Double.parseDouble(sentence.replaceAll("mistakes caught ([\\d.]+) %.*", "$1"));
	}

	private static void ended() {
		Waiting.until(() -> !button("S&top").isEnabled(), "the work to end");
		Waiting.settle();
	}

	private static List<TreeItem> mistakes() {
		return Arrays.stream(tree("Deliberate mistakes").getItems()).flatMap(i -> {
			i.setExpanded(true);
			Event event = new Event();
			event.item = i;
			i.getParent().notifyListeners(SWT.Expand, event);
			return Arrays.stream(i.getItems());
		}).toList();
	}

	private static void press(String label) {
		assertTrue(button(label).isEnabled(), label);
		button(label).notifyListeners(SWT.Selection, new Event());
		Waiting.settle();
	}

	private static Button button(String label) {
		return Bench.all(Button.class, b -> b.getText().equals(label)).get(0);
	}

	private static void tick(boolean wanting) {
		Button tick = Bench.all(Button.class, b -> b.getText().equals("Only what is wanting")).get(0);
		tick.setSelection(wanting);
		tick.notifyListeners(SWT.Selection, new Event());
		Waiting.settle();
	}

	private static String figure(String name) {
		return Bench.all(CLabel.class, l -> name.equals(l.getData(org.setwright.workbench.look.Spoken.KEY))).stream().map(CLabel::getText).findFirst().orElse("");
	}

	private static Tree tree(String name) {
		return Bench.called(name, Tree.class);
	}

	private List<String> jobs() throws IOException {
		try (Stream<Path> files = Files.list(folder.resolve("jobs"))) {
			return files.map(f -> f.getFileName().toString()).sorted().toList();
		}
	}
}
