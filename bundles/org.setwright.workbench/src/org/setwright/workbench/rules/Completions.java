package org.setwright.workbench.rules;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.eclipse.osgi.util.NLS;
import org.setwright.trade.catalogue.Authority;
import org.setwright.trade.catalogue.Catalogue;
import org.setwright.trade.catalogue.CautionKind;
import org.setwright.trade.catalogue.Domain;
import org.setwright.trade.catalogue.FactKind;
import org.setwright.trade.catalogue.Field;
import org.setwright.trade.catalogue.StartUpPhase;

/** What may come next while a rule is typed: facts, their fields and values, settings and theirs. */
final class Completions {
	private static final Pattern ANNOTATION = Pattern.compile("@authority\\s*\\(\\s*\"?([\\w' ]*)$"); //$NON-NLS-1$
	private static final Pattern VALUE_OF_FIELD = Pattern.compile("(\\w+)\\s*(?:==|!=|(?:not\\s+)?in\\s*\\([^()]*)\\s*$"); //$NON-NLS-1$
	private static final Pattern VALUE_OF_SETTING = Pattern.compile("propose\\s*\\(\\s*(\\w+)\\s*,\\s*$"); //$NON-NLS-1$
	private static final Pattern PART = Pattern.compile("(?m)^\\s*(rule|when|then|end)\\b"); //$NON-NLS-1$
	private static final List<String> CONDITIONS = List.of("not", "exists", "Finding"); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
	private static final List<String> ACTIONS = List.of("propose", "find", "caution", "startUp"); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$ //$NON-NLS-4$
	private static final String UNKNOWN = "UNKNOWN"; //$NON-NLS-1$
	private static final Pattern FINDING = Pattern.compile("(?s).*(\\bFinding\\s*\\(\\s*name\\s*==|\\bfind\\s*\\()\\s*"); //$NON-NLS-1$
	private final Catalogue catalogue;
	private final Supplier<List<String>> findings;

	/**
	 * A word that may come next.
	 *
	 * @param word as rules write it
	 * @param label what people call it; may be empty
	 * @param meaning in a sentence; may be empty
	 */
	record Completion(String word, String label, String meaning) {
		static Completion plain(String word) {
			return new Completion(word, "", LanguageWords.sentence(word)); //$NON-NLS-1$
		}
	}

	/** @param findings the names of those the rules of the book make */
	Completions(Catalogue catalogue, Supplier<List<String>> findings) {
		this.catalogue = catalogue;
		this.findings = findings;
	}

	/** @return what of the word is written already before {@code offset} */
	static String begun(String rules, int offset) {
		int start = offset;
		while (start > 0 && (Character.isLetterOrDigit(rules.charAt(start - 1)) || rules.charAt(start - 1) == '_')) {
			start--;
		}
		return rules.substring(start, offset);
	}

	/** @return the words that may stand at {@code offset} and begin as what is written there, any case */
	List<Completion> at(String rules, int offset) {
		String begun = begun(rules, offset);
		String wanted = begun.toLowerCase(Locale.ROOT);
		String before = rules.substring(0, offset - begun.length());
		return possible(before).filter(c -> c.word().toLowerCase(Locale.ROOT).startsWith(wanted)
				|| !wanted.isEmpty() && c.label().toLowerCase(Locale.ROOT).startsWith(wanted)).distinct().toList();
	}

	private Stream<Completion> possible(String before) {
		if (ANNOTATION.matcher(before).find()) {
			return Arrays.stream(Authority.values()).map(a -> new Completion(a.label(), "", a.meaning())); //$NON-NLS-1$
		}
		if (FINDING.matcher(before).matches()) {
			return findings.get().stream().map(f -> new Completion(f, "", "")); //$NON-NLS-1$ //$NON-NLS-2$
		}
		return switch (part(before)) {
			case "rule" -> before.endsWith("@") ? Stream.of("authority", "because", "source").map(Completion::plain) : Stream.of(); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$ //$NON-NLS-4$ //$NON-NLS-5$
			case "when" -> condition(before); //$NON-NLS-1$
			case "then" -> action(before); //$NON-NLS-1$
			default -> Stream.of(Completion.plain("rule")); //$NON-NLS-1$
		};
	}

