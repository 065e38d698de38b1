package org.setwright.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CTabFolder;
import org.eclipse.swt.custom.CTabItem;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.eclipse.ui.IViewPart;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.setwright.editions.EditionsOf;
import org.setwright.editions.kept.Who;
import org.setwright.trade.Trade;
import org.setwright.workbench.editions.EditionsView;
import org.setwright.workbench.folder.FolderChanges;

@ExtendWith(NothingLogged.class)
class EditionsViewTest {
	private static final Who TRINE = new Who("Trine Aasen", "trine@fennimore.example");
	private static final Who ODD = new Who("Odd Bakke", "odd@fennimore.example");
	private static final String FILE = "rules/heat-pump.drl";
	private static final String VALVE = "Maker not looked up: take cooling, and check";
	@TempDir
	private Path folder;
	private IViewPart view;

	/** A book of two editions: the second has a rule say the opposite. */
	private void twoEditions() throws Exception {
		Bench.openTestBook(folder);
		try (EditionsOf editions = EditionsOf.start(folder, Trade.catalogue(), List.of())) {
			Files.writeString(folder.resolve(".git/config"), Files.readString(folder.resolve(".git/config"))
					+ "[user]\n\tname = Marit Cole\n\temail = marit@fennimore.example\n[commit]\n\tgpgSign = false\n[tag]\n\tgpgSign = false\n");
			editions.keep(editions.work(), "First edition", Optional.of(TRINE));
			change("CHANGEOVER_VALVE, ENERGISED_IN_COOLING", "CHANGEOVER_VALVE, ENERGISED_IN_HEATING");
			editions.keep(editions.work(), "Heating instead of cooling\n\nThe makers here do it so.", Optional.of(ODD));
		}
		Bench.clear();
		Bench.open(folder);
		show();
		Waiting.until(() -> editions().getItemCount() == 3, "the editions to be listed");
	}

	private void show() throws Exception {
		view = Bench.page().showView(EditionsView.ID);
		Waiting.settle();
	}

	private void change(String from, String to) throws Exception {
		String text = Files.readString(folder.resolve(FILE));
		assertTrue(text.contains(from), text);
		Files.writeString(folder.resolve(FILE), text.replace(from, to));
	}

	@AfterEach
	void close() {
		Bench.page().hideView(view);
		Bench.clear();
	}

	@Test
	void editionsAreListedAndTheLastIsComparedWithTheOneBeforeIt() throws Exception {
		twoEditions();
		assertEquals(List.of("Work in hand | everything is kept", "Odd Bakke | Heating instead of cooling", "Trine Aasen | First edition"),
				Arrays.stream(editions().getItems()).map(i -> (i.getText(1).isEmpty() ? i.getText(0) : i.getText(1)) + " | " + i.getText(2)).toList());
		TreeItem rule = changed(VALVE);
		assertEquals(List.of("outcome changed", FILE), List.of(rule.getText(1), rule.getText(2)));
		assertEquals(1, rule.getParentItem().getItemCount(), "only what changed is listed");
		Bench.pick(tree("What changed"), VALVE);
		List<TableItem> marked = Arrays.stream(Bench.called("Text before and after", Table.class).getItems()).filter(i -> !i.getText(0).isEmpty()).toList();
		assertEquals(1, marked.size());
		assertTrue(marked.get(0).getText(1).contains("ENERGISED_IN_COOLING") && marked.get(0).getText(2).contains("ENERGISED_IN_HEATING"));
		assertEquals(Optional.of(VALVE), Bench.desk().state().rule(), "the other views follow");
	}

	@Test
	void twoEditionsThatArePickedAreCompared() throws Exception {
		twoEditions();
		editions().setSelection(2);
		tell(editions());
		listed("Feel the air when it cools", "the first edition to be compared with nothing");
		editions().setSelection(new int[] { 1, 2 });
		tell(editions());
		Waiting.until(() -> all(tree("What changed")).equals(List.of("Rules and rows (1)", VALVE)), "the two to be compared");
	}

	@Test
	void theJobsThatComeToSomethingElseAreFoundWithTheResponsibleChange() throws Exception {
		twoEditions();
		changed(VALVE);
		tab("Impact");
		Waiting.until(() -> tree("Jobs that come to something else").getItemCount() > 0, "the jobs to be run");
		TreeItem valve = Bench.item(tree("Jobs that come to something else"), "changeover valve");
		assertEquals(List.of("energised in cooling", "energised in heating"), List.of(valve.getText(1), valve.getText(2)));
		assertTrue(valve.getText(3).contains(VALVE), valve.getText(3));
		assertFalse(button("S&top").isEnabled());
	}

