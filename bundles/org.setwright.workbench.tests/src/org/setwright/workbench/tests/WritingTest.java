package org.setwright.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.eclipse.core.resources.IMarker;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.ITextOperationTarget;
import org.eclipse.jface.text.Region;
import org.eclipse.jface.text.codemining.ICodeMining;
import org.eclipse.jface.text.contentassist.ICompletionProposal;
import org.eclipse.jface.text.quickassist.IQuickAssistInvocationContext;
import org.eclipse.jface.text.source.ISourceViewer;
import org.eclipse.jface.text.source.TextInvocationContext;
import org.eclipse.jface.text.source.projection.ProjectionViewer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.ui.IMarkerResolution;
import org.eclipse.ui.ide.IDE;
import org.eclipse.ui.texteditor.ITextEditor;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.setwright.book.Position;
import org.setwright.workbench.counts.JobsOfRule;
import org.setwright.workbench.counts.RuleCounts;
import org.setwright.workbench.fixes.RuleAssist;
import org.setwright.workbench.folder.BookProject;
import org.setwright.workbench.folder.Places;
import org.setwright.workbench.folder.ProblemMarkers;
import org.setwright.workbench.look.Spoken;
import org.setwright.workbench.rules.RuleCompletion;
import org.setwright.workbench.rules.RuleHover;
import org.setwright.workbench.rules.RuleTemplates;
import org.setwright.workbench.uses.MentionLinks;

/** What the editor of rules does for those who write: mending, counting, finding, laying out. */
@ExtendWith(NothingLogged.class)
class WritingTest {
	private static final String FILE = "rules/heat-pump.drl";
	@TempDir
	private Path folder;

	@BeforeEach
	void open() throws IOException {
		Bench.openTestBook(folder);
		Places.open(Bench.page(), Position.whole(FILE));
		Bench.worked();
	}

	@AfterEach
	void close() {
		Arrays.stream(Bench.window().getShell().getShells()).forEach(Shell::close);
		Bench.clear();
	}

	@Test
	void aMarkedProblemIsMendedAndUndoneInOneStep() throws Exception {
		String before = document().get();
		type("OutdoorUnit( kind == AIR", "OutdorUnit( kind == AIR");
		Waiting.until(() -> !marks().isEmpty(), "a mark");
		Bench.worked();
		List<IMarkerResolution> offered = List.of(IDE.getMarkerHelpRegistry().getResolutions(marks().get(0)));
		IMarkerResolution mend = offered.stream().filter(r -> r.getLabel().equals("Write OutdoorUnit")).findFirst().orElseThrow();
		mend.run(marks().get(0));
		assertEquals(before, document().get());
		Waiting.until(() -> marks().isEmpty(), "the mark to go");
		Bench.page().activate(editor());
		Bench.command("org.eclipse.ui.edit.undo");
		assertTrue(document().get().contains("OutdorUnit"));
	}

	@Test
	void theKeyOffersWhatMendsTheLineAndSplitsARuleThatProposesTwoSettings() throws Exception {
		type("propose( EMERGENCY_HEAT, NOT_OFFERED )", "propose( EMERGENCY_HEAT, NOT_OFERED )");
		Bench.worked();
		assertTrue(titles("EMERGENCY_HEAT, NOT_OFERED").contains("Write NOT_OFFERED"), titles("EMERGENCY_HEAT, NOT_OFERED").toString());
		proposal("EMERGENCY_HEAT, NOT_OFERED", "Write NOT_OFFERED").apply(document());
		Bench.worked();
		proposal("AUXILIARY_STAGES", "Split into 2 rules, one for each setting").apply(document());
		Bench.worked();
		assertTrue(document().get().contains("rule \"No auxiliary heat, no auxiliary stages: emergency heat\""), document().get());
		assertEquals(List.of(), Bench.desk().state().latest().orElseThrow().problems());
		assertEquals(List.of(), titles("find( DUAL"));
	}

	@Test
	void countsStandAboveEachRuleAndFollowWhatIsTypedWithoutSaving() throws Exception {
		assertEquals("stands on 1 job \u00b7 silent on 2", counts().get(2));
		type("AuxiliaryHeat( kind == FURNACE )", "AuxiliaryHeat( kind == ELECTRIC_ELEMENTS )");
		Bench.worked();
		assertTrue(counts().get(2).startsWith("\u25b3 no saved job makes it speak"), counts().get(2));
		type("kind == ELECTRIC_ELEMENTS", "kind ==");
		Bench.worked();
		assertTrue(counts().get(2).startsWith("FROM BEFORE"), counts().get(2));
		assertFalse(counts().get(0).startsWith("FROM BEFORE"), counts().get(0));
		type("kind == )", "kind == FURNACE )");
		Bench.worked();
		assertEquals("stands on 1 job \u00b7 silent on 2", counts().get(2));
	}

