package org.setwright.engine.throughput;

import java.util.Arrays;
import java.util.Locale;
import java.util.stream.DoubleStream;

/** Figures of several rounds. @param low the least @param high the most */
record Spread(double low, double median, double high) {
	static Spread of(DoubleStream figures) {
		double[] sorted = figures.sorted().toArray();
		if (sorted.length == 0) {
			throw new IllegalArgumentException("no figures: " + Arrays.toString(sorted));
		}
		int middle = sorted.length / 2;
		double median = sorted.length % 2 == 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
		return new Spread(sorted[0], median, sorted[sorted.length - 1]);
	}

	/** @return the median, with the least and the most in brackets */
	String text(String format) {
		return String.format(Locale.ROOT, format + " (" + format + " to " + format + ")", median, low, high);
	}
}
