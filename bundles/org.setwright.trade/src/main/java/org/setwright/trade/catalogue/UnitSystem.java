package org.setwright.trade.catalogue;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.EnumMap;
import java.util.Map;

/** In which units quantities are shown to people: inch-pound (IP), metric (SI), or both side by side. */
public enum UnitSystem {
	IP, SI, BOTH;

	private static final int FIGURES = 3;
	private static final Map<Unit, Unit> IN_SI = new EnumMap<>(Map.of(Unit.FAHRENHEIT, Unit.CELSIUS, Unit.FAHRENHEIT_DEGREES,
			Unit.CELSIUS_DEGREES, Unit.BTU_PER_HOUR, Unit.KILOWATT, Unit.KBTU_PER_HOUR, Unit.KILOWATT, Unit.TON, Unit.KILOWATT,
			Unit.FOOT, Unit.METRE, Unit.SQUARE_FOOT, Unit.SQUARE_METRE, Unit.CUBIC_FOOT_PER_MINUTE, Unit.LITRE_PER_SECOND));
	private static final Map<Unit, Unit> IN_IP = new EnumMap<>(Map.of(Unit.CELSIUS, Unit.FAHRENHEIT, Unit.KELVIN, Unit.FAHRENHEIT,
			Unit.CELSIUS_DEGREES, Unit.FAHRENHEIT_DEGREES, Unit.KILOWATT, Unit.KBTU_PER_HOUR, Unit.WATT, Unit.BTU_PER_HOUR,
			Unit.METRE, Unit.FOOT, Unit.SQUARE_METRE, Unit.SQUARE_FOOT, Unit.LITRE_PER_SECOND, Unit.CUBIC_FOOT_PER_MINUTE,
			Unit.CUBIC_METRE_PER_HOUR, Unit.CUBIC_FOOT_PER_MINUTE));

	/** @return the unit in which a quantity usually given in {@code own} is shown; {@code own} itself in both */
	public Unit unit(Unit own) {
		return this == BOTH ? own : (this == IP ? IN_IP : IN_SI).getOrDefault(own, own);
	}

	/**
	 * @return {@code quantity} with its unit, never coarser than whole: to three figures in its own unit, with at most one
	 *         decimal from 1 upwards in one it is converted to; in both, its own unit comes first
	 */
	public String text(Quantity quantity) {
		return text(quantity, quantity);
	}

	/** @return the same for a range whose ends share a unit: "15 to 20 F° (8.3 to 11.1 C°)" */
	public String text(Quantity least, Quantity most) {
		Unit own = least.unit();
		Unit other = IN_SI.getOrDefault(own, IN_IP.getOrDefault(own, own));
		boolean converts = other != own && (this == BOTH || this == SI == IN_SI.containsKey(own));
		if (!converts) {
			return inUnit(least, most, own);
		}
		return this == BOTH ? inUnit(least, most, own) + " (" + inUnit(least, most, other) + ")" : inUnit(least, most, other);
	}

	private static String inUnit(Quantity least, Quantity most, Unit unit) {
		Quantity from = rounded(least.to(unit), unit == least.unit());
		Quantity to = rounded(most.to(unit), unit == least.unit());
		return from.equals(to) ? to.toString() : new Quantity(from.number(), Unit.NONE) + " to " + to;
	}

	private static Quantity rounded(Quantity quantity, boolean asWritten) {
		BigDecimal exact = BigDecimal.valueOf(quantity.number());
		int decimals = Math.max(0, FIGURES - Math.max(1, exact.precision() - exact.scale()));
		int most = asWritten || exact.abs().compareTo(BigDecimal.ONE) < 0 ? FIGURES - 1 : 1;
		return new Quantity(exact.setScale(Math.min(most, decimals), RoundingMode.HALF_UP).doubleValue() + 0.0, quantity.unit());
	}
}
