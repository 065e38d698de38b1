package org.setwright.workbench.uses;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.jface.text.IDocument;
import org.eclipse.osgi.util.NLS;
import org.eclipse.ui.PlatformUI;
import org.setwright.engine.outcome.Outcome;
import org.setwright.workbench.desk.Desk;
import org.setwright.workbench.desk.DeskState;
import org.setwright.writing.uses.Mention;
import org.setwright.writing.uses.Thing;
import org.setwright.writing.uses.Uses;

/** Says in words where something is used, and on how many jobs. */
public final class UseWords {
	private static final String JOBS = "jobs/"; //$NON-NLS-1$

	private UseWords() {
	}

	/** @return the words for what stands at {@code offset}, lines apart; empty when it is no word of a book */
	public static Optional<String> at(IDocument document, int offset) {
		Desk desk = PlatformUI.getWorkbench().getService(Desk.class);
		return WordAtCursor.at(desk, document, offset).map(word -> of(word.thing(), Uses.in(word.manuscript()), desk.state()));
	}

	static String of(Thing thing, Uses uses, DeskState state) {
		List<Mention> mentions = uses.of(thing);
		long from = mentions.stream().filter(m -> m.defines() && !m.path().startsWith(JOBS)).map(Mention::where).distinct().count();
		long rules = mentions.stream().filter(m -> !m.defines() && !m.path().startsWith(JOBS)).map(Mention::where).distinct().count();
		long jobs = mentions.stream().filter(m -> m.path().startsWith(JOBS)).map(Mention::path).distinct().count();
		int all = state.latest().map(e -> e.book().jobs().size()).orElse(0);
		List<String> lines = new ArrayList<>();
		if (thing instanceof Thing.OfFinding finding) {
			lines.add(NLS.bind(Messages.UseWords_finding, new Object[] { finding.name(), from, rules }));
			lines.add(NLS.bind(Messages.UseWords_found, found(finding.name(), state), all));
		} else if (thing instanceof Thing.OfSetting setting) {
			lines.add(NLS.bind(Messages.UseWords_setting, new Object[] { from, rules, jobs }));
			lines.add(NLS.bind(Messages.UseWords_comesTo, comesTo(setting, state), all));
		} else if (thing instanceof Thing.OfValue value) {
			lines.add(NLS.bind(Messages.UseWords_value, new Object[] { value.called(), rules, jobs, all }));
		} else if (!(thing instanceof Thing.OfRule)) {
			lines.add(NLS.bind(Messages.UseWords_fact, new Object[] { rules, jobs, all }));
		}
		return String.join("\n", lines); //$NON-NLS-1$
	}

	private static long found(String finding, DeskState state) {
		return outcomes(state).stream().filter(o -> o.findings().stream().anyMatch(f -> f.name().equals(finding))).count();
	}

	private static long comesTo(Thing.OfSetting setting, DeskState state) {
		return outcomes(state).stream().filter(o -> o.setting(setting.setting()).filter(s -> s.value().isPresent()).isPresent()).count();
	}

	private static List<Outcome> outcomes(DeskState state) {
		return state.latest().map(e -> List.copyOf(e.outcomes().values())).orElse(List.of());
	}
}
