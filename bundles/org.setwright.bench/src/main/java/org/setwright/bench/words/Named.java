package org.setwright.bench.words;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.setwright.bench.told.Misread;
import org.setwright.book.JobCase;
import org.setwright.book.Misfit;
import org.setwright.book.Nearest;
import org.setwright.engine.language.Rule;
import org.setwright.trade.catalogue.Catalogue;
import org.setwright.trade.catalogue.Setting;

/** Finds the one thing that words name: by its whole name, or by a part of it that only one has. */
public final class Named {
	private static final int MOST_SHOWN = 5;

	private Named() {
	}

	/** @return the setting called {@code name} */
	public static Setting setting(Span name, Catalogue catalogue) throws Misread {
		return one("setting", name, catalogue.settings(), List.of(Setting::label, Setting::id));
	}

	/** @return the rule, of these, called {@code name} */
	public static Rule rule(Span name, Collection<Rule> rules) throws Misread {
		return one("rule", name, rules, List.of(Rule::name));
	}

	/** @return the job, of these, called {@code name} */
	public static JobCase job(Span name, Collection<JobCase> jobs) throws Misread {
		return one("job", name, jobs, List.of(JobCase::name, JobCase::path, Named::shortName));
	}

	/** @return the name of the job's file without folder and ending */
	public static String shortName(JobCase job) {
		return job.path().substring(job.path().lastIndexOf('/') + 1).replaceFirst("\\.[^.]*$", "");
	}

	/** @return a rule's name in quotes; that of a table's row as it is; with its authority */
	public static String withAuthority(Rule rule) {
		return of(rule) + " (" + rule.authority().label() + ")";
	}

	/** @return a rule's name in quotes; that of a table's row as it is */
	public static String of(Rule rule) {
		return rule.at().file().endsWith(".csv") ? rule.name() : '"' + rule.name() + '"';
	}

	private static <T> T one(String noun, Span given, Collection<T> things, List<Function<T, String>> names) throws Misread {
		Span name = given.strip().bare();
		String wanted = name.text().strip().toLowerCase(Locale.ROOT);
		if (wanted.isEmpty()) {
			throw name.misread("The name of a " + noun + " is missing.", "Type a part of its name that no other has.");
		}
		List<T> found = things.stream().filter(t -> lower(t, names).anyMatch(wanted::equals)).toList();
		if (found.isEmpty()) {
			found = things.stream().filter(t -> lower(t, names).anyMatch(n -> n.contains(wanted))).toList();
		}
		if (found.size() == 1) {
			return found.get(0);
		} else if (found.isEmpty()) {
			List<String> all = things.stream().flatMap(t -> names.stream().map(n -> n.apply(t))).toList();
			throw name.misread("There is no " + noun + " called " + Misfit.quoted(name.text()) + ".", Nearest.to(name.text(), all)
					.map(n -> "Is " + Misfit.quoted(n) + " meant?").orElse("Complete a part of the name to see what there is."));
		}
		String listed = found.stream().limit(MOST_SHOWN).map(names.get(0)).map(n -> '"' + n + '"').collect(Collectors.joining(", "));
		throw name.misread("More than one " + noun + " is meant by " + Misfit.quoted(name.text()) + ".", "Write more of it: " + listed
				+ (found.size() > MOST_SHOWN ? " and " + (found.size() - MOST_SHOWN) + " more." : "."));
	}

	private static <T> Stream<String> lower(T thing, List<Function<T, String>> names) {
		return names.stream().map(n -> n.apply(thing).toLowerCase(Locale.ROOT));
	}
}
