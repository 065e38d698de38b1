package org.setwright.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.ui.IViewReference;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.setwright.book.Position;
import org.setwright.trade.Trade;
import org.setwright.trade.catalogue.JobField;
import org.setwright.workbench.folder.Places;
import org.setwright.workbench.look.Spoken;

/** Whatever takes the keyboard has a name for those who do not see it. */
@ExtendWith(NothingLogged.class)
class SpokenTest {
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
		List<String> nameless = new ArrayList<>();
		for (String id : List.of("contents", "jobs", "setup", "startup", "landing", "reasons", "aloud", "cases")) {
			Bench.page().showView("org.setwright.workbench." + id);
			Bench.worked();
		}
		for (IViewReference view : Bench.page().getViewReferences()) {
			if (!view.getId().startsWith("org.setwright.")) {
				Bench.page().hideView(view);
			}
		}
		collect(Bench.window().getShell(), "", nameless);
		assertTrue(Bench.all(Table.class, t -> t.getData(Spoken.KEY) != null).size() > 3, "the views are not there");
		assertEquals(List.of(), nameless);
	}

	private static void collect(Composite in, String where, List<String> nameless) {
		for (Control control : in.getChildren()) {
			String inner = where + '/' + control.getClass().getSimpleName();
			boolean asked = control instanceof Text || control instanceof Combo || control instanceof Table || control instanceof Tree
					|| control instanceof Button button && button.getText().isEmpty()
					|| control.getClass() == Canvas.class && control.getListeners(SWT.Paint).length > 0;
			boolean platform = where.endsWith("/Canvas") || where.endsWith("/ImageBasedFrame/"); // rulers of text editors, frames of tool bars
			if (asked && !platform && control.getData(Spoken.KEY) == null) {
				nameless.add(inner + " " + control.getToolTipText());
			}
			if (control instanceof Composite composite && !(control instanceof Combo)) {
				collect(composite, inner, nameless);
			}
		}
	}
}
