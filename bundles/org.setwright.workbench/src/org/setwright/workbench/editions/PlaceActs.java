package org.setwright.workbench.editions;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import org.eclipse.jface.dialogs.InputDialog;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.LabelProvider;
import org.eclipse.jface.window.Window;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.dialogs.ListDialog;
import org.setwright.editions.EditionsOf;

/** Exchanges editions with other places, each known by its name. */
final class PlaceActs {
	private static final String FIRST = "origin"; //$NON-NLS-1$
	private final Shell shell;
	private final LineActs lines;
	private final OpenEditions open;

	PlaceActs(Shell shell, LineActs lines, OpenEditions open) {
		this.shell = shell;
		this.lines = lines;
		this.open = open;
	}

	/** Sends the open line and every sign-off. Never replaces what is there. */
	void send(Path folder) {
		place(folder, Messages.PlaceActs_send, (title, place) -> Doing.start(shell, title,
				m -> Optional.of(open.demand(folder).lines().send(place, LoginDialog.asking(shell))),
				isNew -> MessageDialog.openInformation(shell, title, NLS.bind(isNew ? Messages.PlaceActs_sent : Messages.PlaceActs_nothingToSend, place))));
	}

	/** Gets what is new on the same line there, and joins it with the open one. */
	void receive(Path folder) {
		place(folder, Messages.PlaceActs_receive, (title, place) -> lines.together(folder, title, editions -> {
			editions.work().demandAllKept("receive"); //$NON-NLS-1$
			return editions.lines().receive(place, LoginDialog.asking(shell));
		}));
	}

	/** Has a place chosen where there are several, and its address told where there is none. */
	private void place(Path folder, String title, BiConsumer<String, String> then) {
		Doing.start(shell, title, m -> Optional.of(List.copyOf(open.demand(folder).lines().places().keySet())), places -> {
			if (places.isEmpty()) {
				first(folder, title, then);
			} else if (places.size() == 1) {
				then.accept(title, places.get(0));
			} else {
				choose(title, places).ifPresent(p -> then.accept(title, p));
			}
		});
	}

	private void first(Path folder, String title, BiConsumer<String, String> then) {
		InputDialog ask = new InputDialog(shell, title, Messages.PlaceActs_address, "", //$NON-NLS-1$
				text -> text.isBlank() ? Messages.PlaceActs_addressFirst : null);
		if (ask.open() == Window.OK) {
			String address = ask.getValue().strip();
			Doing.start(shell, title, m -> {
				EditionsOf editions = open.demand(folder);
				editions.lines().addPlace(FIRST, address);
				return Optional.of(FIRST);
			}, place -> then.accept(title, place));
		}
	}

	private Optional<String> choose(String title, List<String> places) {
		ListDialog ask = new ListDialog(shell);
		ask.setTitle(title);
		ask.setMessage(Messages.PlaceActs_which);
		ask.setContentProvider(ArrayContentProvider.getInstance());
		ask.setLabelProvider(new LabelProvider());
		ask.setInput(places);
		ask.setInitialSelections(places.get(0));
		return ask.open() == Window.OK && ask.getResult().length > 0 ? Optional.of((String) ask.getResult()[0]) : Optional.empty();
	}
}