	@Test
	void aRuleNoJobMakesSpeakIsMarkedInTheMargin() throws Exception {
		counts();
		type("AuxiliaryHeat( kind == FURNACE )", "AuxiliaryHeat( kind == ELECTRIC_ELEMENTS )");
		Waiting.until(() -> unspoken().contains("No saved job makes the rule \"Furnace beside a heat pump\" speak."), "the mark in the margin");
		type("AuxiliaryHeat( kind == ELECTRIC_ELEMENTS )", "AuxiliaryHeat( kind == FURNACE )");
		Waiting.until(() -> !unspoken().contains("No saved job makes the rule \"Furnace beside a heat pump\" speak."), "the mark to go");
	}

	@Test
	void theJobsBehindACountAreListedAndOpened() {
		Shell list = JobsOfRule.show(Bench.window(), "Furnace beside a heat pump").orElseThrow();
		Tree tree = popup("Jobs of the rule", Tree.class);
		assertEquals(List.of("It speaks and stands: 1", "Mill Road 3"), Bench.texts(tree).subList(0, 2));
		Bench.pick(tree, "Mill Road 3");
		assertEquals(Optional.of("jobs/mill-road-3.yaml"), Bench.desk().state().job());
		Event event = new Event();
		event.item = Bench.item(tree, "Mill Road 3");
		tree.notifyListeners(SWT.DefaultSelection, event);
		Waiting.settle();
		assertTrue(list.isDisposed());
		assertEquals("mill-road-3.yaml", Bench.editor().getEditorInput().getName());
	}

	@Test
	void usesAreListedAndAFindingLeadsToTheRuleThatMakesIt() throws Exception {
		cursor("DUAL_FUEL_JOB )\n");
		Bench.command("org.eclipse.ui.genericeditor.findReferences");
		Table table = popup("Places", Table.class);
		assertEquals(2, table.getItemCount());
		assertTrue(table.getItem(0).getText().contains("Furnace beside a heat pump"), table.getItem(0).getText());
		int asked = document().get().indexOf("DUAL_FUEL_JOB )\n");
		new MentionLinks().detectHyperlinks(viewer(), new Region(asked + 2, 0), false)[0].open();
		Waiting.settle();
		assertEquals(document().get().indexOf("DUAL_FUEL_JOB );"), viewer().getSelectedRange().x);
		assertEquals(null, new MentionLinks().detectHyperlinks(viewer(), new Region(document().get().indexOf("when"), 0), false));
	}

	@Test
	void theOutlineListsTheRulesAsTheyAreTyped() throws Exception {
		Bench.page().showView("org.eclipse.ui.views.ContentOutline");
		Bench.page().activate(editor());
		Waiting.settle();
		Tree tree = Bench.called("Rules of this file", Tree.class);
		assertEquals("Maker not looked up: take cooling, and check", tree.getItem(0).getText());
		type("rule \"Furnace beside", "rule \"A furnace beside");
		Waiting.until(() -> Arrays.stream(tree.getItems()).anyMatch(i -> i.getText().startsWith("A furnace beside")), "the outline to follow");
	}

	@Test
	void hoveringSaysWhereAWordIsUsedAndOnHowManyJobs() {
		String finding = hover("DUAL_FUEL_JOB )\n");
		assertTrue(finding.contains("Made by 1 rules, asked for by 1.") && finding.contains("Found on 1 of 3 jobs."), finding);
		String setting = hover("AUXILIARY_STAGES");
		assertTrue(setting.contains("(setting)") && setting.contains("expected by 1 jobs"), setting);
	}

	@Test
	void rulesAreTidiedMadeCommentsFoldedAndOfferedInShapes() throws Exception {
		String before = document().get();
		type("    find( DUAL_FUEL_JOB );", "find(DUAL_FUEL_JOB)  ;");
		Bench.page().activate(editor());
		Bench.command("org.setwright.workbench.tidy");
		assertEquals(before, document().get());
		cursor("    find( DUAL_FUEL_JOB );");
		Bench.command("org.setwright.workbench.comment");
		assertTrue(document().get().contains("    // find( DUAL_FUEL_JOB );"));
		Bench.command("org.setwright.workbench.comment");
		assertEquals(before, document().get());
		Waiting.until(() -> folds() == 4, () -> "a fold for each rule, not " + folds());
		assertTrue(shapes(0) >= 8);
		assertEquals(0, shapes(before.indexOf("when")));
	}

