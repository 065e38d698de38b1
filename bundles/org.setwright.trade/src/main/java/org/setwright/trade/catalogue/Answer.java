package org.setwright.trade.catalogue;

import java.util.Objects;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;

/**
 * The answer to one question about a job: a value somebody looked up, or <em>unknown</em>.
 * Unknown is a value of its own: it never turns into false, zero or a default. There is therefore
 * deliberately no way to ask for a value "or else" something.
 *
 * @param <T> what a known answer holds; never null
 */
public sealed interface Answer<T> {

	/** A known answer. @param stated never null */
	record Known<T>(T stated) implements Answer<T> {
		public Known {
			Objects.requireNonNull(stated, "a known answer holds a value");
		}

		@Override
		public String toString() {
			return stated.toString();
		}
	}

	/** Nobody has looked it up yet. */
	record Unknown<T>() implements Answer<T> {
		@Override
		public String toString() {
			return "unknown";
		}
	}

	/** @return the known answer holding {@code value} (not null) */
	static <T> Answer<T> of(T value) {
		return new Known<>(value);
	}

	/** @return the unknown answer */
	static <T> Answer<T> unknown() {
		return new Unknown<>();
	}

	/** @return whether somebody has looked it up */
	default boolean isKnown() {
		return this instanceof Known;
	}

	/** @return the value, or empty when unknown */
	default Optional<T> value() {
		return this instanceof Known<T> known ? Optional.of(known.stated()) : Optional.empty();
	}

	/** @return the answer computed from this one; unknown stays unknown */
	default <R> Answer<R> map(Function<? super T, ? extends R> compute) {
		return this instanceof Known<T> known ? of(compute.apply(known.stated())) : unknown();
	}

	/** @return the answer another question gives from this one; unknown stays unknown */
	default <R> Answer<R> then(Function<? super T, Answer<R>> compute) {
		return this instanceof Known<T> known ? compute.apply(known.stated()) : unknown();
	}

	/** @return the answer computed from two; unknown when either is unknown */
	static <A, B, R> Answer<R> both(Answer<A> a, Answer<B> b, BiFunction<? super A, ? super B, ? extends R> compute) {
		return a.then(x -> b.map(y -> compute.apply(x, y)));
	}
}
