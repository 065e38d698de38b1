package org.setwright.editions.compare;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.setwright.editions.written.WrittenRule;

/**
 * What became of one rule or row. Immutable.
 *
 * @param before empty when it is new
 * @param after empty when it is gone
 * @param aspects in what it differs; empty when it is new or gone, or is as it was
 */
public record RuleChange(Optional<WrittenRule> before, Optional<WrittenRule> after, Set<Aspect> aspects) {
	public RuleChange {
		aspects = aspects.isEmpty() ? Set.of() : Collections.unmodifiableSet(EnumSet.copyOf(aspects));
	}

	/** What became of it, in one word. */
	public enum Kind {
		ADDED("added"), REMOVED("removed"), CHANGED("changed"), WORDING("wording only"), MOVED("moved or renamed"), SAME("as it was");

		private final String words;

		Kind(String words) {
			this.words = words;
		}

		/** @return for people */
		public String words() {
			return words;
		}
	}

	static RuleChange of(Matching.Pair pair) {
		return new RuleChange(pair.before(), pair.after(), pair.before().isEmpty() || pair.after().isEmpty() ? Set.of()
				: between(pair.before().get(), pair.after().get()));
	}

	/** @return in what {@code after} differs from {@code before}, the same rule at two moments */
	public static Set<Aspect> between(WrittenRule before, WrittenRule after) {
		Set<Aspect> aspects = EnumSet.noneOf(Aspect.class);
		mark(aspects, Aspect.CONDITION, before.parts().when(), after.parts().when());
		mark(aspects, Aspect.OUTCOME, before.parts().then(), after.parts().then());
		mark(aspects, Aspect.AUTHORITY, before.parts().authority(), after.parts().authority());
		mark(aspects, Aspect.WORDING, before.parts().because() + "\n" + before.parts().source() + "\n" + before.parts().comments(),
				after.parts().because() + "\n" + after.parts().source() + "\n" + after.parts().comments());
		mark(aspects, Aspect.PLACE, before.file(), after.file());
		if (!before.isRow() && !after.isRow()) {
			mark(aspects, Aspect.NAME, before.name(), after.name());
			if (aspects.isEmpty()) {
				mark(aspects, Aspect.WORDING, layout(before), layout(after));
			}
		}
		return aspects;
	}

	private static String layout(WrittenRule rule) {
		return rule.text().replace("\r\n", "\n").replace('\r', '\n').replaceAll("[ \t]+\n", "\n");
	}

	private static void mark(Set<Aspect> aspects, Aspect aspect, String before, String after) {
		if (!before.equals(after)) {
			aspects.add(aspect);
		}
	}

	/** @return what became of it */
	public Kind kind() {
		if (before.isEmpty()) {
			return Kind.ADDED;
		} else if (after.isEmpty()) {
			return Kind.REMOVED;
		} else if (aspects.stream().anyMatch(Aspect::matters)) {
			return Kind.CHANGED;
		}
		return aspects.contains(Aspect.WORDING) ? Kind.WORDING : aspects.isEmpty() ? Kind.SAME : Kind.MOVED;
	}

	/** @return whether some job may come to something else by it */
	public boolean matters() {
		return kind() == Kind.ADDED || kind() == Kind.REMOVED || kind() == Kind.CHANGED;
	}

	/** @return the rule as it is now, or as it was when it is gone */
	public WrittenRule rule() {
		return after.or(() -> before).orElseThrow();
	}

	/** @return what is different, for example {@code condition and authority changed; renamed from "Old name"} */
	public String what() {
		if (before.isEmpty() || after.isEmpty()) {
			return kind().words();
		}
		List<String> parts = new ArrayList<>();
		String changed = aspects.stream().filter(a -> a.matters() || a == Aspect.WORDING).map(Aspect::words).collect(Collectors.joining(" and "));
		if (!changed.isEmpty()) {
			parts.add(kind() == Kind.WORDING ? "wording changed" : changed + " changed");
		}
		if (aspects.contains(Aspect.NAME)) {
			parts.add("renamed from " + before.get().shown());
		}
		if (aspects.contains(Aspect.PLACE)) {
			parts.add("moved from " + before.get().file());
		}
		return parts.isEmpty() ? kind().words() : String.join("; ", parts);
	}

	/** @return the rule and what became of it, in one line */
	public String shown() {
		return rule().shown() + ": " + what();
	}
}