	@Test
	void aFindingThatIsOfferedSaysWhereItIsUsed() {
		int asked = document().get().indexOf("DUAL_FUEL_JOB )\n");
		ISourceViewer viewer = viewer();
		CompletableFuture<ICompletionProposal[]> offered = CompletableFuture.supplyAsync(() -> new RuleCompletion().computeCompletionProposals(viewer, asked + 3));
		Waiting.until(offered::isDone, "what may come next");
		assertEquals(1, offered.join().length);
		assertTrue(offered.join()[0].getAdditionalProposalInfo().contains("Made by 1 rules, asked for by 1."), offered.join()[0].getAdditionalProposalInfo());
	}

	/** @return what a screen reader calls {@code name} in a list that has popped up */
	private static <T extends Control> T popup(String name, Class<T> type) {
		return Arrays.stream(Bench.window().getShell().getShells()).flatMap(s -> inside(s, name, type)).findFirst()
				.orElseThrow(() -> new AssertionError("no list called " + name));
	}

	private static <T extends Control> Stream<T> inside(Control control, String name, Class<T> type) {
		Stream<T> own = type.isInstance(control) && name.equals(control.getData(Spoken.KEY)) ? Stream.of(type.cast(control)) : Stream.empty();
		return control instanceof Composite parent ? Stream.concat(own, Arrays.stream(parent.getChildren()).flatMap(c -> inside(c, name, type))) : own;
	}

	/** Asks in the background, as the platform does. */
	private static int shapes(int offset) {
		ISourceViewer viewer = viewer();
		CompletableFuture<ICompletionProposal[]> asked = CompletableFuture.supplyAsync(() -> new RuleTemplates().computeCompletionProposals(viewer, offset));
		Waiting.until(asked::isDone, "the shapes of rules");
		return Optional.ofNullable(asked.join()).map(p -> p.length).orElse(0);
	}

	private int folds() {
		int[] folds = new int[1];
		if (viewer() instanceof ProjectionViewer folding && folding.getProjectionAnnotationModel() != null) {
			folding.getProjectionAnnotationModel().getAnnotationIterator().forEachRemaining(a -> folds[0]++);
		}
		return folds[0];
	}

	private List<String> unspoken() {
		List<String> texts = new java.util.ArrayList<>();
		viewer().getAnnotationModel().getAnnotationIterator().forEachRemaining(a -> {
			if (a.getType().equals("org.setwright.workbench.unspoken")) {
				texts.add(a.getText());
			}
		});
		return texts;
	}

	private List<String> counts() throws Exception {
		RuleCounts provider = new RuleCounts();
		try {
			return provider.provideCodeMinings(viewer(), new NullProgressMonitor()).get(10, TimeUnit.SECONDS).stream().map(ICodeMining::getLabel).toList();
		} finally {
			provider.dispose();
		}
	}

	private static String hover(String word) {
		return new RuleHover().getHoverInfo(viewer(), new Region(document().get().indexOf(word) + 1, 0));
	}

	private static List<String> titles(String word) {
		return proposals(word).stream().map(ICompletionProposal::getDisplayString).toList();
	}

	private static ICompletionProposal proposal(String word, String title) {
		return proposals(word).stream().filter(p -> p.getDisplayString().equals(title)).findFirst()
				.orElseThrow(() -> new AssertionError("no \"" + title + "\" among " + titles(word)));
	}

	private static List<ICompletionProposal> proposals(String word) {
		IQuickAssistInvocationContext context = new TextInvocationContext(viewer(), document().get().indexOf(word) + 1, 0);
		ICompletionProposal[] proposals = new RuleAssist().computeQuickAssistProposals(context);
		return proposals == null ? List.of() : List.of(proposals);
	}

	private static List<IMarker> marks() {
		try {
			return List.of(BookProject.linked().orElseThrow().findMarkers(ProblemMarkers.TYPE, false, org.eclipse.core.resources.IResource.DEPTH_INFINITE));
		} catch (org.eclipse.core.runtime.CoreException e) {
			throw new IllegalStateException(e);
		}
	}

	private static void cursor(String word) {
		editor().selectAndReveal(document().get().indexOf(word) + 1, 0);
		Bench.page().activate(editor());
		Waiting.settle();
	}

	private static void type(String instead, String text) throws Exception {
		int at = document().get().indexOf(instead);
		assertTrue(at >= 0, () -> "no " + instead + " in " + document().get());
		document().replace(at, instead.length(), text);
		Waiting.settle();
	}

	private static ITextEditor editor() {
		return (ITextEditor) Arrays.stream(Bench.page().getEditorReferences()).filter(r -> r.getName().equals("heat-pump.drl")).findFirst().orElseThrow().getEditor(true);
	}

	private static ISourceViewer viewer() {
		return (ISourceViewer) editor().getAdapter(ITextOperationTarget.class);
	}

	private static IDocument document() {
		return editor().getDocumentProvider().getDocument(editor().getEditorInput());
	}
}
