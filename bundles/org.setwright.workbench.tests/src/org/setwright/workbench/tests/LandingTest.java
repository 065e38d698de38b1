package org.setwright.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.setwright.workbench.jobs.JobsView;
import org.setwright.workbench.landing.LandingView;
import org.setwright.workbench.welcome.StarterBook;

@ExtendWith(NothingLogged.class)
class LandingTest {
	@TempDir
	private Path place;

	@BeforeEach
	void open() throws Exception {
		StarterBook.copyTo(place.resolve("ours"));
		Bench.page().showView(JobsView.ID);
		Bench.page().showView(LandingView.ID);
		Bench.open(place.resolve("ours"));
	}

	@AfterEach
	void close() {
		Bench.clear();
	}

	@Test
	void pickingAJobShowsItsConductorsWithBothEndsAndWhatIsLostByIt() {
		Bench.pick(jobs(), "Cooper Lane 8, four wires");
		TreeItem common = Bench.pick(conductors(), "green 18 AWG");
		assertEquals(List.of("common", "G \u2192 C", "G \u2192 C", "move"), Arrays.asList(common.getText(1), common.getText(2), common.getText(3), common.getText(4)));
		assertNotNull(common.getImage(0), "its colour is shown beside its name");
		assertNotNull(common.getImage(4), "whether it is sure has a sign, too");
		assertTrue(detail().contains("The controller's maker asks for 24 V between R and C"), detail());
		Bench.pick(conductors(), "with yellow 18 AWG");
		assertTrue(detail().contains("join G to Y") && detail().contains("What is lost"), detail());
	}

	@Test
	void aHardStopIsShownInsteadOfAPlanAndAnotherJobReplacesIt() {
		Bench.pick(jobs(), "Cottage 3, electric baseboards");
		assertEquals("First clear this", conductors().getItem(0).getText());
		assertTrue(!Bench.all(Label.class, l -> l.getText().equals("No conductor may be landed yet")).isEmpty());
		Bench.pick(jobs(), "Larch Lane 14, upstairs");
		assertEquals("To land", conductors().getItem(0).getText());
	}

	@Test
	void aConductorLeadsToItsWireInTheJobsForm() {
		Bench.pick(jobs(), "Larch Lane 14, upstairs");
		TreeItem orange = Bench.pick(conductors(), "orange 18 AWG");
		Event event = new Event();
		event.item = orange;
		conductors().notifyListeners(SWT.DefaultSelection, event);
		Waiting.settle();
		assertEquals("larch-lane-14.yaml", Bench.editor().getEditorInput().getName());
	}

	private static String detail() {
		return Bench.called("About the conductor picked above", Text.class).getText();
	}

	private static Table jobs() {
		return Bench.called("Jobs of the rule book", Table.class);
	}

	private static Tree conductors() {
		return Bench.called("Conductors of the job", Tree.class);
	}
}
