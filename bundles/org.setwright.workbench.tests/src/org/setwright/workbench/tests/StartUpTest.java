package org.setwright.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Arrays;
import org.eclipse.jface.action.ActionContributionItem;
import org.eclipse.jface.action.IAction;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IViewPart;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.setwright.workbench.jobs.JobsView;
import org.setwright.workbench.startup.StartUpView;

@ExtendWith(NothingLogged.class)
class StartUpTest {
	@TempDir
	private Path folder;
	private IViewPart view;

	@BeforeEach
	void open() throws Exception {
		Bench.openTestBook(folder);
		Bench.page().showView(JobsView.ID);
		view = Bench.page().showView(StartUpView.ID);
		Waiting.settle();
	}

	@AfterEach
	void close() {
		Bench.clear();
	}

	@Test
	void theChecksOfThePickedJobAreShownInOrder() {
		pick("Larch Lane 14, upstairs");
		String text = sheet().getText();
		assertTrue(text.indexOf("BEFORE POWER") < text.indexOf("COOLING"), text);
		assertTrue(text.contains("the valve is energised in heating"), text);
		pick("Mill Road 3");
		assertTrue(sheet().getText().contains("the valve is energised in cooling"), sheet().getText());
	}

	@Test
	void theCaretPicksACheckWhoseReasonsAreShown() {
		pick("Larch Lane 14, upstairs");
		sheet().setCaretOffset(sheet().getText().indexOf("The air is"));
		Waiting.settle();
		assertTrue(Bench.called("Why the check picked above", Text.class).getText().startsWith("\u201cFeel the air when it cools\u201d"));
	}

	@Test
	void aDoubleClickOpensTheRule() {
		pick("Larch Lane 14, upstairs");
		sheet().setCaretOffset(sheet().getText().indexOf("The air is"));
		sheet().notifyListeners(SWT.MouseDoubleClick, new Event());
		Waiting.settle();
		assertEquals("stages.drl", Bench.editor().getTitle());
	}

	@Test
	void theUnitsCanBeChosen() {
		pick("Larch Lane 14, upstairs");
		assertTrue(sheet().getText().contains("15 to 22 F° (8.3 to 12.2 C°)"), "both at first");
		choose("Show °C, m, L/s");
		assertTrue(sheet().getText().contains("8.3 to 12.2 C° colder") && !sheet().getText().contains("F°"), sheet().getText());
		choose("Show Both Kinds of Units");
		assertTrue(sheet().getText().contains("15 to 22 F°"));
	}

	private void choose(String words) {
		IAction action = Arrays.stream(view.getViewSite().getActionBars().getMenuManager().getItems())
				.filter(ActionContributionItem.class::isInstance).map(i -> ((ActionContributionItem) i).getAction())
				.filter(a -> words.equals(a.getText())).findFirst().orElseThrow();
		action.setChecked(true);
		action.run();
		Waiting.settle();
	}

	private static void pick(String job) {
		Bench.pick(Bench.called("Jobs of the rule book", Table.class), job);
	}

	private static StyledText sheet() {
		return Bench.called("Start-up checks", StyledText.class);
	}
}
