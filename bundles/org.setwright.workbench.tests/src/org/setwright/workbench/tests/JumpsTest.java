package org.setwright.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.ITextOperationTarget;
import org.eclipse.jface.text.ITextViewer;
import org.eclipse.jface.text.Region;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.ui.IWorkbenchPart;
import org.eclipse.ui.texteditor.ITextEditor;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.setwright.book.Position;
import org.setwright.trade.Trade;
import org.setwright.trade.catalogue.FactKind;
import org.setwright.trade.catalogue.JobField;
import org.setwright.workbench.folder.Places;
import org.setwright.workbench.look.Spoken;
import org.setwright.workbench.rules.RuleHover;
import org.setwright.workbench.setup.SetupView;
import org.setwright.workbench.uses.WordHover;

/** From tables, jobs, the set-up and the outline to where something is used and where it comes from; and what hovering says. */
@ExtendWith(NothingLogged.class)
class JumpsTest {
	private static final String USES = "org.eclipse.ui.genericeditor.findReferences";
	private static final String FROM = "org.eclipse.ui.edit.text.open.hyperlink";
	private static final String JOB = "jobs/larch-lane-14.yaml";
	private static final String TABLE = "tables/changeover-by-maker.csv";
	private static final String RULES = "rules/heat-pump.drl";
	private static final FactKind OUTDOOR_UNIT = Trade.catalogue().kind("OutdoorUnit").orElseThrow();
	@TempDir
	private Path folder;

	@BeforeEach
	void open() throws IOException {
		Bench.openTestBook(folder);
	}

	@AfterEach
	void close() {
		popups().forEach(Shell::close);
		Bench.clear();
	}

	@Test
	void fromACellAndFromAHeadingOfATable() throws Exception {
		Places.open(Bench.page(), new Position(TABLE, 2, 1));
		Bench.worked();
		Table rows = Bench.called("Rows of the table", Table.class);
		Event right = new Event();
		right.keyCode = SWT.ARROW_RIGHT;
		rows.notifyListeners(SWT.KeyDown, right);
		List<String> norrvik = asked(Bench.editor(), USES);
		assertTrue(norrvik.get(0).contains(TABLE + ", line 2") && norrvik.get(1).contains(JOB + ", line 5"), norrvik.toString());
		assertEquals(2, norrvik.size(), norrvik.toString());
		Event menu = new Event();
		menu.detail = SWT.MENU_MOUSE;
		Point heading = rows.toDisplay(rows.getItem(0).getBounds(2).x + 8, rows.getItem(0).getBounds(2).y - rows.getHeaderHeight() / 2);
		menu.x = heading.x;
		menu.y = heading.y;
		rows.notifyListeners(SWT.MenuDetect, menu);
		List<String> valve = asked(Bench.editor(), FROM);
		assertTrue(valve.stream().allMatch(l -> l.contains("(comes from here)")), valve.toString());
		assertEquals(List.of(RULES, TABLE), valve.stream().map(l -> l.contains(RULES) ? RULES : TABLE).toList());
	}

	@Test
	void fromAFieldAndAnExpectationOfTheForm() throws Exception {
		Places.openJob(Bench.page(), JOB, JobField.of(OUTDOOR_UNIT, 0, OUTDOOR_UNIT.field("stages").orElseThrow()));
		Bench.worked();
		Bench.called("outdoor unit: stages", Combo.class).notifyListeners(SWT.FocusIn, new Event());
		List<String> stages = asked(Bench.editor(), USES);
		assertTrue(stages.get(0).contains("rules/stages.drl") && stages.stream().anyMatch(l -> l.contains(JOB)), stages.toString());
		Tree parts = Bench.called("Parts of the job", Tree.class);
		Bench.pick(parts, Bench.texts(parts).stream().filter(t -> t.startsWith("expected settings")).findFirst().orElseThrow());
		Bench.called("expected changeover valve", Combo.class).notifyListeners(SWT.FocusIn, new Event());
		List<String> valve = asked(Bench.editor(), USES);
		assertTrue(valve.stream().anyMatch(l -> l.contains(RULES)) && valve.stream().anyMatch(l -> l.contains(TABLE))
				&& valve.stream().anyMatch(l -> l.contains(JOB + ", line 14")), valve.toString());
	}

