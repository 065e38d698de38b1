package org.setwright.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.function.Predicate;
import org.eclipse.core.commands.common.CommandException;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.commands.ICommandService;
import org.eclipse.ui.handlers.IHandlerService;
import org.osgi.framework.FrameworkUtil;
import org.setwright.workbench.desk.Desk;
import org.setwright.workbench.folder.OpenBook;
import org.setwright.workbench.look.Spoken;

/** The window as a person uses it: opens books, finds controls by what they are called, picks and reads. */
final class Bench {
	private Bench() {
	}

	static IWorkbenchWindow window() {
		return PlatformUI.getWorkbench().getWorkbenchWindows()[0];
	}

	static IWorkbenchPage page() {
		return window().getActivePage();
	}

	static Desk desk() {
		return window().getService(Desk.class);
	}

	/** Copies the small rule book of these tests to {@code folder} and opens it. */
	static void openTestBook(Path folder) throws IOException {
		for (URL entry : Collections.list(FrameworkUtil.getBundle(Desk.class).findEntries("book", "*.*", true))) {
			Path file = folder.resolve(entry.getPath().substring(entry.getPath().indexOf("book/") + "book/".length()));
			Files.createDirectories(file.getParent());
			try (InputStream in = entry.openStream()) {
				Files.copy(in, file);
			}
		}
		open(folder);
	}

	/** Opens the rule book in {@code folder} and waits until it has been worked out. */
	static void open(Path folder) {
		new OpenBook(desk()).open(folder);
		Waiting.until(() -> desk().state().folder().filter(folder::equals).isPresent(), "the book to be opened");
		worked();
	}

	/** Waits until everything shown is up to date. */
	static void worked() {
		Waiting.settle();
		Waiting.until(() -> desk().state().latest().isPresent() && !desk().busy(), "the book to be worked out");
		Waiting.settle();
	}

	/** Leaves nothing open. */
	static void clear() {
		page().closeAllEditors(false);
		desk().close();
		Waiting.settle();
	}

	static void command(String id) throws CommandException {
		Waiting.settle();
		Waiting.until(() -> window().getService(ICommandService.class).getCommand(id).isEnabled(), id + " to be possible");
		window().getService(IHandlerService.class).executeCommand(id, null);
		Waiting.settle();
	}

	/** @return the control a screen reader calls {@code name} */
	static <T extends Control> T called(String name, Class<T> type) {
		List<T> found = all(type, c -> name.equals(c.getData(Spoken.KEY)));
		assertTrue(!found.isEmpty(), "no control is called \"" + name + "\"");
		return found.get(0);
	}

	static <T extends Control> List<T> all(Class<T> type, Predicate<T> wanted) {
		List<T> found = new ArrayList<>();
		collect(window().getShell(), type, wanted, found);
		return found;
	}

	private static <T extends Control> void collect(Control control, Class<T> type, Predicate<T> wanted, List<T> found) {
		if (type.isInstance(control) && wanted.test(type.cast(control))) {
			found.add(type.cast(control));
		}
		if (control instanceof Composite composite) {
			Arrays.stream(composite.getChildren()).forEach(c -> collect(c, type, wanted, found));
		}
	}

	/** Picks the row of {@code table} whose first cell is {@code text}, as with the mouse. */
	static void pick(Table table, String text) {
		var item = Arrays.stream(table.getItems()).filter(i -> i.getText().equals(text)).findFirst()
				.orElseThrow(() -> new AssertionError("no row \"" + text + "\""));
		table.setSelection(item);
		Event event = new Event();
		event.item = item;
		table.notifyListeners(org.eclipse.swt.SWT.Selection, event);
		settleSelection();
	}

	/** Picks the line of {@code tree} whose first cell is {@code text}. */
	static TreeItem pick(Tree tree, String text) {
		TreeItem item = item(tree, text);
		tree.setSelection(item);
		Event event = new Event();
		event.item = item;
		tree.notifyListeners(org.eclipse.swt.SWT.Selection, event);
		settleSelection();
		return item;
	}

	/** The viewers tell of a selection a moment later. */
	private static void settleSelection() {
		moment(400);
	}

	/** Lets the window work until what it puts off by less than this has been done. */
	static void moment(int millis) {
		boolean[] later = new boolean[1];
		window().getShell().getDisplay().timerExec(millis, () -> later[0] = true);
		Waiting.until(() -> later[0], "a moment to pass");
		Waiting.settle();
	}

	static TreeItem item(Tree tree, String text) {
		return lines(tree.getItems()).stream().filter(i -> i.getText().equals(text)).findFirst()
				.orElseThrow(() -> new AssertionError("no line \"" + text + "\" among " + texts(tree)));
	}

	static List<String> texts(Tree tree) {
		return lines(tree.getItems()).stream().map(TreeItem::getText).toList();
	}

	private static List<TreeItem> lines(TreeItem[] items) {
		List<TreeItem> all = new ArrayList<>();
		for (TreeItem item : items) {
			all.add(item);
			all.addAll(lines(item.getItems()));
		}
		return all;
	}

	static IEditorPart editor() {
		return page().getActiveEditor();
	}
}
