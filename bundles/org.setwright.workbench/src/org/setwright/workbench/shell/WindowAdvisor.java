package org.setwright.workbench.shell;

import java.nio.file.Path;
import java.util.Optional;
import org.eclipse.core.runtime.Platform;
import org.eclipse.jface.action.StatusLineContributionItem;
import org.eclipse.jface.action.StatusLineManager;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.ui.IWorkbenchPreferenceConstants;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.application.IWorkbenchWindowConfigurer;
import org.eclipse.ui.application.WorkbenchWindowAdvisor;
import org.eclipse.ui.intro.IIntroManager;
import org.setwright.workbench.desk.Desk;
import org.setwright.workbench.desk.DeskState;
import org.setwright.workbench.folder.BookProject;
import org.setwright.workbench.folder.FolderChanges;
import org.setwright.workbench.folder.OpenBook;
import org.setwright.workbench.rules.RuleAtCursor;

/** Shapes the window and begins with a book, or with the welcome page. */
final class WindowAdvisor extends WorkbenchWindowAdvisor {
	private static final Point SIZE = new Point(1440, 900);
	/** An entry of its own, as wide as its words: parts show and clear messages of theirs beside it. */
	private final StatusLineContributionItem status = new StatusLineContributionItem(WindowAdvisor.class.getName(), StatusLineContributionItem.CALC_TRUE_WIDTH);

	WindowAdvisor(IWorkbenchWindowConfigurer configurer) {
		super(configurer);
	}

	@Override
	public void preWindowOpen() {
		IWorkbenchWindowConfigurer window = getWindowConfigurer();
		window.setInitialSize(SIZE);
		window.setTitle(Messages.WindowAdvisor_title);
		window.setShowCoolBar(true);
		window.setShowStatusLine(true);
		window.setShowPerspectiveBar(true);
		window.setShowProgressIndicator(true);
		PlatformUI.getPreferenceStore().setDefault(IWorkbenchPreferenceConstants.SHOW_TEXT_ON_PERSPECTIVE_BAR, true);
	}

	private void window(Desk desk) {
		desk.addListener(this::deskChanged);
		getWindowConfigurer().getActionBarConfigurer().getStatusLineManager().appendToGroup(StatusLineManager.BEGIN_GROUP, status);
		getWindowConfigurer().getActionBarConfigurer().getStatusLineManager().update(true);
		getWindowConfigurer().getWindow().getSelectionService().addPostSelectionListener(new RuleAtCursor(desk));
	}

	@Override
	public void openIntro() {
		// postWindowOpen decides, once it is clear whether there is a book
	}

	@Override
	public void postWindowOpen() {
		IWorkbenchWindow window = getWindowConfigurer().getWindow();
		Desk desk = window.getService(Desk.class);
		window(desk);
		new PlainToolbar().in(window);
		window.getShell().addListener(SWT.Activate, e -> FolderChanges.look());
		Optional<Path> book = asked().or(WindowAdvisor::lastTime);
		if (book.isPresent()) {
			new OpenBook(desk).open(book.get());
		} else {
			PlatformUI.getWorkbench().getIntroManager().showIntro(window, false);
		}
	}

	/** @return the book named when the program was started */
	private static Optional<Path> asked() {
		for (String argument : Platform.getApplicationArgs()) {
			Path folder = Path.of(argument).toAbsolutePath().normalize();
			if (OpenBook.isBook(folder)) {
				return Optional.of(folder);
			}
		}
		return Optional.empty();
	}

	/** @return the book that was open when the window was last closed */
	private static Optional<Path> lastTime() {
		return BookProject.linked().map(f -> f.getLocationURI()).map(Path::of).filter(OpenBook::isBook);
	}

	private void deskChanged(DeskState before, DeskState now) {
		if (!before.folder().equals(now.folder())) {
			IIntroManager intro = PlatformUI.getWorkbench().getIntroManager();
			now.folder().ifPresent(f -> intro.closeIntro(intro.getIntro()));
		}
		if (before.latest() != now.latest() || !before.folder().equals(now.folder())) {
			status.setText(StatusWords.of(now));
		}
		getWindowConfigurer().setTitle(now.latest().map(e -> NLS.bind(Messages.WindowAdvisor_titleOfBook, e.book().name()))
				.orElse(Messages.WindowAdvisor_title));
	}
}
