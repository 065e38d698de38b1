package org.setwright.editions.compare;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiPredicate;
import java.util.function.Function;
import org.setwright.editions.written.WrittenRule;

/**
 * Finds every rule of one edition again in another, through renames and moves: first what is the same in name and content, then
 * what kept its name, then what kept its content, then what is most alike. A row of a table has no name of its own; it is known
 * by its table and its conditions.
 */
final class Matching {
	private static final double STILL_THE_SAME = 0.3;
	private static final double ALIKE = 0.6;
	private static final double ROWS_ALIKE = 0.5;
	private static final double ROWS_ALIKE_ELSEWHERE = 0.75;

	private final List<WrittenRule> before;
	private final List<WrittenRule> after;
	private final Map<WrittenRule, WrittenRule> afterOf = new LinkedHashMap<>();

	private Matching(List<WrittenRule> before, List<WrittenRule> after) {
		this.before = new ArrayList<>(before);
		this.after = new ArrayList<>(after);
	}

	/** A rule before and after; at least one is there. */
	record Pair(Optional<WrittenRule> before, Optional<WrittenRule> after) {
	}

	/**
	 * @param known names for rules that were followed through the editions between; may be empty
	 * @return pairs in the order of {@code after}, then what is gone
	 */
	static List<Pair> of(List<WrittenRule> before, List<WrittenRule> after, Map<WrittenRule, String> knownBefore, Map<WrittenRule, String> knownAfter) {
		Matching matching = new Matching(before, after);
		matching.known(knownBefore, knownAfter);
		matching.match();
		Map<WrittenRule, WrittenRule> beforeOf = new HashMap<>();
		matching.afterOf.forEach((was, is) -> beforeOf.put(is, was));
		List<Pair> pairs = new ArrayList<>();
		after.forEach(a -> pairs.add(new Pair(Optional.ofNullable(beforeOf.get(a)), Optional.of(a))));
		before.stream().filter(b -> !matching.afterOf.containsKey(b)).forEach(b -> pairs.add(new Pair(Optional.of(b), Optional.empty())));
		return pairs;
	}

	private void known(Map<WrittenRule, String> knownBefore, Map<WrittenRule, String> knownAfter) {
		Map<String, WrittenRule> byName = new HashMap<>();
		after.forEach(r -> Optional.ofNullable(knownAfter.get(r)).ifPresent(name -> byName.putIfAbsent(name, r)));
		for (WrittenRule rule : List.copyOf(before)) {
			WrittenRule partner = knownBefore.containsKey(rule) ? byName.remove(knownBefore.get(rule)) : null;
			if (partner != null) {
				pair(rule, partner);
			}
		}
	}

	private void match() {
		same(r -> r);
		same(r -> r.isRow() ? null : List.of(r.name(), r.parts().when(), r.parts().then()));
		same(r -> r.isRow() ? List.of(r.file(), r.parts()) : null);
		same(r -> r.isRow() ? List.of(r.file(), r.parts().when()) : null);
		alike((b, a) -> !b.isRow() && !a.isRow() && b.name().equals(a.name()), STILL_THE_SAME);
		same(r -> r.isRow() ? null : List.of(r.parts().when(), r.parts().then()));
		same(r -> r.isRow() ? null : r.name());
		alike((b, a) -> !b.isRow() && !a.isRow() && Likeness.toldAlike(b, a), ALIKE);
		alike((b, a) -> b.isRow() && a.isRow() && b.file().equals(a.file()), ROWS_ALIKE);
		same(r -> r.isRow() ? r.parts() : null);
		alike((b, a) -> b.isRow() && a.isRow(), ROWS_ALIKE_ELSEWHERE);
	}

	/** Pairs what has the same key, in file order; a key of null has no partner. */
	private void same(Function<WrittenRule, Object> key) {
		Map<Object, List<WrittenRule>> byKey = new HashMap<>();
		for (WrittenRule rule : after) {
			Object own = key.apply(rule);
			if (own != null) {
				byKey.computeIfAbsent(own, x -> new ArrayList<>()).add(rule);
			}
		}
		for (WrittenRule rule : List.copyOf(before)) {
			Object own = key.apply(rule);
			List<WrittenRule> partners = own == null ? null : byKey.get(own);
			if (partners != null && !partners.isEmpty()) {
				pair(rule, partners.remove(0));
			}
		}
	}

	private record Likely(WrittenRule before, WrittenRule after, double likeness) {
	}

	private void alike(BiPredicate<WrittenRule, WrittenRule> may, double least) {
		List<Likely> likely = new ArrayList<>();
		for (WrittenRule was : before) {
			for (WrittenRule is : after) {
				double likeness = may.test(was, is) ? Likeness.of(was, is) : 0;
				if (likeness >= least) {
					likely.add(new Likely(was, is, likeness));
				}
			}
		}
		likely.sort(Comparator.comparingDouble(Likely::likeness).reversed());
		for (Likely one : likely) {
			if (before.contains(one.before()) && after.contains(one.after())) {
				pair(one.before(), one.after());
			}
		}
	}

	private void pair(WrittenRule was, WrittenRule is) {
		afterOf.put(was, is);
		before.remove(was);
		after.remove(is);
	}
}
