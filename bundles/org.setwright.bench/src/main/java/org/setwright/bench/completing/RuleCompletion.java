package org.setwright.bench.completing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.setwright.bench.hand.AtHand;
import org.setwright.engine.outcome.Finding;
import org.setwright.trade.catalogue.Authority;
import org.setwright.trade.catalogue.Catalogue;
import org.setwright.trade.catalogue.CautionKind;
import org.setwright.trade.catalogue.Choice;
import org.setwright.trade.catalogue.Domain;
import org.setwright.trade.catalogue.FactKind;
import org.setwright.trade.catalogue.StartUpPhase;

/** Offers the words of the rule language at one place of a rule or condition. */
final class RuleCompletion {
	private static final Pattern WORD = Pattern.compile("[\\w$]*$");
	private static final Pattern NOTE = Pattern.compile("@(\\w*)(?:\\(\\s*([^()]*))?$");
	private static final Pattern ACTION = Pattern.compile("\\b(propose|find|caution|startUp)\\(\\s*(?:(\\w+)\\s*,\\s*)?(\\w*)$");
	private static final Pattern FIELD_VALUE = Pattern.compile("(\\w+)\\s*(?:==|!=|<=|>=|<|>|(?:not\\s+)?in\\s*\\((?:[^()]*,)?)\\s*(\\w*)$");
	private final AtHand hand;
	private final Catalogue catalogue;
	private final String typed;
	private final List<Offer> offers = new ArrayList<>();

	private RuleCompletion(AtHand hand, String typed) {
		this.hand = hand;
		this.typed = typed;
		catalogue = hand.ground().catalogue();
	}

	static List<Offer> of(AtHand hand, String typed) {
		RuleCompletion completion = new RuleCompletion(hand, typed);
		completion.find();
		return List.copyOf(completion.offers);
	}

	private void find() {
		boolean inRule = typed.stripLeading().startsWith("rule");
		Matcher note = NOTE.matcher(typed);
		Matcher action = ACTION.matcher(typed);
		Optional<FactKind> kind = openPattern();
		if (inRule && note.find()) {
			note(note);
		} else if (action.find()) {
			action(action);
		} else if (typed.matches("(?s).*Finding\\(\\s*name\\s*==\\s*\\w*")) {
			findings();
		} else if (kind.isPresent()) {
			inside(kind.get());
		} else if (inRule && typed.matches("(?s).*\\bthen\\b.*")) {
			words("propose( ", "Proposes a value for a setting.", "find( ", "Says what was found, for other rules.", "caution( ", "Raises a caution.",
					"startUp( ", "Names something to prove at start-up.", "end", "Ends the rule.");
		} else if (inRule && !typed.matches("(?s).*\\bwhen\\b.*")) {
			words("@authority( ", "How much weight it carries.", "@because( \"", "Why, for the person in the van.", "@source( ",
					"Document, edition and place.",
					"when", "What has to hold.");
		} else {
			words("not ", "There is no such fact.", "exists ", "There is at least one.", "Finding( name == ", "What another rule found.");
			catalogue.kinds().forEach(k -> offer(k.name() + "( ", k.meaning(), true));
			if (inRule) {
				words("then", "What the rule says.");
			}
		}
	}

	private void note(Matcher note) {
		if (note.group(2) == null) {
			int from = note.start(1);
			for (String word : List.of("authority( ", "because( \"", "source( ")) {
				add(from, word, "", true);
			}
		} else if (note.group(1).equals("authority")) {
			for (Authority authority : Authority.values()) {
				String label = authority.label().indexOf('\'') < 0 ? authority.label() : '"' + authority.label() + '"';
				add(note.start(2), label + " )", authority.meaning(), false);
			}
		} else if (note.group(1).equals("source")) {
			add(note.start(2), "common practice )", "No published source.", false);
		}
	}

	private void action(Matcher action) {
		int from = action.start(3);
		switch (action.group(1)) {
			case "propose" -> {
				if (action.group(2) == null) {
					catalogue.settings().forEach(s -> add(from, s.id() + ", ", s.meaning(), true));
				} else {
					catalogue.setting(action.group(2)).ifPresent(s -> values(from, s.domain(), " );"));
				}
			}
			case "caution" -> choices(from, action.group(2), CautionKind.values());
			case "startUp" -> choices(from, action.group(2), StartUpPhase.values());
			default -> findings();
		}
	}

	private void choices(int from, String first, Choice[] choices) {
		if (first == null) {
			Arrays.stream(choices).forEach(c -> add(from, c.name() + ", \"", c.meaning(), true));
		}
	}

	private void findings() {
		TreeMap<String, String> names = new TreeMap<>();
		hand.rules().stream().flatMap(r -> r.then().stream()).filter(org.setwright.engine.language.Action.Find.class::isInstance)
				.map(a -> ((org.setwright.engine.language.Action.Find) a).finding()).forEach(f -> names.put(f, "Some rule finds it."));
		hand.outcome().findings().stream().map(Finding::name).forEach(f -> names.put(f, "Found on this job."));
		names.forEach((name, meaning) -> offer(name + " ", meaning, false));
	}

	private void inside(FactKind kind) {
		Matcher value = FIELD_VALUE.matcher(typed);
		if (value.find() && kind.field(value.group(1)).isPresent()) {
			values(value.start(2), kind.field(value.group(1)).get().domain(), " ");
			add(value.start(2), "UNKNOWN ", "Nobody has looked it up.", false);
		} else {
			kind.fields().forEach(f -> offer(f.name() + " ", f.meaning(), true));
		}
	}

	/** The kind whose pattern is open at the cursor. */
	private Optional<FactKind> openPattern() {
		int depth = 0;
		for (int i = typed.length() - 1; i >= 0; i--) {
			char c = typed.charAt(i);
			depth += c == ')' ? 1 : c == '(' ? -1 : 0;
			if (depth < 0) {
				Matcher word = WORD.matcher(typed.substring(0, i).stripTrailing());
				Optional<FactKind> kind = word.find() ? catalogue.kind(word.group()) : Optional.empty();
				if (kind.isPresent()) {
					return kind;
				}
				depth = 0;
			}
		}
		return Optional.empty();
	}

	private void values(int from, Domain domain, String after) {
		if (domain instanceof Domain.Choices choices) {
			choices.options().forEach(o -> add(from, o.id() + after, o.meaning().isEmpty() ? o.label() : o.label() + ": " + o.meaning(), false));
		} else if (domain instanceof Domain.YesNo) {
			add(from, "YES" + after, "", false);
			add(from, "NO" + after, "", false);
		} else {
			domain.listed().forEach(v -> add(from, v.text() + after, "", false));
		}
	}

	private void words(String... wordsAndMeanings) {
		for (int i = 0; i + 1 < wordsAndMeanings.length; i += 2) {
			offer(wordsAndMeanings[i], wordsAndMeanings[i + 1], !wordsAndMeanings[i].equals("end"));
		}
	}

	private void offer(String text, String meaning, boolean goesOn) {
		Matcher word = WORD.matcher(typed);
		int from = word.find() ? word.start() : typed.length();
		add(from > 0 && typed.charAt(from - 1) == '@' ? from - 1 : from, text, meaning, goesOn);
	}

	private void add(int from, String text, String meaning, boolean goesOn) {
		String begun = typed.substring(from).toLowerCase(Locale.ROOT);
		if (text.toLowerCase(Locale.ROOT).startsWith(begun) && !text.equalsIgnoreCase(begun)) {
			offers.add(new Offer(from, text, meaning, goesOn));
		}
	}
}
