package org.setwright.engine.language;

import java.util.Map;
import java.util.Optional;

/** Words of the wider language that a rule book does not use, and what to write instead. */
final class Vocabulary {
	private static final String ORDER = "Rules only propose, so their order does not matter: delete it, and give the rule the authority it deserves.";
	private static final String CODE = "A rule cannot run program code: write only patterns on facts, such as OutdoorUnit( stages == 2 ).";
	private static final String CHANGE = "Rules never change facts: write propose( SETTING, value ); or find( NAME );.";
	private static final String COUNT = "Write not, exists, or two patterns instead, or use a calculated fact of the catalogue.";
	private static final String HEAD = "Delete this line: rules know every fact and setting of the catalogue without it.";

	private static final Map<String, String> REFUSED = Map.ofEntries(Map.entry("salience", ORDER),
			Map.entry("agenda", ORDER), Map.entry("ruleflow", ORDER), Map.entry("activation", ORDER),
			Map.entry("lock", ORDER), Map.entry("no", ORDER), Map.entry("auto", ORDER), Map.entry("enabled", ORDER),
			Map.entry("duration", ORDER), Map.entry("timer", ORDER), Map.entry("calendars", ORDER),
			Map.entry("date", ORDER), Map.entry("dialect", HEAD), Map.entry("extends", ORDER),
			Map.entry("package", HEAD), Map.entry("import", HEAD), Map.entry("global", HEAD), Map.entry("unit", HEAD),
			Map.entry("function", CODE), Map.entry("query", CODE), Map.entry("declare", HEAD),
			Map.entry("eval", CODE), Map.entry("new", CODE), Map.entry("System", CODE), Map.entry("Runtime", CODE),
			Map.entry("while", CODE), Map.entry("for", CODE), Map.entry("do", CODE), Map.entry("if", CODE),
			Map.entry("from", COUNT), Map.entry("accumulate", COUNT), Map.entry("acc", COUNT),
			Map.entry("collect", COUNT), Map.entry("forall", COUNT), Map.entry("over", COUNT),
			Map.entry("contains", "Write == or in ( ... )."), Map.entry("memberOf", "Write in ( ... )."),
			Map.entry("str", "Write matches \"...\"."), Map.entry("soundslike", "Write matches \"...\"."),
			Map.entry("insert", CHANGE), Map.entry("insertLogical", CHANGE), Map.entry("update", CHANGE),
			Map.entry("modify", CHANGE), Map.entry("retract", CHANGE), Map.entry("delete", CHANGE),
			Map.entry("set", CHANGE));

	private Vocabulary() {
	}

	/** @return what to do about {@code word}, when it belongs to the wider language */
	static Optional<String> remedyFor(String word) {
		return Optional.ofNullable(REFUSED.get(word));
	}
}
