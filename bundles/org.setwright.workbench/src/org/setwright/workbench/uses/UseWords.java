package org.setwright.workbench.uses;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.eclipse.osgi.util.NLS;
import org.eclipse.ui.PlatformUI;
import org.setwright.book.ShopSettings;
import org.setwright.engine.Standing;
import org.setwright.engine.outcome.Outcome;
import org.setwright.engine.outcome.SettingOutcome;
import org.setwright.trade.catalogue.Value;
import org.setwright.workbench.desk.Desk;
import org.setwright.workbench.desk.DeskState;
import org.setwright.workbench.folder.BookTexts;
import org.setwright.writing.live.Tally;
import org.setwright.writing.uses.Mention;
import org.setwright.writing.uses.Thing;
import org.setwright.writing.uses.Uses;

/** Says in words where something is used, and on how many jobs. */
public final class UseWords {
	private static final String JOBS = "jobs/"; //$NON-NLS-1$
	private static final Set<Standing> SPEAKING = Set.of(Standing.STANDS, Standing.OUTRANKED, Standing.DISPUTED);

	private UseWords() {
	}

	/** @return the words for {@code word}, lines apart */
	static String of(WordAtCursor word) {
		Desk desk = PlatformUI.getWorkbench().getService(Desk.class);
		return of(word.thing(), Uses.in(word.manuscript()), desk.state(), desk.tally());
	}

	/** @return what {@code thing} means, and these words, lines apart; empty while no book has been read */
	public static String about(Thing thing) {
		Desk desk = PlatformUI.getWorkbench().getService(Desk.class);
		return BookTexts.manuscript(desk.state())
				.map(book -> (ThingWords.of(thing).orElse("") + "\n" + of(thing, Uses.in(book), desk.state(), desk.tally())).strip()).orElse(""); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
	}

	/** @return these words for each of {@code findings}, by name; none while no book has been read */
	public static Map<String, String> ofFindings(Collection<String> findings) {
		Desk desk = PlatformUI.getWorkbench().getService(Desk.class);
		Optional<Uses> uses = findings.isEmpty() ? Optional.empty() : BookTexts.manuscript(desk.state()).map(Uses::in);
		return uses.map(u -> findings.stream().distinct()
				.collect(Collectors.toMap(f -> f, f -> of(new Thing.OfFinding(f), u, desk.state(), desk.tally())))).orElse(Map.of());
	}

	private static String of(Thing thing, Uses uses, DeskState state, Tally tally) {
		List<Mention> mentions = uses.of(thing);
		long from = mentions.stream().filter(m -> m.defines() && !m.path().startsWith(JOBS) && !m.path().equals(ShopSettings.FILE)).map(Mention::where).distinct().count();
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
		} else if (thing instanceof Thing.OfChoice) {
			lines.add(NLS.bind(Messages.UseWords_choice, new Object[] { rules, jobs, all }));
		} else if (thing instanceof Thing.OfSettingChoice choice) {
			lines.add(NLS.bind(Messages.UseWords_settingChoice, new Object[] { from, jobs }));
			lines.add(NLS.bind(Messages.UseWords_comesTo, comesTo(choice, state), all));
		} else if (thing instanceof Thing.OfAuthority authority) {
			lines.add(NLS.bind(Messages.UseWords_authority, new Object[] { rules, decides(authority, state), all }));
		} else if (thing instanceof Thing.OfRule rule) {
			tally.of(rule.name()).ifPresent(t -> lines.add(NLS.bind(Messages.UseWords_speaks, new Object[] { rule.called(), t.speaks(), tally.jobs() })));
			lines.add(NLS.bind(Messages.UseWords_rule, jobs));
		} else {
			lines.add(NLS.bind(Messages.UseWords_fact, new Object[] { rules, jobs, all }));
		}
		return String.join("\n", lines); //$NON-NLS-1$
	}

	private static long comesTo(Thing.OfSettingChoice choice, DeskState state) {
		return outcomes(state).stream().filter(o -> o.setting(choice.setting()).flatMap(SettingOutcome::value)
				.filter(v -> v instanceof Value.OneOf one && one.option().equals(choice.option())).isPresent()).count();
	}

	private static long decides(Thing.OfAuthority authority, DeskState state) {
		return outcomes(state).stream().filter(o -> o.settings().stream()
				.anyMatch(s -> s.value().isPresent() && s.proposals().get(0).authority() == authority.authority())).count();
	}

	/** @param rules some rules' names @return in how many rules of all, and on how many jobs of all some of them speak */
	public static String inRules(Collection<String> rules, int of) {
		Tally tally = PlatformUI.getWorkbench().getService(Desk.class).tally();
		long jobs = rules.stream().flatMap(r -> tally.of(r).stream()).flatMap(t -> SPEAKING.stream().flatMap(s -> t.jobs().get(s).stream())).distinct().count();
		return NLS.bind(Messages.UseWords_word, new Object[] { rules.size(), of, jobs, tally.jobs() });
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
