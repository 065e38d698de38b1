package org.setwright.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.action.ActionContributionItem;
import org.eclipse.jface.action.IAction;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.eclipse.ui.IViewPart;
import org.eclipse.ui.part.ViewPart;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.setwright.workbench.cases.CasesView;
import org.setwright.workbench.look.Spoken;
import org.setwright.workbench.reasons.ReasonsView;

@ExtendWith(NothingLogged.class)
class CasesViewTest {
	private static final String QUARRY = "jobs/quarry-hill-8.yaml";
	@TempDir
	private Path folder;
	private IViewPart view;

	@BeforeEach
	void open() throws Exception {
		Bench.openTestBook(folder);
		Bench.page().showView(ReasonsView.ID);
		view = Bench.page().showView(CasesView.ID);
		Waiting.settle();
	}

	@AfterEach
	void close() {
		Bench.page().hideView(view);
		Bench.clear();
	}

	@Test
	void everyJobIsListedAndWhatIsNotMetIsUnfolded() {
		assertEquals(List.of("Larch Lane 14, upstairs | 2 met", "Mill Road 3 | 2 met", "Quarry Hill 8 | 1 of 1 not met"),
				Arrays.stream(list().getItems()).map(i -> i.getText(0) + " | " + i.getText(1)).toList());
		TreeItem valve = Bench.item(list(), "changeover valve");
		assertEquals("Quarry Hill 8", valve.getParentItem().getText());
		assertEquals(List.of("not met", "energised in heating", "energised in cooling"), List.of(valve.getText(1), valve.getText(2), valve.getText(3)));
		assertTrue(valve.getImage(0) != null, "the standing has a sign, too");
	}

	@Test
	void whatIsPickedIsExplainedHereAndInTheOtherViews() {
		Bench.pick(list(), "changeover valve");
		assertEquals("energised in heating", Bench.called("Expected", Text.class).getText());
		assertEquals("energised in cooling", Bench.called("Came to", Text.class).getText());
		assertTrue(Bench.called("Why it came to that", Text.class).getText().contains("decided by"));
		assertEquals("changeover valve: energised in cooling", Bench.texts(Bench.called("Reasons", Tree.class)).get(0));
	}

	@Test
	void filterAndSearchNarrowTheList() {
		tick("met", false);
		assertEquals(1, list().getItemCount());
		tick("not asked", true);
		assertEquals(3, list().getItemCount());
		Text search = Bench.called("Search jobs, settings and values", Text.class);
		search.setText("quarry schedule");
		Waiting.settle();
		assertEquals(List.of("Quarry Hill 8", "schedule"), Bench.texts(list()));
		search.setText("");
		Waiting.settle();
		assertEquals(3, list().getItemCount());
	}

	@Test
	void aClickOnAHeadingSortsByIt() {
		for (List<String> order : List.of(List.of("Larch", "Mill", "Quarry"), List.of("Quarry", "Mill", "Larch"), List.of("Larch", "Mill", "Quarry"))) {
			list().getColumn(0).notifyListeners(SWT.Selection, new Event());
			assertEquals(order, Arrays.stream(list().getItems()).map(i -> i.getText().split(" ")[0]).toList());
		}
	}

	@Test
	void changingARuleChangesTheListAtOnce() throws Exception {
		String rules = Files.readString(folder.resolve("rules/heat-pump.drl"));
		assertTrue(rules.contains("CHANGEOVER_VALVE, ENERGISED_IN_COOLING"));
		Bench.desk().type("rules/heat-pump.drl", rules.replace("CHANGEOVER_VALVE, ENERGISED_IN_COOLING", "CHANGEOVER_VALVE, ENERGISED_IN_HEATING"));
		Bench.worked();
		assertEquals("1 met", Bench.item(list(), "Quarry Hill 8").getText(1));
		Bench.desk().type("rules/heat-pump.drl", "rule");
		Bench.worked();
		assertEquals("The rules have mistakes, so nothing runs. See Problems.", Bench.item(list(), "Quarry Hill 8").getText(1));
		assertFalse(action("Run Every Job Again").isEnabled());
	}

	@Test
	void whatChangesWhileTypingCanBeShownAlone() throws Exception {
		showChangedAlone(true);
		assertEquals(0, list().getItemCount(), "nothing is being typed");
		String rules = Files.readString(folder.resolve("rules/heat-pump.drl"));
		Bench.desk().type("rules/heat-pump.drl", rules.replace("CHANGEOVER_VALVE, ENERGISED_IN_COOLING", "CHANGEOVER_VALVE, ENERGISED_IN_HEATING"));
		Bench.worked();
		assertEquals(List.of("Quarry Hill 8"), Arrays.stream(list().getItems()).map(TreeItem::getText).toList());
		Bench.desk().typed("rules/heat-pump.drl");
		Bench.worked();
		assertEquals(0, list().getItemCount(), "what was typed has been thrown away");
		showChangedAlone(false);
		assertEquals(3, list().getItemCount(), "every job is listed again");
	}

	/** Where another perspective shows the view too it stays open between tests, so what is ticked has to be unticked. */
	private static void showChangedAlone(boolean wanted) {
		Button changed = Bench.all(Button.class, b -> b.getText().equals("Changed")).get(0);
		changed.setSelection(wanted);
		changed.notifyListeners(SWT.Selection, new Event());
	}

