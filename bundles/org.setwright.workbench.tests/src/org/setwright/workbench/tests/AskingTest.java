package org.setwright.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.Accessible;
import org.eclipse.swt.custom.CTabFolder;
import org.eclipse.swt.custom.CTabItem;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.ui.texteditor.ITextEditor;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.setwright.book.Position;
import org.setwright.trade.Trade;
import org.setwright.workbench.folder.Places;
import org.setwright.workbench.reasons.ReasonsView;

/** The tabs of Reasons, as somebody uses them. */
@ExtendWith(NothingLogged.class)
class AskingTest {
	private static final String JOB = "jobs/larch-lane-14.yaml";
	@TempDir
	private Path folder;

	@BeforeEach
	void open() throws Exception {
		Bench.openTestBook(folder);
		Bench.page().showView(ReasonsView.ID);
		Bench.desk().pickJob(JOB);
		Bench.desk().pickSetting(Trade.catalogue().settingLabelled("changeover valve").orElseThrow());
		Waiting.settle();
	}

	@AfterEach
	void close() {
		front("Why");
		Bench.clear();
	}

	@Test
	void whyNotFollowsTheRuleUnderTheCursor() {
		Places.open(Bench.page(), new Position("rules/heat-pump.drl", 31, 1));
		Waiting.until(() -> Bench.desk().state().rule().isPresent(), "the rule under the cursor");
		assertEquals("Furnace beside a heat pump", Bench.desk().state().rule().orElseThrow());
		front("Why not");
		List<String> lines = Bench.texts(Bench.called("What is in the way", Tree.class));
		assertEquals("Furnace beside a heat pump: silent", lines.get(0).strip().replaceAll(" {2,}.*", ""));
		assertTrue(lines.stream().anyMatch(l -> l.contains("the rule wants that there is auxiliary heat that comes from a furnace")), lines.toString());
		ITextEditor editor = Bench.editor().getAdapter(ITextEditor.class);
		editor.selectAndReveal(0, 0);
		assertEquals("Furnace beside a heat pump", Bench.desk().state().rule().orElseThrow(), "outside of rules the last one stays");
	}

	@Test
	void anotherValueIsAskedForAndWhatWouldChangeItIsFoundInTheBackground() {
		front("Why not");
		Combo values = Bench.called("Value asked about", Combo.class);
		values.select(values.indexOf("energised in cooling"));
		values.notifyListeners(SWT.Selection, new Event());
		Waiting.settle();
		assertTrue(Bench.texts(Bench.called("What is in the way", Tree.class)).stream().anyMatch(l -> l.contains("outranked by")));
		front("What would change it");
		Tree changes = Bench.called("What would change it", Tree.class);
		Waiting.until(() -> changes.getItemCount() == 2, "both answers");
		List<String> lines = Bench.texts(changes);
		assertTrue(lines.get(0).startsWith("What has to be different so that changeover valve comes to energised in cooling"), lines.get(0));
		assertTrue(lines.stream().anyMatch(l -> l.startsWith("Check these answers first")), lines.toString());
		assertTrue(lines.stream().anyMatch(l -> l.contains("outdoor unit: maker is ")), lines.toString());
		assertFalse(Bench.called("Stop", Button.class).getEnabled());
	}

	@Test
	void thePictureIsWalkedWithTheKeyboardAndEnterOpensThePlace() {
		front("Picture");
		Canvas picture = Bench.called("Picture of the reasons", Canvas.class);
		picture.setFocus();
		for (int key : new int[] { SWT.ARROW_LEFT, SWT.ARROW_LEFT, SWT.CR }) {
			Event pressed = new Event();
			pressed.keyCode = key;
			picture.notifyListeners(SWT.KeyDown, pressed);
		}
		Waiting.settle();
		assertTrue(Bench.editor() != null && Bench.editor().getTitle().matches("changeover-by-maker.csv|heat-pump.drl"), "the rule is opened");
		assertTrue(colours(picture) > 3, "something is drawn");
		assertTrue(picture.getAccessible() instanceof Accessible);
	}

	private static int colours(Canvas canvas) {
		Image image = new Image(canvas.getDisplay(), Math.max(1, canvas.getSize().x), Math.max(1, canvas.getSize().y));
		GC gc = new GC(image);
		Event event = new Event();
		event.gc = gc;
		canvas.notifyListeners(SWT.Paint, event);
		gc.dispose();
		int[] pixels = new int[image.getImageData().width * image.getImageData().height];
		for (int y = 0; y < image.getImageData().height; y += 40) {
			image.getImageData().getPixels(0, y, image.getImageData().width, pixels, y * image.getImageData().width);
		}
		image.dispose();
		return (int) Arrays.stream(pixels).distinct().limit(10).count();
	}

	@Test
	void twoJobsAreComparedAndWhatIsShownIsCopied() {
		front("Compare");
		Combo other = Bench.called("The job to compare with", Combo.class);
		other.select(other.indexOf("Mill Road 3"));
		other.notifyListeners(SWT.Selection, new Event());
		Waiting.settle();
		String first = Bench.texts(Bench.called("Where the two jobs part", Tree.class)).get(0);
		assertEquals("changeover valve: energised in heating here, energised in cooling there", first);
		Bench.page().activate(Bench.page().findView(ReasonsView.ID));
		Waiting.settle();
		((org.eclipse.ui.IViewSite) Bench.page().findView(ReasonsView.ID).getSite()).getActionBars().getGlobalActionHandler("copy").run();
		Clipboard clipboard = new Clipboard(Display.getCurrent());
		String copied = (String) clipboard.getContents(TextTransfer.getInstance());
		clipboard.dispose();
		assertTrue(copied.startsWith(first) && copied.contains("  here table changeover-by-maker, row 1 decides"), copied);
	}

	private static void front(String tab) {
		CTabFolder tabs = Bench.called("Ways to ask", CTabFolder.class);
		CTabItem item = Arrays.stream(tabs.getItems()).filter(i -> i.getText().equals(tab)).findFirst().orElseThrow();
		tabs.setSelection(item);
		Event event = new Event();
		event.item = item;
		tabs.notifyListeners(SWT.Selection, event);
		Waiting.settle();
	}
}