	@Test
	void fromTheTextOfAJobStraightToTheRule() throws Exception {
		ITextEditor text = Places.text(Bench.page(), JOB).orElseThrow();
		Bench.worked();
		text.selectAndReveal(document(text).get().indexOf("auxiliary heat stages") + 3, 0);
		Bench.page().activate(Bench.editor());
		Bench.command(FROM);
		assertEquals("heat-pump.drl", Bench.editor().getEditorInput().getName());
		ITextEditor rules = (ITextEditor) Bench.editor();
		assertEquals(document(rules).get().indexOf("AUXILIARY_STAGES"), viewer(rules).getSelectedRange().x);
	}

	@Test
	void fromTheSetUpAndFromTheOutline() throws Exception {
		IWorkbenchPart setup = Bench.page().showView(SetupView.ID);
		Bench.desk().pickJob(JOB);
		Bench.worked();
		Tree settings = Bench.called("Settings of the job", Tree.class);
		settings.notifyListeners(SWT.FocusIn, new Event());
		Bench.pick(settings, "changeover valve");
		List<String> valve = asked(setup, USES);
		assertTrue(valve.stream().anyMatch(l -> l.contains(TABLE)) && valve.stream().anyMatch(l -> l.contains(JOB)), valve.toString());
		Places.open(Bench.page(), Position.whole(RULES));
		IWorkbenchPart outline = Bench.page().showView("org.eclipse.ui.views.ContentOutline");
		Bench.page().activate(Bench.editor());
		Bench.worked();
		Tree lines = Bench.called("Rules of this file", Tree.class);
		lines.setSelection(lines.getItem(2));
		lines.showSelection();
		Arrays.stream(lines.getItems()).forEach(i -> i.setExpanded(true));
		Event expand = new Event();
		expand.item = lines.getItem(2);
		lines.notifyListeners(SWT.Expand, expand);
		lines.setSelection(lines.getItem(2).getItem(0));
		List<String> finding = asked(outline, USES);
		assertEquals(2, finding.size(), finding.toString());
		assertTrue(finding.get(0).contains("Furnace beside a heat pump") && finding.get(1).contains("Dual fuel"), finding.toString());
	}

	@Test
	void hoveringExplainsJobsAndTables() {
		ITextEditor job = Places.text(Bench.page(), JOB).orElseThrow();
		Bench.worked();
		assertEquals("outdoor unit\nThe machine with the compressor: an air conditioner or a heat pump.", firstLines(job, "outdoor unit:"));
		says(job, "stages: 1", "May be a whole number from 1 to 2.", "Asked about by", "written on 2 of 3 jobs");
		says(job, "Norrvik", "\"Norrvik\" (outdoor unit: maker)", "Named by 1 rules and rows, and on 1 of 3 jobs.");
		says(job, "air-source", "air-source heat pump\n", "Named by 4 rules and rows, and on 2 of 3 jobs.");
		says(job, "changeover valve:", "changeover valve (setting)\n", "May be one of:", "Proposed by 2 rules and tables", "expected by", "Settled on");
		says(job, "energised in heating", "energised in heating\n", "Proposed by 1 rules and rows; expected by");
		assertEquals(null, hover(job, "Seen on site"));
		ITextEditor table = Places.text(Bench.page(), TABLE).orElseThrow();
		says(table, "outdoor unit maker", "maker\n", "Asked about by", "written on");
		says(table, "Tamarack Air", "\"Tamarack Air\" (outdoor unit: maker)", "Named by");
		says(table, "maker's instructions", "maker's instructions\n", "Carried by 4 rules and rows; decides some setting on");
		assertEquals(null, hover(table, "sheet NV"));
	}

