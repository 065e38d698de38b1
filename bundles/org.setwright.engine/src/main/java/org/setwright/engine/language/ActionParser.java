package org.setwright.engine.language;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.setwright.book.Position;
import org.setwright.book.ShopSettings;
import org.setwright.engine.language.TokenReader.Lost;
import org.setwright.trade.catalogue.Catalogue;
import org.setwright.trade.catalogue.CautionKind;
import org.setwright.trade.catalogue.Choice;
import org.setwright.trade.catalogue.Setting;
import org.setwright.trade.catalogue.StartUpPhase;

/** Reads what a rule says: propose, find, caution and startUp, and nothing else. */
final class ActionParser {
	private static final String HOW = "A rule only says propose( SETTING, value );, find( NAME );, caution( KIND, \"sentence\" ); or startUp( PHASE, \"call for\", \"see\", \"if not\" );.";
	private static final String CHECK = "Write startUp( COOLING, \"what to call for\", \"what to see\", \"what it means if not\" );, with what to wait for as a fifth text.";

	private final TokenReader in;
	private final Catalogue catalogue;
	private final OperandParser operands;
	private final SentenceParser sentences;
	private final List<Condition> when;

	/** @param when the rule's conditions */
	ActionParser(TokenReader in, Catalogue catalogue, List<Condition> when) {
		this.when = when;
		this.in = in;
		this.catalogue = catalogue;
		operands = new OperandParser(in);
		sentences = new SentenceParser(in, catalogue, operands);
	}

	/** Reads actions until the word end, which is not taken. */
	List<Action> untilEnd(Scope scope) throws Lost {
		List<Action> actions = new ArrayList<>();
		while (!in.sees("end")) {
			if (in.atRule() || in.sees(Token.Kind.END)) {
				in.loseFor("\nend", "The rule before has no end.", "Write end on a line of its own before this.");
			}
			one(scope).ifPresent(actions::add);
			in.expect(";", "Close the sentence with a semicolon.");
		}
		return actions;
	}

	private Optional<Action> one(Scope scope) throws Lost {
		Token word = in.next();
		boolean opens = in.sees("(");
		Position at = in.position(word);
		if (opens && word.is("propose")) {
			in.next();
			return propose(at, scope);
		} else if (opens && word.is("find")) {
			in.next();
			Token name = in.expect(Token.Kind.WORD, "the name of a finding", "Write find( DUAL_FUEL_JOB );.");
			in.expect(")", "Write find( DUAL_FUEL_JOB );.");
			return Optional.of(new Action.Find(name.text(), at));
		} else if (opens && word.is("caution")) {
			in.next();
			return caution(at);
		} else if (opens && word.is("startUp")) {
			in.next();
			return startUp(at, scope);
		}
		return in.lose(word, "\"" + word.text() + (in.sees(".") || opens ? in.peek().text() : "")
				+ "\" is not something a rule can do, so nothing of it runs.",
				Vocabulary.remedyFor(word.text()).map(r -> r + " ").orElse("") + HOW);
	}

	private Optional<Action> propose(Position at, Scope scope) throws Lost {
		String how = "Write propose( SETTING, value );.";
		Token id = in.expect(Token.Kind.WORD, "a setting", how);
		Optional<Setting> setting = catalogue.setting(id.text());
		if (setting.isEmpty()) {
			in.unknownWord(id, "There is no setting \"" + id.text() + "\".",
					catalogue.settings().stream().map(Setting::id).toList(),
					"Look it up in the catalogue, or describe it in " + ShopSettings.FILE + " as a setting of the shop's own.");
			throw new Lost();
		}
		in.expect(",", how);
		Token written = in.peek();
		Optional<Operand> value = operands.read(setting.get().domain(), setting.get().label(), scope);
		if (value.isPresent() && value.get() instanceof Operand.Bound bound
				&& !BoundLimits.of(bound, when).within(setting.get().domain())) {
			in.fault(written, bound.field().label() + " can be more than " + setting.get().label() + " allows.",
					"Let the pattern that binds it test its limits too; allowed is " + setting.get().domain().allowed() + ".");
		}
		in.expect(")", how);
		return value.map(v -> new Action.Propose(setting.get(), v, at));
	}

	private Optional<Action> caution(Position at) throws Lost {
		String how = "Write caution( CHECK_AT_START_UP, \"what to check\" );.";
		Token word = in.expect(Token.Kind.WORD, "how serious it is", how);
		Optional<CautionKind> kind = Choice.named(CautionKind.class, word.text());
		if (kind.isEmpty()) {
			in.unknownWord(word, "There is no caution of the kind \"" + word.text() + "\".",
					Arrays.stream(CautionKind.values()).map(CautionKind::name).toList());
		}
		in.expect(",", how);
		Token sentence = in.expect(Token.Kind.QUOTED, "the sentence in quotes", how);
		if (sentence.text().isBlank()) {
			in.fault(sentence, "An empty caution warns nobody.", "Say what can happen and what to do.");
		}
		in.expect(")", how);
		return kind.map(k -> new Action.Warn(k, sentence.text(), at));
	}

	private Optional<Action> startUp(Position at, Scope scope) throws Lost {
		Token word = in.expect(Token.Kind.WORD, "the part of the start-up", CHECK);
		Optional<StartUpPhase> phase = Choice.named(StartUpPhase.class, word.text());
		if (phase.isEmpty()) {
			in.unknownWord(word, "There is no part of the start-up \"" + word.text() + "\".",
					Arrays.stream(StartUpPhase.values()).map(StartUpPhase::name).toList());
		}
		Sentence callFor = sentence("what to call for", scope);
		Sentence see = sentence("what to see", scope);
		Sentence ifNot = sentence("what it means if not", scope);
		Optional<Sentence> wait = in.sees(",") ? Optional.of(sentence("what to wait for", scope)) : Optional.empty();
		in.expect(")", CHECK);
		return Optional.of(new Action.StartUp(phase.orElse(StartUpPhase.HAND_OVER), callFor, see, ifNot, wait, at));
	}

	private Sentence sentence(String purpose, Scope scope) throws Lost {
		in.expect(",", CHECK);
		return sentences.read(in.expect(Token.Kind.QUOTED, "in quotes " + purpose, CHECK), purpose, scope);
	}
}
