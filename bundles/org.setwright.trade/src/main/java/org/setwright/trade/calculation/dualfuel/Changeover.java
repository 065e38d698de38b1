package org.setwright.trade.calculation.dualfuel;

import java.util.OptionalDouble;
import java.util.stream.DoubleStream;

/**
 * Which heat to use at which outdoor temperature, by cost: the heat pump while its coefficient of performance is above
 * the break-even one.
 */
public sealed interface Changeover {

	/**
	 * The heat pump above, the burner below.
	 *
	 * @param fahrenheit outdoor temperature, in °F
	 * @param extrapolated whether it lies outside the ratings (17 to 47 °F), so that it must not be set unquestioned
	 */
	record At(double fahrenheit, boolean extrapolated) implements Changeover {
	}

	/** The heat pump's heat costs less, or the same, at any outdoor temperature. */
	record HeatPumpAlways() implements Changeover {
	}

	/** The burner's heat costs less at any outdoor temperature. */
	record BurnerAlways() implements Changeover {
	}

	/** @param breakEvenCop see {@link DeliveredHeat#breakEvenCop} @return where cost says to change over */
	static Changeover byCost(CopLine line, double breakEvenCop) {
		OptionalDouble where = line.fahrenheitFor(breakEvenCop);
		if (where.isPresent()) {
			return new At(where.getAsDouble(), CopLine.extrapolates(where.getAsDouble()));
		}
		return line.at17F() >= breakEvenCop ? new HeatPumpAlways() : new BurnerAlways();
	}

	/**
	 * The temperature to work with when heat pump and burner must not run together: the highest of the changeover by cost,
	 * the balance point, and the lowest temperature the compressor may run at; a limit that does not exist is empty.
	 * Common practice.
	 *
	 * @return in °F; empty when none of the three limits the heat pump
	 */
	static OptionalDouble workingFahrenheit(OptionalDouble byCost, OptionalDouble balancePoint,
			OptionalDouble compressorLowest) {
		return DoubleStream.concat(byCost.stream(), DoubleStream.concat(balancePoint.stream(), compressorLowest.stream()))
				.max();
	}
}
