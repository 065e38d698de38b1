package org.setwright.engine.explaining;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.setwright.engine.language.Action;
import org.setwright.engine.language.Operand;
import org.setwright.engine.language.Rule;
import org.setwright.engine.language.Sentence;
import org.setwright.trade.catalogue.Quantity;

/**
 * A rule or a row of a table as trade English, for somebody who does not read rules. It says everything the rule says:
 * conditions, what it proposes, finds, warns of and wants proved, with whose authority, why, and from which source.
 *
 * @param rule the rule
 * @param sentences in the order they are read out; each ends with a full stop
 */
public record ReadAloud(Rule rule, List<String> sentences) {
	public ReadAloud {
		sentences = List.copyOf(sentences);
	}

	/** @return {@code rule} in words */
	public static ReadAloud of(Rule rule) {
		Names names = new Names(rule);
		List<String> sentences = new ArrayList<>();
		sentences.add(Said.capital(conditions(rule, names) + deeds(rule, names) + " (" + rule.authority().label() + ")" + Openers.because(rule.because())));
		rule.then().forEach(action -> more(action, names, sentences));
		sentences.add("Source: " + closed(rule.source()));
		return new ReadAloud(rule, sentences);
	}

	/** @return all sentences one after the other */
	public String text() {
		return String.join(" ", sentences);
	}

	private static String conditions(Rule rule, Names names) {
		return rule.when().isEmpty() ? "on every job " : "if " + new Clauses(names).all(rule.when()) + ", ";
	}

	private static String deeds(Rule rule, Names names) {
		List<String> deeds = new ArrayList<>(rule.then().stream().flatMap(a -> deed(a, names).stream()).toList());
		long cautions = rule.then().stream().filter(Action.Warn.class::isInstance).count();
		if (cautions > 0) {
			deeds.add(cautions == 1 ? "give a caution" : "give " + cautions + " cautions");
		}
		long checks = rule.then().stream().filter(Action.StartUp.class::isInstance).count();
		if (checks > 0) {
			deeds.add(checks == 1 ? "make a check at start-up" : "make " + checks + " checks at start-up");
		}
		return Said.joined(deeds, "and");
	}

	private static List<String> deed(Action action, Names names) {
		if (action instanceof Action.Propose propose) {
			String value = propose.value() instanceof Operand.Literal literal ? Names.value(literal.value())
					: names.bound((Operand.Bound) propose.value());
			return List.of("set " + Names.label(propose.setting().label()) + (value.startsWith("whether ") ? " by " : " to ") + value);
		}
		return action instanceof Action.Find find ? List.of("find " + Clauses.finding(find.finding())) : List.of();
	}

	private static void more(Action action, Names names, List<String> into) {
		if (action instanceof Action.Warn warn) {
			into.add("Caution, " + warn.kind().label() + ": " + closed(warn.sentence()));
		} else if (action instanceof Action.StartUp check) {
			into.add("At start-up, " + check.phase().label() + ": " + closed(words(check.callFor(), names)));
			into.add("What to see: " + closed(words(check.see(), names)));
			into.add("If not: " + closed(words(check.ifNot(), names)));
			check.pause().ifPresent(p -> into.add("Then wait: " + closed(words(p, names))));
		}
	}

	private static String words(Sentence sentence, Names names) {
		return sentence.pieces().stream().map(p -> piece(p, names)).collect(Collectors.joining());
	}

	private static String piece(Sentence.Piece piece, Names names) {
		if (piece instanceof Sentence.Words words) {
			return words.words();
		} else if (piece instanceof Sentence.Given given) {
			return given.most().map(most -> new Quantity(given.least().number(), org.setwright.trade.catalogue.Unit.NONE) + " to " + most)
					.orElse(given.least().toString());
		}
		return "[" + (piece instanceof Sentence.OfSetting of ? "what " + of.setting().label() + " comes to"
				: names.bound(((Sentence.Reading) piece).bound())) + "]";
	}

	private static String closed(String words) {
		return words.matches("(?s).*[.!?]") ? words : words + ".";
	}
}
