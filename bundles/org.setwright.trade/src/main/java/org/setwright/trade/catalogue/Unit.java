package org.setwright.trade.catalogue;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The units a job sheet uses. Each converts to its dimension's base unit by {@code base = (value + offset) * factor};
 * factors are exact where the definition is exact (international foot, International Table Btu = 1055.05585262 J, NIST
 * SP 811 appendix B).
 */
public enum Unit {
	NONE(Dimension.NONE, "", 1),
	KELVIN(Dimension.TEMPERATURE, "K", 1),
	CELSIUS(Dimension.TEMPERATURE, "°C", 1, 273.15, "C", "degC"),
	FAHRENHEIT(Dimension.TEMPERATURE, "°F", 5 / 9.0, 459.67, "F", "degF"),
	CELSIUS_DEGREES(Dimension.TEMPERATURE_DIFFERENCE, "C°", 1, 0, "K", "°C", "C"),
	FAHRENHEIT_DEGREES(Dimension.TEMPERATURE_DIFFERENCE, "F°", 5 / 9.0, 0, "°F", "F"),
	WATT(Dimension.HEAT_FLOW, "W", 1),
	KILOWATT(Dimension.HEAT_FLOW, "kW", 1000),
	BTU_PER_HOUR(Dimension.HEAT_FLOW, "Btu/h", 1055.05585262 / 3600, 0, "Btuh", "BTUH"),
	KBTU_PER_HOUR(Dimension.HEAT_FLOW, "kBtu/h", 1055.05585262 / 3.6, 0, "MBH"),
	TON(Dimension.HEAT_FLOW, "ton", 12000 * 1055.05585262 / 3600, 0, "tons"),
	VOLT_AMPERE(Dimension.APPARENT_POWER, "VA", 1),
	VOLT(Dimension.VOLTAGE, "V", 1),
	AMPERE(Dimension.CURRENT, "A", 1),
	METRE(Dimension.LENGTH, "m", 1),
	FOOT(Dimension.LENGTH, "ft", 0.3048),
	SQUARE_METRE(Dimension.AREA, "m2", 1, 0, "m²"),
	SQUARE_FOOT(Dimension.AREA, "ft2", 0.3048 * 0.3048, 0, "ft²", "sq ft"),
	LITRE_PER_SECOND(Dimension.AIRFLOW, "L/s", 1, 0, "l/s"),
	CUBIC_FOOT_PER_MINUTE(Dimension.AIRFLOW, "cfm", 28.316846592 / 60),
	CUBIC_METRE_PER_HOUR(Dimension.AIRFLOW, "m3/h", 1000 / 3600.0, 0, "m³/h"),
	SECOND(Dimension.DURATION, "s", 1),
	MINUTE(Dimension.DURATION, "min", 60),
	HOUR(Dimension.DURATION, "h", 3600),
	DAY(Dimension.DURATION, "days", 86400, 0, "day", "d"),
	PERCENT(Dimension.SHARE, "%", 1),
	PER_HOUR(Dimension.CYCLE_RATE, "per hour", 1, 0, "/h", "cycles per hour"),
	AWG(Dimension.WIRE_GAUGE, "AWG", 1);

	private final Dimension dimension;
	private final String symbol;
	private final double factor;
	private final double offset;
	private final List<String> otherSpellings;

	Unit(Dimension dimension, String symbol, double factor) {
		this(dimension, symbol, factor, 0);
	}

	Unit(Dimension dimension, String symbol, double factor, double offset, String... otherSpellings) {
		this.dimension = dimension;
		this.symbol = symbol;
		this.factor = factor;
		this.offset = offset;
		this.otherSpellings = List.of(otherSpellings);
	}

	/** @return what this unit measures */
	public Dimension dimension() {
		return dimension;
	}

	/** @return how it is written after a number; empty for a plain number */
	public String symbol() {
		return symbol;
	}

	/** @return every way to write it after a number that is read, the usual one first; any case */
	public List<String> spellings() {
		return Stream.concat(Stream.of(symbol), otherSpellings.stream()).toList();
	}

	/** @param value in this unit @return the same in the dimension's base unit */
	public double toBase(double value) {
		return (value + offset) * factor;
	}

	/** @param base in the dimension's base unit @return the same in this unit */
	public double fromBase(double base) {
		return base / factor - offset;
	}

	/** @return the units that measure {@code dimension}, in declaration order */
	public static List<Unit> measuring(Dimension dimension) {
		return Arrays.stream(values()).filter(u -> u.dimension == dimension).toList();
	}

	/** @return the unit of {@code dimension} written {@code text} (any usual spelling), or empty */
	public static Optional<Unit> written(String text, Dimension dimension) {
		String wanted = text.strip();
		return measuring(dimension).stream()
				.filter(u -> u.symbol.equalsIgnoreCase(wanted) || u.otherSpellings.stream().anyMatch(wanted::equalsIgnoreCase))
				.findFirst();
	}
}
