package org.setwright.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Tree;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.setwright.workbench.jobs.JobRow.Standing;
import org.setwright.workbench.jobs.JobRows;
import org.setwright.workbench.jobs.JobsView;
import org.setwright.workbench.reasons.ReasonsView;
import org.setwright.workbench.setup.SetupView;
import org.setwright.workbench.welcome.StarterBook;

@ExtendWith(NothingLogged.class)
class StarterBookTest {
	private static final String HEAT_PUMP = "Larch Lane 14, upstairs";
	@TempDir
	private Path place;

	@AfterEach
	void close() {
		Bench.clear();
	}

	@Test
	void aCopyOpensAndEveryJobComesToWhatIsExpected() throws Exception {
		StarterBook.copyTo(place.resolve("ours"));
		Bench.open(place.resolve("ours"));
		var evaluation = Bench.desk().state().latest().orElseThrow();
		assertEquals(List.of(), evaluation.problems());
		assertTrue(evaluation.book().jobs().size() >= 24, evaluation.book().jobs().size() + " jobs");
		assertEquals(List.of(), JobRows.of(evaluation).stream().filter(r -> r.standing() != Standing.AS_EXPECTED).toList());
	}

	@Test
	void aJobOfItShowsItsSettingsAndWhy() throws Exception {
		StarterBook.copyTo(place.resolve("ours"));
		Bench.page().showView(JobsView.ID);
		Bench.page().showView(ReasonsView.ID);
		Bench.page().showView(SetupView.ID);
		Bench.open(place.resolve("ours"));
		Table jobs = Bench.called("Jobs of the rule book", Table.class);
		assertEquals(Bench.desk().state().latest().orElseThrow().book().jobs().size(), jobs.getItemCount());
		Bench.pick(jobs, HEAT_PUMP);
		Tree settings = Bench.called("Settings of the job", Tree.class);
		String value = Bench.pick(settings, "changeover valve").getText(1);
		List<String> reasons = Bench.texts(Bench.called("Reasons", Tree.class));
		assertEquals("changeover valve: " + value, reasons.get(0));
		assertTrue(reasons.size() > 3, reasons.toString());
		assertTrue(Arrays.stream(settings.getItems()).allMatch(group -> group.getItemCount() > 0));
	}

	@Test
	void nothingIsCopiedOverAnything() throws Exception {
		Files.createDirectory(place.resolve("ours"));
		Files.createFile(place.resolve("ours").resolve("mine.txt"));
		assertThrows(FileAlreadyExistsException.class, () -> StarterBook.copyTo(place.resolve("ours")));
		assertEquals(1, Files.list(place.resolve("ours")).toList().size());
	}
}
