package org.setwright.workbench.editions;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.custom.CTabFolder;
import org.setwright.editions.EditionsOf;
import org.setwright.editions.kept.Kept;
import org.setwright.editions.kept.NotDone;
import org.setwright.editions.lineage.Answer;
import org.setwright.editions.lineage.RuleStep;
import org.setwright.editions.written.WrittenRule;
import org.setwright.workbench.desk.Desk;
import org.setwright.workbench.rows.RowTree;

/** Who answers for the rule that is looked at, wherever it was picked: every edition that changed it, followed through renames and moves. */
final class AnswersTab {
	private final Desk desk;
	private final OpenEditions open;
	private final ListPane pane;
	private final WhenSeen seen;
	private final Asking<Answered> asking = new Asking<>(Messages.AnswersTab_name, this::told, this::refused);

	/** What came of asking. @param name of the rule @param answer empty when the work in hand holds no such rule */
	private record Answered(String name, Optional<Answer> answer) {
		static Answered of(EditionsOf editions, String name) throws NotDone {
			Optional<WrittenRule> rule = editions.inHand().rule(name);
			return new Answered(name, rule.isEmpty() ? Optional.empty() : editions.answers(List.of(rule.get())).stream().findFirst());
		}
	}

	/** @param opened told which edition is to be looked at */
	AnswersTab(CTabFolder tabs, Desk desk, OpenEditions open, Consumer<Kept> opened) {
		this.desk = desk;
		this.open = open;
		pane = new ListPane(tabs, Messages.AnswersTab_list, AnswerRows.COLUMNS);
		seen = new WhenSeen(tabs, Messages.AnswersTab_title, pane.control(), this::ask);
		pane.tree().onPick(about -> {
			// the edition is shown when the line is opened
		}, about -> opened.accept(((RuleStep) about).edition()));
		pane.control().addDisposeListener(e -> asking.drop());
	}

	RowTree tree() {
		return pane.tree();
	}

	/** Another rule is looked at, or the editions are other ones. */
	void changed() {
		seen.due();
	}

	/** @return the picked edition of the rule, while this tab is shown */
	Optional<OldRule> old() {
		return pane.tree().picked().filter(a -> seen.seen()).map(RuleStep.class::cast)
				.flatMap(s -> s.change().after().map(rule -> new OldRule(s.edition(), rule.name())));
	}

	private void ask() {
		Optional<Path> folder = desk.state().folder();
		Optional<String> rule = desk.state().rule();
		if (folder.isEmpty() || rule.isEmpty()) {
			asking.drop();
			pane.show(Messages.AnswersTab_pick, List.of());
		} else {
			pane.say(NLS.bind(Messages.AnswersTab_asking, rule.get()));
			asking.ask(m -> Optional.of(Answered.of(open.demand(folder.get()), rule.get())));
		}
	}

	private void told(Answered now) {
		if (now.answer().isEmpty()) {
			pane.show(NLS.bind(Messages.AnswersTab_notInHand, now.name()), List.of());
			return;
		}
		String who = now.answer().get().mattered().map(s -> NLS.bind(Messages.AnswersTab_answers, s.edition().by().name(), now.name()))
				.orElse(NLS.bind(Messages.AnswersTab_neverKept, now.name()));
		pane.show(who, AnswerRows.of(now.answer().get()));
	}

	private void refused(NotDone no) {
		pane.show(no.getMessage(), List.of());
	}
}