	@Test
	void whoAnswersAndSinceWhenIsSaidOfWhatIsPickedElsewhere() throws Exception {
		twoEditions();
		Bench.desk().pickRule(VALVE);
		tab("Who Answers");
		Tree steps = tree("Editions that changed the rule");
		Waiting.until(() -> steps.getItemCount() == 2, "the rule to be followed");
		assertEquals(List.of("Odd Bakke", "Trine Aasen"), Arrays.stream(steps.getItems()).map(i -> i.getText(1)).toList());
		assertTrue(steps.getItem(0).getText(3).contains("The makers here do it so."));
		Bench.desk().pickJob("jobs/quarry-hill-8.yaml");
		Bench.desk().pickSetting(Trade.catalogue().settings().stream().filter(s -> s.label().equals("changeover valve")).findFirst().orElseThrow());
		tab("Since");
		Tree since = tree("Editions since which it comes to that");
		Waiting.until(() -> since.getItemCount() == 1, "the value to be traced");
		assertTrue(since.getItem(0).getText(0).endsWith("Odd Bakke"));
		assertEquals("energised in cooling", since.getItem(0).getText(1));
		assertTrue(since.getItem(0).getText(2).contains(VALVE));
	}

	@Test
	void keepingMakesAThirdEditionWithTheMessageThatIsOffered() throws Exception {
		twoEditions();
		change("a minority energise it to heat", "some energise it to heat");
		FolderChanges.look();
		Waiting.until(() -> editions().getItem(0).getText(2).equals("not kept (1): " + FILE), "the work in hand to be noticed");
		String[] offered = new String[2];
		Dialogs.whenOpen("Keep as Edition", shell -> {
			offered[0] = Dialogs.text(shell, "Message").getText();
			offered[1] = Dialogs.text(shell, "By").getText();
			Dialogs.text(shell, "Message").setText(offered[0] + "\n\nIt is fewer than it was.");
			Dialogs.press(shell, "Keep");
		});
		press("&Keep as Edition\u2026");
		Waiting.until(() -> editions().getItemCount() == 4, "the third edition to be listed");
		assertEquals(List.of('"' + VALVE + "\": wording changed", "Marit Cole <marit@fennimore.example>"), List.of(offered));
		assertEquals("everything is kept", editions().getItem(0).getText(2));
		TableItem third = editions().getItem(1);
		assertEquals(List.of("Marit Cole", offered[0], "not signed"), List.of(third.getText(1), third.getText(2), third.getText(3)));
		Waiting.until(() -> all(tree("What changed")).contains(VALVE) && Bench.item(tree("What changed"), VALVE).getText(1).equals("wording changed"),
				"the new edition to be compared");
		try (EditionsOf editions = EditionsOf.find(folder, Trade.catalogue(), List.of()).orElseThrow()) {
			assertEquals(offered[0] + "\n\nIt is fewer than it was.", editions.demandLast().message());
			assertEquals(3, editions.history().size());
		}
	}

	@Test
	void aRuleIsPutBackAsWorkInHand() throws Exception {
		twoEditions();
		changed(VALVE);
		Bench.pick(tree("What changed"), VALVE);
		Dialogs.whenOpen("Put Back Rule", shell -> Dialogs.press(shell, "OK"));
		press("Put Back &Rule\u2026");
		Waiting.until(() -> editions().getItem(0).getText(2).equals("not kept (1): " + FILE), "the rule to be work in hand");
		assertTrue(Files.readString(folder.resolve(FILE)).contains("CHANGEOVER_VALVE, ENERGISED_IN_COOLING"));
		assertEquals(3, editions().getItemCount(), "nothing is kept by it");
	}

