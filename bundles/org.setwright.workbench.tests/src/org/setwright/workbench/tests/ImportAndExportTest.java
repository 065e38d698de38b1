package org.setwright.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.eclipse.jface.wizard.IWizard;
import org.eclipse.jface.wizard.WizardDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.setwright.workbench.history.ExportWizard;
import org.setwright.workbench.history.ImportWizard;
import org.setwright.workbench.look.Spoken;

@ExtendWith(NothingLogged.class)
class ImportAndExportTest {
	@TempDir
	private Path folder;
	@TempDir
	private Path outside;
	private WizardDialog dialog;
	private ImportWizard wizard;

	@BeforeEach
	void open() throws Exception {
		Bench.openTestBook(folder);
	}

	@AfterEach
	void close() {
		if (dialog != null && dialog.getShell() != null) {
			dialog.close();
		}
		Bench.clear();
	}

	@Test
	void rowsBecomeJobsOfTheOpenBook() throws Exception {
		importing("Customer,Type,Area\nAlder Close 1,HP,1500\nAlder Close 2,air conditioner,140 m2\n");
		assertEquals(List.of("Customer", "Type", "Area"), Arrays.stream(table("The first rows").getColumns()).map(c -> c.getText()).toList());
		assertEquals("Alder Close 2", table("The first rows").getItem(1).getText(0));
		next();
		assertFalse(button("Finish").isEnabled());
		assertTrue(dialog.getErrorMessage().contains("No column names the jobs"), dialog.getErrorMessage());
		means("Customer", "job");
		means("Type", "outdoor unit kind");
		means("Area", "building floor area");
		combo("Unit of numbers that stand alone").setText("ft2");
		assertEquals(List.of("1500", "140 m2"), column(table("Words in the column"), 0));
		assertEquals(List.of("can be read", "can be read"), column(table("Words in the column"), 2));
		next();
		assertEquals(List.of("2 | Type"), rows());
		assertFalse(button("Finish").isEnabled(), "with a fault nothing is imported");
		press("< &Back");
		wizard.saveMapping(outside.resolve("map.yaml"));
		Files.writeString(outside.resolve("map.yaml"), Files.readString(outside.resolve("map.yaml")).replace("Type: outdoor unit kind",
				"Type: { to: outdoor unit kind, values: { HP: air-source heat pump } }"));
		wizard.loadMapping(outside.resolve("map.yaml"));
		assertEquals("building floor area", table("Columns").getItem(2).getText(2));
		assertEquals("ft2", table("Columns").getItem(2).getText(3), "the unit was kept with the mapping");
		next();
		assertEquals(List.of(), rows());
		assertTrue(dialog.getMessage().startsWith("All 2 rows can be read."), dialog.getMessage());
		press("&Finish");
		Bench.worked();
		assertEquals(2, wizard.imported());
		assertEquals("job: Alder Close 1\noutdoor unit: { kind: air-source heat pump }\nbuilding: { floor area: 1500 ft2 }\n",
				Files.readString(folder.resolve("jobs/alder-close-1.yaml")));
		Waiting.until(() -> Bench.desk().state().latest().filter(e -> e.job("jobs/alder-close-2.yaml").isPresent()).isPresent(), "the jobs to be read");
		assertEquals(List.of("book.yaml", "jobs", "rules", "tables"), names(folder), "nothing else is left");
	}

	@Test
	void aNameThatIsTakenIsAFault() throws Exception {
		importing("job\nMill Road 3\nNew\n");
		next();
		next();
		assertEquals(List.of("2 | "), rows());
		assertTrue(table("Faults").getItem(0).getText(2).contains("already a job called \"Mill Road 3\""));
		assertEquals(3, names(folder.resolve("jobs")).size());
	}

	@Test
	void moreRowsThanABookHoldsAreRefused() throws Exception {
		importing(rows(12_000));
		next();
		next();
		assertEquals(1, table("Faults").getItemCount());
		assertTrue(table("Faults").getItem(0).getText(2).contains("at most 10000 jobs"), table("Faults").getItem(0).getText(2));
		assertFalse(button("&Finish").isEnabled());
	}

	@Test
	void rowsMayGoIntoAnotherFolder() throws Exception {
		importing(rows(40));
		Button elsewhere = find(dialog.getShell(), Button.class, b -> b.getText().contains("Not into this book"));
		elsewhere.setSelection(true);
		elsewhere.notifyListeners(SWT.Selection, new Event());
		assertFalse(button("&Next >").isEnabled(), "a folder has to be named");
		text("&Not into this book, but into the folder:").setText(outside.resolve("all").toString());
		next();
		next();
		press("&Finish");
		assertEquals(40, wizard.imported());
		assertEquals(40, names(outside.resolve("all")).size());
		assertEquals(3, names(folder.resolve("jobs")).size());
	}

