package org.setwright.book;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/** How much of a book its own jobs must at least try out, for the book to be fit to go out. @param shares from 0 to 1 */
public record Floors(Map<Figure, Double> shares) {
	/** Demands nothing. */
	public static final Floors NONE = new Floors(Map.of());

	public Floors {
		Map<Figure, Double> sorted = new EnumMap<>(Figure.class);
		sorted.putAll(shares);
		shares = Collections.unmodifiableMap(sorted);
	}

	/** What can be demanded. */
	public enum Figure {
		/** Rules, table rows included, that spoke on some job. */
		RULES_SPOKEN("rules spoken"),
		/** Rules that decided a setting, raised a caution or made a finding on some job. */
		RULES_DECIDING("rules deciding"),
		/** Conditions that held on some job and failed on another. */
		CONDITIONS_BOTH_WAYS("conditions both ways"),
		/** Deliberate mistakes that some job notices. */
		MISTAKES_CAUGHT("mistakes caught");

		private final String words;

		Figure(String words) {
			this.words = words;
		}

		/** @return its name in {@code book.yaml} and for people */
		public String words() {
			return words;
		}
	}

	/** @return the least share of {@code figure}, or empty when nothing is demanded */
	public Optional<Double> of(Figure figure) {
		return Optional.ofNullable(shares.get(figure));
	}
}
