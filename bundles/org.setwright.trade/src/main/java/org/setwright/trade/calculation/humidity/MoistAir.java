package org.setwright.trade.calculation.humidity;

import org.setwright.trade.calculation.Range;

/**
 * Water vapour in air: saturation pressure and dew point.
 * <p>
 * Source: Hyland and Wexler 1983, as ASHRAE Handbook Fundamentals 2017, chapter 1, equations 5 (over ice) and 6 (over
 * water), coefficients from memory and checked against that chapter's table 3. The dew point is solved from the same
 * equations, so that both agree.
 */
public final class MoistAir {
	private static final Range TEMPERATURE = new Range("air temperature", -100, 200, "°C");
	private static final Range FAHRENHEIT = new Range("air temperature", -148, 392, "°F");
	private static final Range HUMIDITY = new Range("relative humidity", 0.1, 100, "%");
	private static final double TRIPLE_POINT_CELSIUS = 0.01;
	private static final double PASCALS_PER_PSI = 6894.757293168361;
	private static final int HALVINGS = 60;

	private MoistAir() {
	}

	/** @param celsius -100 to 200 °C @return pressure of saturated water vapour, over ice below 0.01 °C, in Pa */
	public static double saturationPascals(double celsius) {
		double t = TEMPERATURE.check(celsius) + 273.15;
		return Math.exp(celsius < TRIPLE_POINT_CELSIUS ? overIce(t) : overWater(t));
	}

	/** @param fahrenheit -148 to 392 °F @return pressure of saturated water vapour, in psi absolute */
	public static double saturationPsi(double fahrenheit) {
		return saturationPascals(toCelsius(FAHRENHEIT.check(fahrenheit))) / PASCALS_PER_PSI;
	}

	/**
	 * @param celsius air temperature, -50 to 200 °C
	 * @param percentHumidity relative humidity, 0.1 to 100 %
	 * @return dew point (frost point below freezing), in °C
	 */
	public static double dewPointCelsius(double celsius, double percentHumidity) {
		new Range("air temperature", -50, 200, "°C").check(celsius);
		double vapour = HUMIDITY.check(percentHumidity) / 100 * saturationPascals(celsius);
		double low = TEMPERATURE.least();
		double high = celsius;
		for (int i = 0; i < HALVINGS; i++) {
			double middle = (low + high) / 2;
			if (saturationPascals(middle) < vapour) {
				low = middle;
			} else {
				high = middle;
			}
		}
		return high;
	}

	/** @param fahrenheit air temperature, -58 to 392 °F @param percentHumidity 0.1 to 100 % @return dew point, in °F */
	public static double dewPointFahrenheit(double fahrenheit, double percentHumidity) {
		return dewPointCelsius(toCelsius(fahrenheit), percentHumidity) * 9 / 5 + 32;
	}

	private static double toCelsius(double fahrenheit) {
		return (fahrenheit - 32) * 5 / 9;
	}

	private static double overIce(double t) {
		return -5.6745359e3 / t + 6.3925247 + t * (-9.6778430e-3 + t * (6.2215701e-7 + t * (2.0747825e-9 + t * -9.4840240e-13)))
				+ 4.1635019 * Math.log(t);
	}

	private static double overWater(double t) {
		return -5.8002206e3 / t + 1.3914993 + t * (-4.8640239e-2 + t * (4.1764768e-5 + t * -1.4452093e-8))
				+ 6.5459673 * Math.log(t);
	}
}
