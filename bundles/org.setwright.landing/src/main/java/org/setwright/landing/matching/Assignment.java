package org.setwright.landing.matching;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.setwright.landing.need.Duty;
import org.setwright.landing.need.Need;
import org.setwright.landing.wall.Conductor;
import org.setwright.landing.wall.Fit;

/**
 * Which conductor serves which need.
 *
 * @param landed by need, the most important first
 * @param cost packed into one number, the lower the better; comparable only among plans of the same needs and number of
 *        conductors
 */
public record Assignment(Map<Need, Conductor> landed, double cost) {
	public Assignment {
		landed = Collections.unmodifiableMap(new LinkedHashMap<>(landed));
	}

	/** What an assignment has to weigh. */
	public interface Question {
		/** @return what landing costs; empty when it must never be */
		Optional<Fit> fit(Need need, Conductor conductor);

		/** @return what it weighs to leave {@code need} without a conductor of its own */
		int without(Need need);
	}

	/** @return how many conductors are looked at; those after it in {@link Conductor#ORDER} are left alone */
	public static int mostConductors() {
		return Weights.MOST_CONDUCTORS;
	}

	/**
	 * The best of all assignments, proved by the matching algorithm. A pair gets both its conductors or none: each way
	 * of granting and refusing pairs is solved, and the cheapest taken.
	 *
	 * @param needs the most important first
	 * @param conductors in {@link Conductor#ORDER}, at most {@link #mostConductors()}
	 */
	public static Assignment best(List<Need> needs, List<Conductor> conductors, Question question) {
		Weights weights = new Weights(needs, conductors.size());
		return grants(needs, conductors, question).map(granted -> solved(needs, conductors, granted, question, weights)).filter(a -> a.cost < weights.forbidden())
				.min(Comparator.comparingDouble(Assignment::cost)).orElseThrow();
	}

	/** @return every set of pairs that might be granted; one for which there are not enough conductors never is */
	private static Stream<List<Duty>> grants(List<Need> needs, List<Conductor> conductors, Question question) {
		List<Duty> pairs = needs.stream().filter(n -> n.of() > 1)
				.filter(n -> conductors.stream().filter(c -> question.fit(n, c).isPresent()).count() >= n.of()).map(Need::duty).distinct().toList();
		return IntStream.range(0, 1 << pairs.size())
				.mapToObj(mask -> IntStream.range(0, pairs.size()).filter(i -> (mask >> i & 1) == 1).mapToObj(pairs::get).toList());
	}

	private static Assignment solved(List<Need> needs, List<Conductor> conductors, List<Duty> granted, Question question, Weights weights) {
		double[][] costs = new double[needs.size()][conductors.size() + 1];
		for (int i = 0; i < needs.size(); i++) {
			Need need = needs.get(i);
			boolean refused = need.of() > 1 && !granted.contains(need.duty());
			for (int j = 0; j < conductors.size(); j++) {
				int index = i;
				int rank = j;
				costs[i][j] = refused ? weights.forbidden()
						: question.fit(need, conductors.get(j)).map(fit -> weights.landed(index, rank, fit)).orElse(weights.forbidden());
			}
			costs[i][conductors.size()] = need.of() > 1 && !refused ? weights.forbidden() : weights.without(question.without(need));
		}
		int[] chosen = Cheapest.columns(costs, weights.forbidden());
		return assignment(needs, conductors, costs, chosen);
	}

	private static Assignment assignment(List<Need> needs, List<Conductor> conductors, double[][] costs, int[] chosen) {
		Map<Need, Conductor> landed = new LinkedHashMap<>();
		List<Double> parts = new ArrayList<>();
		for (int i = 0; i < chosen.length; i++) {
			parts.add(costs[i][chosen[i]]);
			if (chosen[i] < conductors.size()) {
				landed.put(needs.get(i), conductors.get(chosen[i]));
			}
		}
		return new Assignment(landed, parts.stream().mapToDouble(Double::doubleValue).sum());
	}
}
