package org.setwright.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Link;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.eclipse.ui.texteditor.ITextEditor;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.setwright.workbench.jobs.JobsView;
import org.setwright.workbench.reasons.ReasonsView;
import org.setwright.workbench.setup.SetupView;

@ExtendWith(NothingLogged.class)
class SetupAndReasonsTest {
	@TempDir
	private Path folder;

	@BeforeEach
	void open() throws Exception {
		Bench.openTestBook(folder);
		Bench.page().showView(JobsView.ID);
		Bench.page().showView(ReasonsView.ID);
		Bench.page().showView(SetupView.ID);
		Waiting.settle();
	}

	@AfterEach
	void close() {
		Bench.clear();
	}

	@Test
	void theJobsAreListedWithTheirStanding() {
		assertEquals(List.of("Larch Lane 14, upstairs | all 2 as expected", "Mill Road 3 | all 2 as expected",
				"Quarry Hill 8 | 1 of 1 not as expected"),
				Arrays.stream(jobs().getItems()).map(i -> i.getText(0) + " | " + i.getText(1)).toList());
	}

	@Test
	void searchNarrowsTheListOfJobs() {
		Text search = Bench.all(Text.class, t -> t.getMessage().startsWith("Search jobs")).get(0);
		search.setText("norrvik");
		Waiting.settle();
		assertEquals(1, jobs().getItemCount());
		search.setText("");
		Waiting.settle();
		assertEquals(3, jobs().getItemCount());
	}

	@Test
	void pickingAJobShowsItsSettingsWithRuleAndAuthority() {
		Bench.pick(jobs(), "Mill Road 3");
		TreeItem valve = Bench.item(settings(), "changeover valve");
		assertEquals("energised in cooling", valve.getText(1));
		assertEquals("table changeover-by-maker, row 2", valve.getText(3));
		assertEquals("maker's instructions", valve.getText(4));
		assertTrue(valve.getImage(2) != null, "the state has a sign, too");
	}

	@Test
	void pickingASettingShowsItsReasonsDownToTheAnswersOfTheJob() {
		Bench.pick(jobs(), "Larch Lane 14, upstairs");
		Bench.pick(settings(), "changeover valve");
		List<String> lines = Bench.texts(reasons());
		assertEquals("changeover valve: energised in heating", lines.get(0));
		assertTrue(lines.get(1).startsWith("table changeover-by-maker, row 1: energised in heating"), lines.toString());
		assertTrue(lines.stream().anyMatch(l -> l.startsWith("outdoor unit: maker: Norrvik")), lines.toString());
		assertTrue(Bench.called("About the line picked above", Text.class).getText().contains("Norrvik powers the valve to heat."));
	}

	@Test
	void theSettingStaysPickedWhenAnotherJobIs() {
		Bench.pick(jobs(), "Larch Lane 14, upstairs");
		Bench.pick(settings(), "changeover valve");
		Bench.pick(jobs(), "Mill Road 3");
		assertEquals("changeover valve: energised in cooling", Bench.texts(reasons()).get(0));
	}

	@Test
	void aReasonOpensItsRuleAtItsLine() {
		Bench.pick(jobs(), "Mill Road 3");
		Bench.pick(settings(), "compressor with auxiliary heat");
		open(Bench.pick(reasons(), Bench.texts(reasons()).get(1)));
		ITextEditor editor = Bench.editor().getAdapter(ITextEditor.class);
		assertEquals("heat-pump.drl", editor.getTitle());
		var selection = (org.eclipse.jface.text.ITextSelection) editor.getSelectionProvider().getSelection();
		assertEquals(37, selection.getStartLine() + 1, "the line of the rule");
	}

	@Test
	void aCautionLeadsToItsRule() {
		Bench.pick(jobs(), "Mill Road 3");
		Link caution = Bench.all(Link.class, l -> l.getText().contains("Fuel gas")).get(0);
		assertTrue(caution.getText().startsWith("LICENSED WORK"), caution.getText());
		caution.notifyListeners(SWT.Selection, new Event());
		Waiting.settle();
		assertEquals("heat-pump.drl", Bench.editor().getTitle());
	}

	@Test
	void whatIsUnknownIsOfferedToBeFoundOutAndLeadsToItsField() throws IOException {
		Bench.pick(jobs(), "Quarry Hill 8");
		Table next = Bench.called("To find out next", Table.class);
		assertTrue(Arrays.stream(next.getItems()).anyMatch(i -> i.getText(0).equals("outdoor unit: maker")
				&& i.getText(1).contains("changeover valve")), "the maker decides the valve");
	}

	private static void open(TreeItem item) {
		Event event = new Event();
		event.item = item;
		item.getParent().notifyListeners(SWT.DefaultSelection, event);
		Waiting.settle();
	}

	private static Table jobs() {
		return Bench.called("Jobs of the rule book", Table.class);
	}

	private static Tree settings() {
		return Bench.called("Settings of the job", Tree.class);
	}

	private static Tree reasons() {
		return Bench.called("Reasons", Tree.class);
	}
}
