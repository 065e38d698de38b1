package org.setwright.editions.impact;

import java.util.List;
import org.setwright.editions.impact.Telling.Point;

/**
 * One thing a job comes to that is different.
 *
 * @param point which setting, caution or start-up check
 * @param before what it came to, in words
 * @param after what it comes to, in words
 * @param causes what is responsible; several when each of them alone would do it; empty only when it could not be found
 */
public record Difference(Point point, String before, String after, List<Cause> causes) {
	public Difference {
		causes = List.copyOf(causes);
	}
}
