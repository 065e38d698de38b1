package org.setwright.workbench.editions;

import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.eclipse.jface.dialogs.InputDialog;
import org.eclipse.jface.window.Window;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.widgets.Shell;
import org.setwright.editions.EditionsOf;
import org.setwright.editions.OtherLines.Line;
import org.setwright.editions.joining.Conflict;
import org.setwright.editions.joining.JoinPlan;
import org.setwright.editions.kept.Kept;
import org.setwright.editions.kept.NotDone;
import org.setwright.workbench.folder.FolderChanges;

/** Begins lines of work, goes over to them and joins them. */
final class LineActs {
	private final Shell shell;
	private final Acts acts;
	private final OpenEditions open;

	/** @param acts what can be done otherwise */
	LineActs(Shell shell, Acts acts, OpenEditions open) {
		this.shell = shell;
		this.acts = acts;
		this.open = open;
	}

	/** Begins a line from what is open; work in hand comes along. */
	void begin(Path folder) {
		InputDialog ask = new InputDialog(shell, Messages.LineActs_begin, Messages.LineActs_name, "", //$NON-NLS-1$
				text -> text.isBlank() ? Messages.LineActs_nameFirst : null);
		if (ask.open() == Window.OK) {
			String name = ask.getValue().strip();
			Doing.start(shell, Messages.LineActs_begin, m -> {
				open.demand(folder).lines().begin(name);
				return Optional.of(name);
			}, n -> acts.look(Optional.empty()));
		}
	}

	/** Goes over to a line. */
	void over(Path folder, Line line) {
		if (acts.nothingTyped(Messages.LineActs_over)) {
			Doing.start(shell, Messages.LineActs_over, m -> {
				EditionsOf editions = open.demand(folder);
				editions.lines().open(line.name());
				return Optional.of(editions.last());
			}, this::changed);
		}
	}

	/** How lines come together. */
	private record Draft(JoinPlan plan, Author author) {
	}

	/** Makes a plan of how lines come together. */
	@FunctionalInterface
	interface Planning {
		/** @return the plan; nothing is changed yet */
		JoinPlan of(EditionsOf editions) throws NotDone;
	}

	/** Joins a line with the open one, after a person decided what both changed. */
	void join(Path folder, Line line) {
		together(folder, Messages.LineActs_join, editions -> {
			editions.work().demandAllKept("join"); //$NON-NLS-1$
			return editions.lines().join(line.name());
		});
	}

	/** Carries a plan out, after a person decided what both changed. @param title what is done, for people */
	void together(Path folder, String title, Planning planning) {
		if (acts.nothingTyped(title)) {
			Doing.start(shell, title, m -> Optional.of(draft(open.demand(folder), planning)), draft -> carryOut(folder, title, draft));
		}
	}

	private static Draft draft(EditionsOf editions, Planning planning) throws NotDone {
		JoinPlan plan = planning.of(editions);
		if (plan.joining().nothingNew()) {
			throw new NotDone(NLS.bind(Messages.LineActs_nothingNew, plan.name()), Messages.LineActs_keepThere);
		}
		return new Draft(plan, Author.of(editions));
	}

	private void carryOut(Path folder, String title, Draft draft) {
		JoinDialog ask = new JoinDialog(shell, draft.plan(), draft.author());
		ask.ask().ifPresent(said -> Doing.start(shell, title, m -> Optional.of(join(folder, draft.plan(), ask.decided(), said)),
				kept -> changed(Optional.of(kept))));
	}

	private Kept join(Path folder, JoinPlan plan, Map<Conflict, Optional<String>> decided, Entry.Said said) throws NotDone {
		EditionsOf editions = open.demand(folder);
		JoinPlan now = plan;
		for (Map.Entry<Conflict, Optional<String>> choice : decided.entrySet()) {
			now = now.decided(editions.repo(), choice.getKey(), choice.getValue());
		}
		return editions.lines().keepJoined(now, said.words(), Optional.of(said.by()));
	}

	private void changed(Optional<Kept> look) {
		FolderChanges.look();
		acts.look(look);
	}
}
