package org.setwright.picture;

import java.util.List;

/**
 * A derivation arranged from left to right. All lengths in pixels, from the top left corner.
 *
 * @param boxes one for each node, in the order of the derivation
 * @param lines one for each link, in the order of the derivation
 */
public record Picture(double width, double height, List<Box> boxes, List<Line> lines) {
	/** The height of one line of text of the usual size. */
	public static final double LINE_HEIGHT = 17;
	/** The room between a box's edge and its text. */
	public static final double PADDING = 9;

	public Picture {
		boxes = List.copyOf(boxes);
		lines = List.copyOf(lines);
	}

	/**
	 * A node with its place.
	 *
	 * @param words its text, line by line: first the sort, then the title, then what it says
	 * @param titleLines how many of them are the title
	 */
	public record Box(Node node, double x, double y, double width, double height, List<String> words, int titleLines) {
		public Box {
			words = List.copyOf(words);
		}

		/** @return from one line of its text to the next */
		public double lineHeight() {
			return words.isEmpty() ? LINE_HEIGHT : (height - 2 * PADDING) / words.size();
		}

		/** @return whether the point is inside */
		public boolean holds(double pointX, double pointY) {
			return pointX >= x && pointX <= x + width && pointY >= y && pointY <= y + height;
		}
	}

	/** A link with its bends; the last point is where the arrow stands. */
	public record Line(Derivation.Link link, List<Point> points) {
		public Line {
			points = List.copyOf(points);
		}
	}

	/** A point. */
	public record Point(double x, double y) {
	}

	/** Arranges {@code derivation}. @param measure how much room text takes where the picture is drawn */
	public static Picture of(Derivation derivation, TextMeasure measure) {
		List<Box> boxes = derivation.nodes().stream().map(n -> Sized.box(n, measure)).toList();
		return Arranged.leftToRight(boxes, derivation.links());
	}
}