	/** @return the word that began the present part of a rule */
	private static String part(String before) {
		String part = "end"; //$NON-NLS-1$
		Matcher begun = PART.matcher(before);
		while (begun.find()) {
			part = begun.group(1);
		}
		return part;
	}

	private Stream<Completion> condition(String before) {
		Optional<FactKind> kind = openKind(before);
		if (kind.isEmpty()) {
			Stream<Completion> kinds = catalogue.kinds().stream().map(k -> new Completion(k.name(), k.label(), k.meaning()));
			return Stream.concat(kinds, CONDITIONS.stream().map(Completion::plain));
		}
		Matcher value = VALUE_OF_FIELD.matcher(before);
		Optional<Field> field = value.find() ? kind.get().field(value.group(1)) : Optional.empty();
		return field.map(f -> Stream.concat(values(f.domain(), meaning(f.meaning(), f.domain())), Stream.of(Completion.plain(UNKNOWN))))
				.orElseGet(() -> kind.get().fields().stream().map(f -> new Completion(f.name(), f.label(), meaning(f.meaning(), f.domain()))));
	}

	/** @return the kind whose pattern is open at the end of {@code before}, or empty */
	private Optional<FactKind> openKind(String before) {
		List<String> open = new ArrayList<>();
		Matcher bracket = Pattern.compile("(\\w*)\\s*\\(|\\)").matcher(before.substring(before.lastIndexOf("when"))); //$NON-NLS-1$ //$NON-NLS-2$
		while (bracket.find()) {
			if (bracket.group(1) != null) {
				open.add(bracket.group(1));
			} else if (!open.isEmpty()) {
				open.remove(open.size() - 1);
			}
		}
		return open.stream().flatMap(name -> catalogue.kind(name).stream()).findFirst();
	}

	private Stream<Completion> action(String before) {
		Matcher value = VALUE_OF_SETTING.matcher(before);
		if (value.find()) {
			return catalogue.setting(value.group(1)).stream().flatMap(s -> values(s.domain(), meaning(s.meaning(), s.domain())));
		} else if (before.matches("(?s).*(propose\\s*\\(|\\{\\s*setting\\s)\\s*")) { //$NON-NLS-1$
			return catalogue.settings().stream().map(s -> new Completion(s.id(), s.label(), meaning(s.meaning(), s.domain())));
		} else if (before.matches("(?s).*caution\\s*\\(\\s*")) { //$NON-NLS-1$
			return Arrays.stream(CautionKind.values()).map(k -> new Completion(k.name(), k.label(), k.meaning()));
		}
		if (before.matches("(?s).*startUp\\s*\\(\\s*")) { //$NON-NLS-1$
			return Arrays.stream(StartUpPhase.values()).map(p -> new Completion(p.name(), p.label(), p.meaning()));
		}
		return before.matches("(?s).*[(,]\\s*") ? Stream.of() : ACTIONS.stream().map(Completion::plain); //$NON-NLS-1$
	}

	private static String meaning(String meaning, Domain domain) {
		return NLS.bind(Messages.Completions_meaning, meaning, domain.allowed());
	}

	/** @param about what values mean that have no meaning of their own: what the field or setting means */
	private static Stream<Completion> values(Domain domain, String about) {
		if (domain instanceof Domain.Choices choices) {
			return choices.options().stream().map(o -> new Completion(o.id(), o.label(), o.meaning()));
		}
		return domain instanceof Domain.YesNo ? Stream.of("YES", "NO").map(v -> new Completion(v, "", about)) //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
				: domain.listed().stream().map(v -> new Completion(v.text(), "", about)); //$NON-NLS-1$
	}
}