	@Test
	void aRemarkIsListedAndSettledAndTheEditionSigned() throws Exception {
		twoEditions();
		changed(VALVE);
		Bench.pick(tree("What changed"), VALVE);
		tab("Review");
		Dialogs.whenOpen("Remark", shell -> {
			Dialogs.text(shell, "What you say").setText("Is that so?");
			Dialogs.press(shell, "Remark");
		});
		press("Re&mark\u2026");
		Tree remarks = tree("Remarks");
		Waiting.until(() -> all(remarks).equals(List.of("rule " + VALVE, "Is that so?")), "the remark to be listed");
		assertEquals("open", remarks.getItem(0).getText(1));
		Waiting.until(() -> changed(VALVE).getText(3).equals("1 open"), "the change to tell of the remark");
		Bench.pick(remarks, "rule " + VALVE);
		Dialogs.whenOpen("Settle", shell -> {
			Dialogs.text(shell, "What you say").setText("It is.");
			Dialogs.press(shell, "Settle");
		});
		press("S&ettle\u2026");
		Waiting.until(() -> remarks.getItem(0).getText(1).equals("settled"), "the matter to be settled");
		assertEquals(3, all(remarks).size());
		Dialogs.whenOpen("Keep as Edition", shell -> Dialogs.press(shell, "Keep"));
		press("&Keep as Edition\u2026");
		Waiting.until(() -> editions().getItem(0).getText(2).equals("everything is kept"), "the remarks to be kept");
		Dialogs.whenOpen("Sign", shell -> {
			Dialogs.text(shell, "Note beside the signature (may be empty)").setText("Tried on two jobs.");
			Dialogs.press(shell, "Sign");
		});
		press("&Sign\u2026");
		Waiting.until(() -> editions().getItem(1).getText(3).startsWith("signed by Marit Cole"), "the edition to be signed");
		assertEquals("not signed", editions().getItem(2).getText(3));
	}

	@Test
	void aTrialIsBegunAndJoinedRuleByRule() throws Exception {
		twoEditions();
		tab("Lines");
		Tree lines = tree("Lines of work");
		assertEquals(1, lines.getItemCount());
		String practice = lines.getItem(0).getText();
		Dialogs.whenOpen("Begin a Trial", shell -> {
			Dialogs.type(shell, "warm-first");
			Dialogs.press(shell, "OK");
		});
		press("Be&gin a Trial\u2026");
		Waiting.until(() -> lines.getItemCount() == 2 && Bench.item(lines, "warm-first").getText(1).equals("open"), "the trial to be open");
		keepElsewhere("CHANGEOVER_VALVE, ENERGISED_IN_HEATING", "CHANGEOVER_VALVE, ENERGISED_IN_COOLING");
		Bench.pick(lines, practice);
		press("Go &Over");
		Waiting.until(() -> Bench.item(lines, practice).getText(1).equals("open"), "the practice to be open again");
		keepElsewhere("a minority energise it to heat", "some energise it to heat");
		keepElsewhere("There is nothing to call for.", "Nothing is there to be called for.");
		Bench.pick(lines, "warm-first");
		boolean[] before = new boolean[1];
		Dialogs.whenOpen("Join", shell -> {
			before[0] = Dialogs.enabled(shell, "Join");
			Dialogs.press(shell, "Take It as There");
			Dialogs.press(shell, "Join");
		});
		press("&Join with What Is Open\u2026");
		Waiting.until(() -> editions().getItem(1).getText(2).equals("Joined warm-first"), "the lines to be joined");
		assertFalse(before[0], "what both changed has to be decided first");
		String joined = Files.readString(folder.resolve(FILE));
		assertTrue(joined.contains("CHANGEOVER_VALVE, ENERGISED_IN_COOLING") && joined.contains("Nothing is there to be called for."), joined);
	}

	@Test
	void editionsAreSentToAnotherPlaceAndReceivedFromThere(@TempDir Path elsewhere) throws Exception {
		twoEditions();
		Path place = elsewhere.resolve("shop.git");
		new ProcessBuilder("git", "init", "-q", "--bare", place.toString()).start().waitFor();
		tab("Lines");
		boolean[] sent = new boolean[1];
		Dialogs.whenOpen("Send", address -> {
			Dialogs.type(address, place.toString());
			Dialogs.press(address, "OK");
			Dialogs.whenOpen("Send", done -> {
				sent[0] = Dialogs.says(done, "Sent to origin");
				done.close();
			});
		});
		press("Sen&d\u2026");
		Waiting.until(() -> sent[0], "the editions to be sent");
		try (EditionsOf there = EditionsOf.on(place, "", Trade.catalogue())) {
			assertEquals("Heating instead of cooling", there.edition(there.lines().all().get(0).name()).title());
		}
		boolean[] told = new boolean[1];
		Dialogs.whenOpen("Receive", shell -> {
			told[0] = Dialogs.says(shell, "has nothing that is not here");
			shell.close();
		});
		press("Re&ceive\u2026");
		Waiting.until(() -> told[0], "it to be told that nothing is new there");
	}

