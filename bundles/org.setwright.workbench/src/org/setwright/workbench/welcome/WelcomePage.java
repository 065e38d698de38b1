package org.setwright.workbench.welcome;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.eclipse.core.commands.ParameterizedCommand;
import org.eclipse.core.commands.common.CommandException;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;
import org.eclipse.ui.commands.ICommandService;
import org.eclipse.ui.handlers.IHandlerService;
import org.eclipse.ui.part.IntroPart;
import org.setwright.workbench.folder.OpenBookHandler;
import org.setwright.workbench.folder.RecentBooks;
import org.setwright.workbench.look.Icon;
import org.setwright.workbench.look.Palette;
import org.setwright.workbench.look.Repaint;
import org.setwright.workbench.look.Type;

/** The page that is there first. */
public final class WelcomePage extends IntroPart {
	private static final int LETTERS = 76;
	private int width;
	private Button first;

	@Override
	public void createPartControl(Composite parent) {
		ScrolledComposite scrolled = new ScrolledComposite(parent, SWT.V_SCROLL | SWT.H_SCROLL);
		Composite page = new Composite(scrolled, SWT.NONE);
		width = Type.room(page, LETTERS, 1).x;
		page.setBackgroundMode(SWT.INHERIT_FORCE);
		GridLayoutFactory.fillDefaults().margins(24, 56).applyTo(page);
		Composite column = new Composite(page, SWT.NONE);
		GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(column);
		GridDataFactory.swtDefaults().align(SWT.CENTER, SWT.TOP).grab(true, true).hint(width, SWT.DEFAULT).applyTo(column);
		title(column);
		first = action(column, Messages.WelcomePage_starter, Messages.WelcomePage_starterMeans, "org.setwright.workbench.copyStarter"); //$NON-NLS-1$
		action(column, Messages.WelcomePage_open, Messages.WelcomePage_openMeans, OpenBookHandler.COMMAND);
		recent(column, new RecentBooks().list());
		scrolled.setContent(page);
		scrolled.setExpandHorizontal(true);
		scrolled.setExpandVertical(true);
		scrolled.setMinSize(page.computeSize(SWT.DEFAULT, SWT.DEFAULT));
		Repaint.with(page, () -> page.setBackground(page.getDisplay().getSystemColor(SWT.COLOR_LIST_BACKGROUND)));
		page.setBackground(page.getDisplay().getSystemColor(SWT.COLOR_LIST_BACKGROUND));
	}

	private void title(Composite column) {
		Composite line = new Composite(column, SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(2).spacing(16, 0).applyTo(line);
		new Label(line, SWT.NONE).setImage(Icon.SETWRIGHT.image());
		Label name = new Label(line, SWT.NONE);
		name.setText(Messages.WelcomePage_title);
		Type.ink(name, Palette.Ink.HEADING);
		Type.heading(name, 14);
		Label purpose = wrapped(column, Messages.WelcomePage_purpose);
		Type.larger(purpose, 1);
		GridDataFactory.fillDefaults().grab(true, false).hint(width, SWT.DEFAULT).indent(0, 16).applyTo(purpose);
	}

	private Button action(Composite column, String label, String means, String command) {
		Button button = new Button(column, SWT.PUSH);
		button.setText(label);
		Type.larger(button, 1);
		button.addListener(SWT.Selection, e -> run(command, Map.of()));
		GridDataFactory.swtDefaults().hint(Math.max(width / 2, button.computeSize(SWT.DEFAULT, SWT.DEFAULT).x), SWT.DEFAULT).indent(0, 28).applyTo(button);
		Label explained = wrapped(column, means);
		Type.ink(explained, Palette.Ink.QUIET);
		GridDataFactory.fillDefaults().grab(true, false).hint(width, SWT.DEFAULT).indent(2, 6).applyTo(explained);
		return button;
	}

	private void recent(Composite column, List<Path> books) {
		if (books.isEmpty()) {
			return;
		}
		Label heading = new Label(column, SWT.NONE);
		heading.setText(Messages.WelcomePage_recent);
		Type.ink(heading, Palette.Ink.HEADING);
		Type.heading(heading, 2);
		GridDataFactory.swtDefaults().indent(0, 36).applyTo(heading);
		for (Path book : books) {
			Link link = new Link(column, SWT.NONE);
			link.setText("<a>" + shown(book.getFileName()) + "</a>   " + shown(book.getParent())); //$NON-NLS-1$ //$NON-NLS-2$
			link.addListener(SWT.Selection,
					e -> run(OpenBookHandler.COMMAND, Map.of(OpenBookHandler.FOLDER, book.toString())));
			GridDataFactory.fillDefaults().grab(true, false).indent(2, 8).applyTo(link);
		}
	}

	private static String shown(Path path) {
		return path == null ? "" : path.toString().replace("&", "&&").replace("<", "\u2039"); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$ //$NON-NLS-4$ //$NON-NLS-5$
	}

	private static Label wrapped(Composite parent, String text) {
		Label label = new Label(parent, SWT.WRAP);
		label.setText(text);
		return label;
	}

	private void run(String command, Map<String, String> parameters) {
		ICommandService commands = getIntroSite().getService(ICommandService.class);
		ParameterizedCommand asked = ParameterizedCommand.generateCommand(commands.getCommand(command), parameters);
		try {
			getIntroSite().getService(IHandlerService.class).executeCommand(asked, null);
		} catch (CommandException notDefined) {
			throw new IllegalStateException(command, notDefined);
		}
	}

	@Override
	public void standbyStateChanged(boolean standby) {
		// the page looks the same beside others
	}

	@Override
	public void setFocus() {
		first.setFocus();
	}
}