	private static String rows(int count) {
		StringBuilder csv = new StringBuilder("job,outdoor unit stages\n");
		IntStream.range(0, count).forEach(i -> csv.append("Job ").append(i).append(",1\n"));
		return csv.toString();
	}

	@Test
	void whatIsNoCsvIsSaidOnTheFirstPage() throws Exception {
		importing("job,\nA,B\n");
		assertTrue(dialog.getErrorMessage().startsWith("The file is no CSV"), dialog.getErrorMessage());
		assertFalse(button("&Next >").isEnabled());
		text("&File:").setText(outside.resolve("none.csv").toString());
		assertTrue(dialog.getErrorMessage().startsWith("There is no file"), dialog.getErrorMessage());
	}

	@Test
	void theJobsOfTheBookBecomeRows() throws Exception {
		start(new ExportWizard(folder, org.setwright.trade.Trade.catalogue()));
		assertFalse(button("&Finish").isEnabled());
		text("&File:").setText(outside.resolve("none/all.csv").toString());
		assertTrue(dialog.getErrorMessage().contains("folder that is there"), dialog.getErrorMessage());
		text("&File:").setText(outside.resolve("all.csv").toString());
		press("&Finish");
		List<String> lines = Files.readAllLines(outside.resolve("all.csv"));
		assertEquals(4, lines.size());
		assertTrue(lines.get(0).startsWith("job,"), lines.get(0));
		assertTrue(lines.get(2).startsWith("Mill Road 3,"), lines.get(2));
	}

	@Test
	void aJobThatCannotBeReadStopsTheExport() throws Exception {
		Files.writeString(folder.resolve("jobs/bad.yaml"), "job: Bad\nlamb: none\n");
		start(new ExportWizard(folder, org.setwright.trade.Trade.catalogue()));
		text("&File:").setText(outside.resolve("all.csv").toString());
		press("&Finish");
		assertTrue(dialog.getErrorMessage().startsWith("Faults in job files: 1."), dialog.getErrorMessage());
		assertEquals("jobs/bad.yaml", table("Faults").getItem(0).getText(0));
		assertFalse(Files.exists(outside.resolve("all.csv")));
	}

	private void importing(String csv) throws IOException {
		Path file = Files.writeString(outside.resolve("list.csv"), csv);
		wizard = new ImportWizard(Bench.desk().state().latest().orElseThrow().book());
		start(wizard);
		text("&File:").setText(file.toString());
	}

	private void start(IWizard shown) {
		dialog = new WizardDialog(Bench.window().getShell(), shown);
		dialog.setBlockOnOpen(false);
		dialog.open();
		Waiting.settle();
	}

	private void next() {
		press("&Next >");
	}

	/** A press may lead to work beside the window, which runs until it is done before this returns. */
	private void press(String label) {
		Button pressed = button(label);
		assertTrue(pressed.isEnabled(), label + " can be pressed; " + dialog.getErrorMessage());
		pressed.notifyListeners(SWT.Selection, new Event());
		Waiting.settle();
	}

	private void means(String heading, String meaning) {
		Table columns = table("Columns");
		columns.setSelection(column(columns, 0).indexOf(heading));
		columns.notifyListeners(SWT.Selection, new Event());
		combo("What the column means").setText(meaning);
		Waiting.settle();
	}

	private List<String> rows() {
		return Arrays.stream(table("Faults").getItems()).map(i -> i.getText(0) + " | " + i.getText(1)).toList();
	}

	private static List<String> column(Table table, int column) {
		return Arrays.stream(table.getItems()).map(i -> i.getText(column)).toList();
	}

	private Table table(String name) {
		return find(dialog.getShell(), Table.class, t -> name.equals(t.getData(Spoken.KEY)) && t.isVisible());
	}

	private Combo combo(String name) {
		return find(dialog.getShell(), Combo.class, c -> name.equals(c.getData(Spoken.KEY)));
	}

	private Text text(String name) {
		return find(dialog.getShell(), Text.class, t -> name.equals(t.getData(Spoken.KEY)) && t.isVisible());
	}

	private Button button(String label) {
		return find(dialog.getShell(), Button.class, b -> b.getText().replace("&", "").equals(label.replace("&", "")));
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

	private static List<String> names(Path folder) throws IOException {
		try (Stream<Path> files = Files.list(folder)) {
			return files.map(f -> f.getFileName().toString()).sorted().toList();
		}
	}
}
