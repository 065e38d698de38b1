package org.setwright.picture;

import java.util.List;
import org.setwright.picture.Picture.Box;
import org.setwright.picture.Picture.Point;

/** The shape of each sort of box: told apart by its outline, not by colour. */
public final class Outlines {
	private static final double SLANT = 10;

	private Outlines() {
	}

	/** @return the corners of {@code box}, clockwise from the top left */
	public static List<Point> of(Box box) {
		double left = box.x();
		double top = box.y();
		double right = left + box.width();
		double bottom = top + box.height();
		double middle = (top + bottom) / 2;
		return switch (box.node().sort()) {
			case ANSWER, SETTING -> List.of(new Point(left, top), new Point(right, top), new Point(right, bottom), new Point(left, bottom));
			case CALCULATED -> List.of(new Point(left + SLANT, top), new Point(right - SLANT, top), new Point(right, middle),
					new Point(right - SLANT, bottom), new Point(left + SLANT, bottom), new Point(left, middle));
			case FINDING -> List.of(new Point(left + SLANT, top), new Point(right - SLANT, top), new Point(right, top + SLANT),
					new Point(right, bottom - SLANT), new Point(right - SLANT, bottom), new Point(left + SLANT, bottom),
					new Point(left, bottom - SLANT), new Point(left, top + SLANT));
			case RULE -> List.of(new Point(left, top), new Point(right - SLANT, top), new Point(right, top + SLANT), new Point(right, bottom),
					new Point(left, bottom));
			case PROPOSAL -> List.of(new Point(left, top), new Point(right - SLANT, top), new Point(right, middle),
					new Point(right - SLANT, bottom), new Point(left, bottom));
		};
	}
}