	/** Keeps a change as somebody else would, with another program. */
	private void keepElsewhere(String from, String to) throws Exception {
		int before = editions().getItemCount();
		change(from, to);
		try (EditionsOf editions = EditionsOf.find(folder, Trade.catalogue(), List.of()).orElseThrow()) {
			editions.keep(editions.work(), to, Optional.of(TRINE));
		}
		FolderChanges.look();
		Waiting.until(() -> editions().getItemCount() == before + 1, "what was kept elsewhere to be listed");
	}

	@Test
	void aBookInNoRepositoryIsOfferedToBegin() throws Exception {
		Bench.openTestBook(folder);
		show();
		Waiting.until(() -> button("&Begin Keeping Editions").isVisible(), "the button");
		press("&Begin Keeping Editions");
		Waiting.until(() -> editions().isVisible() && editions().getItemCount() == 1, "the work in hand to be listed");
		assertTrue(editions().getItem(0).getText(2).startsWith("not kept ("), editions().getItem(0).getText(2));
		assertTrue(Files.isDirectory(folder.resolve(".git")));
	}

	@Test
	void nothingIsKeptWhenNothingChanged() throws Exception {
		twoEditions();
		boolean[] said = new boolean[1];
		Dialogs.whenOpen("Keep as Edition", shell -> {
			said[0] = Dialogs.says(shell, "Nothing has changed since the last edition.");
			shell.close();
		});
		press("&Keep as Edition\u2026");
		Waiting.until(() -> said[0], "the reason to be told");
		assertEquals(3, editions().getItemCount());
	}

	private TreeItem changed(String name) {
		listed(name, "the change of the rule to be found");
		return Bench.item(tree("What changed"), name);
	}

	/** Waits, and says in vain with what is seen instead. */
	private void listed(String name, String what) {
		try {
			Waiting.until(() -> all(tree("What changed")).contains(name), what);
		} catch (AssertionError vain) {
			throw new AssertionError(vain.getMessage() + "; seen: " + view.getTitle() + ", " + ((org.eclipse.ui.part.ViewPart) view).getContentDescription() + ", "
					+ Bench.all(Table.class, t -> "Editions".equals(t.getData(org.setwright.workbench.look.Spoken.KEY))).size() + " tables, "
					+ Bench.all(Tree.class, t -> "What changed".equals(t.getData(org.setwright.workbench.look.Spoken.KEY))).stream().map(EditionsViewTest::all).toList()
					+ ", picked " + Arrays.toString(editions().getSelectionIndices()) + " of " + Arrays.stream(editions().getItems()).map(i -> i.getText(2)).toList()
					+ ", " + Bench.all(org.eclipse.swt.widgets.Label.class, l -> l.getText().startsWith("Before")).stream().map(l -> l.getText()).toList(), vain);
		}
	}

	private static List<String> all(Tree tree) {
		return Bench.texts(tree);
	}

	private static void tell(Table table) {
		Event event = new Event();
		event.item = table.getSelection()[0];
		table.notifyListeners(SWT.Selection, event);
	}

	private static void tab(String title) {
		for (CTabFolder tabs : Bench.all(CTabFolder.class, f -> Arrays.stream(f.getItems()).anyMatch(i -> i.getText().equals(title)))) {
			CTabItem tab = Arrays.stream(tabs.getItems()).filter(i -> i.getText().equals(title)).findFirst().orElseThrow();
			tabs.setSelection(tab);
			Event event = new Event();
			event.item = tab;
			tabs.notifyListeners(SWT.Selection, event);
		}
		Waiting.settle();
	}

	private static void press(String label) {
		button(label).notifyListeners(SWT.Selection, new Event());
		Waiting.settle();
	}

	private static Button button(String label) {
		return Bench.all(Button.class, b -> b.getText().equals(label)).get(0);
	}

	private static Table editions() {
		return Bench.called("Editions", Table.class);
	}

	private static Tree tree(String name) {
		return Bench.called(name, Tree.class);
	}
}
