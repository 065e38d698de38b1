package org.setwright.trade.calculation.heatpump;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;
import org.setwright.trade.calculation.Range;

/**
 * The outdoor temperature below which a heat pump alone cannot keep up: where its capacity line crosses the building's
 * load line. Solved exactly, piece by piece. Source: the definition; general heating practice.
 */
public final class BalancePoint {
	private BalancePoint() {
	}

	/**
	 * @return the highest outdoor temperature, in °F, just below which capacity is less than load; empty when the heat
	 *         pump keeps up down to -80 °F. Whether it rests on figures outside the rating points says
	 *         {@link HeatingCapacity#extrapolates}.
	 */
	public static OptionalDouble fahrenheit(HeatingCapacity capacity, LoadLine load) {
		List<Double> ends = DoubleStream
				.of(load.zeroFahrenheit(), HeatingCapacity.FROST_ENDS_FAHRENHEIT, HeatingCapacity.COLD_FAHRENHEIT,
						Range.OUTDOOR_FAHRENHEIT.least())
				.filter(t -> t <= load.zeroFahrenheit()).boxed().toList();
		for (int i = 1; i < ends.size(); i++) {
			OptionalDouble crossing = crossing(capacity, load, ends.get(i - 1), ends.get(i));
			if (crossing.isPresent()) {
				return crossing;
			}
		}
		return OptionalDouble.empty();
	}

	/** Looks within one piece, from {@code warm} down to {@code cold}, on which the surplus is a straight line. */
	private static OptionalDouble crossing(HeatingCapacity capacity, LoadLine load, double warm, double cold) {
		DoubleUnaryOperator line = capacity.lineAt((warm + cold) / 2);
		double surplusWarm = line.applyAsDouble(warm) - load.extended(warm);
		double surplusCold = line.applyAsDouble(cold) - load.extended(cold);
		if (surplusWarm < 0) {
			return OptionalDouble.of(warm);
		}
		return surplusCold >= 0 ? OptionalDouble.empty()
				: OptionalDouble.of(warm - (warm - cold) * surplusWarm / (surplusWarm - surplusCold));
	}
}
