package org.setwright.trade.calculation;

import java.util.SplittableRandom;
import java.util.function.Consumer;

/** Random inputs for property tests; a failure says which seed and which inputs made it fail. */
public final class Inputs {
	private static final int ROUNDS = 1000;

	private final SplittableRandom random;
	private final StringBuilder drawn = new StringBuilder();

	private Inputs(long seed) {
		random = new SplittableRandom(seed);
	}

	/** Runs {@code property} on many inputs, each round with a seed of its own from {@code seed} on. */
	public static void forMany(long seed, Consumer<Inputs> property) {
		for (int round = 0; round < ROUNDS; round++) {
			Inputs inputs = new Inputs(seed + round);
			try {
				property.accept(inputs);
			} catch (AssertionError | RuntimeException e) {
				throw new AssertionError("fails with seed " + (seed + round) + ", inputs " + inputs.drawn + ": " + e, e);
			}
		}
	}

	/** @return a number from {@code least} to {@code most} */
	public double number(String name, double least, double most) {
		return drawn(name, least + (most - least) * random.nextDouble());
	}

	/** @return a whole number from {@code least} to {@code most}, both possible */
	public int whole(String name, int least, int most) {
		return drawn(name, least + random.nextInt(most - least + 1));
	}

	/** @return one of {@code choices} */
	@SafeVarargs
	public final <T> T oneOf(String name, T... choices) {
		return drawn(name, choices[random.nextInt(choices.length)]);
	}

	private <T> T drawn(String name, T value) {
		drawn.append(drawn.isEmpty() ? "" : ", ").append(name).append(" = ").append(value);
		return value;
	}
}