	@Test
	void anAcceptedOutcomeIsMetCanBeUndoneAndIsSavedWithItsReason() throws Exception {
		Bench.pick(list(), "changeover valve");
		answerDialog("Dana Reyes", "The plate says so: cooling.");
		action("Accept\u2026").run();
		Bench.worked();
		assertEquals("1 met", Bench.item(list(), "Quarry Hill 8").getText(1));
		assertTrue(Bench.editor().isDirty(), "nothing is saved without being asked for");
		Bench.page().activate(Bench.editor());
		Bench.command("org.eclipse.ui.edit.undo");
		Bench.worked();
		assertEquals("1 of 1 not met", Bench.item(list(), "Quarry Hill 8").getText(1));
		Bench.command("org.eclipse.ui.edit.redo");
		Bench.editor().doSave(new NullProgressMonitor());
		Bench.worked();
		String saved = Files.readString(folder.resolve(QUARRY));
		assertTrue(saved.contains("  changeover valve: energised in cooling\n"), saved);
		assertTrue(saved.contains("    was: energised in heating\n    now: energised in cooling\n"), saved);
		assertTrue(saved.contains("    by: Dana Reyes\n    because: 'The plate says so: cooling.'\n"), saved);
	}

	@Test
	void theDialogWantsANameAndAReason() {
		Bench.pick(list(), "changeover valve");
		boolean[] enabled = new boolean[2];
		whenOpen("Accept New Outcomes", shell -> {
			Button accept = find(shell, Button.class, b -> b.getText().equals("Accept"));
			text(shell, "Who accepts it").setText("Dana");
			enabled[0] = accept.isEnabled();
			text(shell, "Why it is right").setText("So it is.");
			enabled[1] = accept.isEnabled();
			shell.close();
		});
		action("Accept\u2026").run();
		Bench.worked();
		assertEquals(List.of(false, true), List.of(enabled[0], enabled[1]));
		assertEquals("1 of 1 not met", Bench.item(list(), "Quarry Hill 8").getText(1), "closing the dialog accepts nothing");
	}

	@Test
	void everyJobCanBeRunAgain() throws Exception {
		action("Run Every Job Again").run();
		Waiting.until(() -> Arrays.stream(Job.getJobManager().find(null)).noneMatch(j -> j.getName().startsWith("Running ")), "the jobs to be run");
		Waiting.settle();
		assertEquals("1 of 1 not met", Bench.item(list(), "Quarry Hill 8").getText(1));
	}

	@Test
	void aClickOnStandingSortsByHowMuchIsNotMet() {
		list().getColumn(1).notifyListeners(SWT.Selection, new Event());
		assertEquals("Quarry Hill 8", list().getItem(0).getText());
		list().getColumn(1).notifyListeners(SWT.Selection, new Event());
		assertEquals("Quarry Hill 8", list().getItem(2).getText());
		list().getColumn(1).notifyListeners(SWT.Selection, new Event());
	}

	@Test
	void theWorkCanBeStoppedAndTakenUpAgain() throws Exception {
		String rules = Files.readString(folder.resolve("rules/heat-pump.drl"));
		Bench.desk().type("rules/heat-pump.drl", rules.replace("CHANGEOVER_VALVE, ENERGISED_IN_COOLING", "CHANGEOVER_VALVE, ENERGISED_IN_HEATING"));
		Bench.desk().stop();
		Waiting.until(() -> !Bench.desk().busy(), "the work to be stopped");
		Waiting.settle();
		assertTrue(((ViewPart) view).getContentDescription().startsWith("Stopped."), ((ViewPart) view).getContentDescription());
		assertEquals("1 of 1 not met", Bench.item(list(), "Quarry Hill 8").getText(1), "what it came to before");
		action("Run Every Job Again").run();
		Bench.worked();
		assertEquals("1 met", Bench.item(list(), "Quarry Hill 8").getText(1));
		assertFalse(((ViewPart) view).getContentDescription().startsWith("Stopped."));
	}

	private void answerDialog(String name, String reason) {
		whenOpen("Accept New Outcomes", shell -> {
			text(shell, "Who accepts it").setText(name);
			text(shell, "Why it is right").setText(reason);
			find(shell, Button.class, b -> b.getText().equals("Accept")).notifyListeners(SWT.Selection, new Event());
		});
	}

	/** The dialog has the window's thread to itself, so what is to be done in it waits there. */
	private static void whenOpen(String title, java.util.function.Consumer<Shell> then) {
		Display display = Display.getCurrent();
		display.timerExec(50, new Runnable() {
			@Override
			public void run() {
				Arrays.stream(display.getShells()).filter(s -> s.getText().equals(title) && s.isVisible()).findFirst()
						.ifPresentOrElse(then, () -> display.timerExec(50, this));
			}
		});
	}

	private static Text text(Shell shell, String name) {
		return find(shell, Text.class, t -> name.equals(t.getData(Spoken.KEY)));
	}

	private static <T extends Control> T find(Composite in, Class<T> type, java.util.function.Predicate<T> wanted) {
		for (Control child : in.getChildren()) {
			if (type.isInstance(child) && wanted.test(type.cast(child))) {
				return type.cast(child);
			}
			T found = child instanceof Composite inner ? find(inner, type, wanted) : null;
			if (found != null) {
				return found;
			}
		}
		return null;
	}

	private static void tick(String standing, boolean wanted) {
		Button button = Bench.all(Button.class, b -> b.getText().startsWith(standing + " (")).get(0);
		button.setSelection(wanted);
		button.notifyListeners(SWT.Selection, new Event());
		Waiting.settle();
	}

	private IAction action(String text) {
		return Arrays.stream(view.getViewSite().getActionBars().getToolBarManager().getItems()).filter(ActionContributionItem.class::isInstance)
				.map(i -> ((ActionContributionItem) i).getAction()).filter(a -> a.getText().equals(text)).findFirst().orElseThrow();
	}

	private static Tree list() {
		return Bench.called("Job cases", Tree.class);
	}
}
