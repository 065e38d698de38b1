package org.setwright.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.ToolBar;
import org.eclipse.swt.widgets.ToolItem;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.ui.IViewReference;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.setwright.book.Position;
import org.setwright.trade.Trade;
import org.setwright.trade.catalogue.JobField;
import org.setwright.workbench.folder.Places;
import org.setwright.workbench.look.Spoken;
import org.setwright.workbench.look.WholeLine;

/** Whatever takes the keyboard has a name for those who do not see it, and the system says it. */
@ExtendWith(NothingLogged.class)
@EnabledOnOs(OS.LINUX)
class SpokenTest {
	private static final List<String> VIEWS = List.of("contents", "jobs", "setup", "startup", "landing", "reasons", "aloud", "cases", "fitness",
			"editions", "bench");
	@TempDir
	private Path folder;

	@AfterEach
	void close() {
		Bench.clear();
	}

	@Test
	void everyControlOfOurViewsAndFormsIsCalledSomething() throws Exception {
		Bench.openTestBook(folder);
		Places.open(Bench.page(), new Position("tables/changeover-by-maker.csv", 2, 1));
		Places.openJob(Bench.page(), "jobs/larch-lane-14.yaml", JobField.presence(Trade.catalogue().kind("IndoorUnit").orElseThrow()));
		for (String id : VIEWS) {
			Bench.page().showView("org.setwright.workbench." + id);
			Bench.worked();
		}
		for (IViewReference view : Bench.page().getViewReferences()) {
			if (!view.getId().startsWith("org.setwright.")) {
				Bench.page().hideView(view);
			}
		}
		assertTrue(Bench.all(Table.class, t -> t.getData(Spoken.KEY) != null).size() > 3, "the views are not there");
		assertEquals(List.of(), nameless(Bench.window().getShell()));
	}

	@Test
	void aControlThatIsCalledNothingIsFound() throws Exception {
		Shell shell = new Shell();
		try {
			new Text(shell, SWT.NONE).setData(Spoken.KEY, "told to nobody");
			new Tree(shell, SWT.NONE);
			ToolItem sign = new ToolItem(new ToolBar(shell, SWT.FLAT), SWT.PUSH);
			assertEquals(3, nameless(shell).size(), () -> "without a name: " + sign);
		} finally {
			shell.dispose();
		}
	}

	@Test
	void whatIsSaidCanBeSaidAnew() throws Exception {
		Shell shell = new Shell();
		try {
			for (Control control : List.of(new Text(shell, SWT.NONE), new Table(shell, SWT.NONE), new Combo(shell, SWT.READ_ONLY), new Combo(shell, SWT.NONE),
					new Canvas(shell, SWT.NONE), new StyledText(shell, SWT.NONE))) {
				Spoken.as(control, "first");
				Spoken.as(control, "größer");
				Spoken.more(control, "and more");
				assertEquals(List.of("größer"), Heard.names(control).stream().distinct().toList(), control.toString());
				Spoken.as(control, "&File: A && B");
				assertEquals(List.of("File: A & B"), Heard.names(control).stream().distinct().toList(), control.toString());
				assertEquals("and more", Heard.description(control), control.toString());
			}
		} finally {
			shell.dispose();
		}
	}

	@Test
	void aFieldOfThePlatformIsCalledByTheWordsBeforeIt() throws Exception {
		Shell shell = new Shell();
		try {
			new Label(shell, SWT.NONE).setText("What does the shop call the &job?");
			Text field = new Text(shell, SWT.NONE);
			Text after = new Text(shell, SWT.NONE);
			while (shell.getDisplay().readAndDispatch()) {
				// the platform tells of new widgets when there is nothing else to do
			}
			assertEquals(List.of("What does the shop call the job?"), Heard.names(field));
			assertEquals(List.of(""), Heard.names(after));
		} finally {
			shell.dispose();
		}
	}

	@Test
	void theLinePickedInAListCanBeReadWhole() {
		Shell shell = new Shell();
		try {
			Table table = new Table(shell, SWT.NONE);
			Stream.of("Setting", "Value", "State").forEach(h -> new TableColumn(table, SWT.NONE).setText(h));
			new TableItem(table, SWT.NONE).setText(new String[] { "heating cycles", "", "settled" });
			assertEquals("", WholeLine.words(table));
			table.setSelection(0);
			assertEquals("Setting: heating cycles\nState: settled", WholeLine.words(table));
			assertEquals("", WholeLine.words(new Label(shell, SWT.NONE)));
		} finally {
			shell.dispose();
		}
	}

	private static List<String> nameless(Composite in) throws ReflectiveOperationException {
		List<String> nameless = new ArrayList<>();
		collect(in, "", nameless);
		return nameless;
	}

	private static void collect(Composite in, String where, List<String> nameless) throws ReflectiveOperationException {
		for (Control control : in.getChildren()) {
			String inner = where + '/' + control.getClass().getSimpleName();
			boolean asked = control instanceof Text || control instanceof Combo || control instanceof Table || control instanceof Tree
					|| control instanceof Button button && button.getText().isEmpty()
					|| control.getClass() == Canvas.class && control.getListeners(SWT.Paint).length > 0;
			boolean platform = where.endsWith("/Canvas") || where.endsWith("/ImageBasedFrame/"); // rulers of text editors, frames of tool bars
			if (asked && !platform && (control.getData(Spoken.KEY) == null || Heard.names(control).contains(""))) {
				nameless.add(inner + " " + control.getToolTipText());
			}
			if (control instanceof ToolBar bar) {
				signs(bar, inner, nameless);
			}
			if (control instanceof Composite composite && !(control instanceof Combo)) {
				collect(composite, inner, nameless);
			}
		}
	}

	private static void signs(ToolBar bar, String where, List<String> nameless) throws ReflectiveOperationException {
		for (ToolItem item : bar.getItems()) {
			boolean silent = item.getText().isEmpty() && item.getControl() == null && (item.getStyle() & SWT.SEPARATOR) == 0;
			if (silent && Heard.name(item).isEmpty()) {
				nameless.add(where + " sign " + item.getToolTipText());
			}
		}
	}
}