	@Test
	void hoveringExplainsTheWordsOfTheRuleLanguage() {
		Places.open(Bench.page(), Position.whole(RULES));
		Bench.worked();
		ITextEditor rules = (ITextEditor) Bench.editor();
		for (String place : List.of("rule \"M", "when\n", "then\n", "end\n", "not A", "in ( A", "propose(", "find(", "caution(", "Finding(", "UNKNOWN )")) {
			String said = ruleHover(rules, place);
			String word = place.split("\\W")[0];
			assertTrue(said.startsWith(word + "\n") && said.contains(" of 8 rules; some of them speak on "), word + ": " + said);
		}
		assertTrue(ruleHover(rules, "CHECK_AT_START_UP").startsWith("check at start-up\nProve it") && ruleHover(rules, "CHECK_AT_START_UP").contains("In 1 of"),
				ruleHover(rules, "CHECK_AT_START_UP"));
		assertTrue(ruleHover(rules, "shop practice").startsWith("shop practice\nWhat this shop does"), ruleHover(rules, "shop practice"));
		assertTrue(ruleHover(rules, "FURNACE").contains("Named by 1 rules and rows"), ruleHover(rules, "FURNACE"));
		assertTrue(ruleHover(rules, "NOT_OFFERED").contains("Proposed by 1 rules and rows"), ruleHover(rules, "NOT_OFFERED"));
		assertTrue(ruleHover(rules, "No auxiliary heat").contains("Speaks on "), ruleHover(rules, "No auxiliary heat"));
		assertEquals(null, ruleHover(rules, "What a heat"));
		assertEquals(null, ruleHover(rules, "There is nothing"));
	}

	private static String ruleHover(ITextEditor editor, String place) {
		int at = document(editor).get().indexOf(place);
		assertTrue(at >= 0, place);
		return new RuleHover().getHoverInfo(viewer(editor), new Region(at + 1, 0));
	}

	private static void says(ITextEditor editor, String word, String... parts) {
		String said = hover(editor, word);
		String onALine = String.valueOf(said).replace("\n", " ");
		for (String part : parts) {
			assertTrue(onALine.contains(part.replace("\n", " ")), word + ": " + said + " has not: " + part);
		}
	}

	private static String firstLines(ITextEditor editor, String word) {
		return String.join("\n", hover(editor, word).lines().limit(2).toList());
	}

	private static String hover(ITextEditor editor, String word) {
		int at = document(editor).get().indexOf(word);
		assertTrue(at >= 0, word);
		return new WordHover().getHoverInfo(viewer(editor), new Region(at + 1, 0));
	}

	private static IDocument document(ITextEditor editor) {
		return editor.getDocumentProvider().getDocument(editor.getEditorInput());
	}

	private static ITextViewer viewer(ITextEditor editor) {
		return (ITextViewer) editor.getAdapter(ITextOperationTarget.class);
	}

	/** @return the places listed when {@code command} is given in {@code part} */
	private static List<String> asked(IWorkbenchPart part, String command) throws Exception {
		popups().forEach(Shell::close);
		Bench.page().activate(part);
		Bench.command(command);
		Table places = popups().stream().flatMap(JumpsTest::places).findFirst().orElseThrow(() -> new AssertionError("no list has popped up"));
		List<String> lines = Arrays.stream(places.getItems()).map(TableItem::getText).toList();
		popups().forEach(Shell::close);
		return lines;
	}

	private static List<Shell> popups() {
		return Arrays.stream(Bench.window().getShell().getShells()).filter(s -> places(s).findFirst().isPresent()).toList();
	}

	private static Stream<Table> places(Control control) {
		Stream<Table> own = control instanceof Table table && "Places".equals(table.getData(Spoken.KEY)) ? Stream.of(table) : Stream.empty();
		return control instanceof Composite parent ? Stream.concat(own, Arrays.stream(parent.getChildren()).flatMap(JumpsTest::places)) : own;
	}
}
