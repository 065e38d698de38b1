package org.setwright.check.fitness;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.setwright.book.Floors;
import org.setwright.book.Floors.Figure;
import org.setwright.check.coverage.Coverage;
import org.setwright.check.strength.Strength;

/**
 * What a book reaches in one figure.
 *
 * @param share from 0 to 1
 * @param least what the book demands; empty when nothing
 */
public record Reached(Figure figure, double share, Optional<Double> least) {

	/** @return every figure that can be told, in the order of {@link Figure} */
	public static List<Reached> of(Floors floors, Coverage coverage, Optional<Strength> strength) {
		List<Reached> reached = new ArrayList<>();
		for (Figure figure : Figure.values()) {
			Optional<Double> share = figure == Figure.MISTAKES_CAUGHT ? strength.map(Strength::share) : coverage.share(figure);
			share.ifPresent(s -> reached.add(new Reached(figure, s, floors.of(figure))));
		}
		return reached;
	}

	/** @return whether it is not below what is demanded */
	public boolean enough() {
		return least.map(l -> share >= l).orElse(true);
	}

	/** @return for people: "rules spoken 97.1 %, at least 100 % demanded" */
	public String sentence() {
		return figure.words() + " " + percent(share) + least.map(l -> ", at least " + percent(l) + " demanded").orElse("");
	}

	/** Never rounded up to 100. @return for example "97.1 %" */
	public static String percent(double share) {
		double tenths = Math.floor(share * 1000 + 1e-9);
		return (tenths % 10 == 0 ? String.format(Locale.ROOT, "%.0f", tenths / 10) : String.format(Locale.ROOT, "%.1f", tenths / 10)) + " %";
	}
}
