package org.setwright.landing.matching;

import java.util.List;
import org.setwright.landing.need.Need;
import org.setwright.landing.wall.Fit;

/**
 * Packs costs of which the first always outweighs the next into one whole number: what is left without a conductor, what
 * is changed, what is in doubt, what goes against the custom of colours, and last the order of the lists, so that there
 * is always exactly one best plan. Every sum stays below 2^53, so that arithmetic in doubles is exact.
 */
final class Weights {
	/** No wall holds more; what is beyond is left alone and the plan says so. */
	static final int MOST_CONDUCTORS = 60;
	private static final double EXACT = 9.007199254740992E15;

	private final int needs;
	private final double order;
	private final double colour;
	private final double doubt;
	private final double service;
	private final double forbidden;

	/** @param all the needs, the most important first @param conductors how many there are, up to {@link #MOST_CONDUCTORS} */
	Weights(List<Need> all, int conductors) {
		needs = all.size();
		order = (double) needs * needs * Math.max(1, conductors) + 1;
		colour = order * (needs * Fit.WORST.colour() + 1);
		doubt = colour * (needs * Fit.WORST.doubt() + 1);
		service = doubt * (needs * Fit.WORST.change() + 1);
		forbidden = service * (all.stream().mapToInt(Need::weight).sum() + 1);
		if (conductors > MOST_CONDUCTORS || 2 * forbidden > EXACT) {
			throw new IllegalArgumentException("more needs and conductors than can be weighed exactly");
		}
	}

	/** @param index of the need, from 0, the most important first @param rank of the conductor in its order, from 0 */
	double landed(int index, int rank, Fit fit) {
		return fit.change() * doubt + fit.doubt() * colour + fit.colour() * order + (double) (needs - index) * (rank + 1);
	}

	/** @param weight of a need as it is left without a conductor */
	double without(int weight) {
		return weight * service;
	}

	/** @return more than any plan costs without it */
	double forbidden() {
		return forbidden;
	}
}
