package org.setwright.check.report;

import java.util.ArrayList;
import java.util.List;
import org.setwright.book.JobCase;
import org.setwright.check.cases.ItemPoint;
import org.setwright.check.cases.Point;
import org.setwright.check.cases.SettingPoint;
import org.setwright.check.reasons.ReasonOutline;
import org.setwright.check.reasons.ReasonOutline.Step;

/** Why a point came to what it did. */
public final class Telling {
	private Telling() {
	}

	/** @return the reasons behind what {@code point} of {@code job} came to; empty when nothing stands behind it */
	public static List<Step> reasons(Point point, JobCase job) {
		if (point instanceof SettingPoint setting) {
			return setting.outcome().map(o -> ReasonOutline.of(o, job)).orElse(List.of());
		}
		List<Step> steps = new ArrayList<>();
		((ItemPoint) point).there().forEach(t -> {
			steps.add(new Step(0, t.exactly().list().one(), t.words(), ""));
			t.firings().forEach(f -> ReasonOutline.of(f, job)
					.forEach(s -> steps.add(new Step(s.depth() + 1, s.kind(), s.words(), s.at()))));
		});
		return steps;
	}

	/** @return the same as lines of text, indented; empty when nothing stands behind it */
	public static String text(Point point, JobCase job) {
		StringBuilder text = new StringBuilder();
		reasons(point, job).forEach(s -> text.append("  ".repeat(s.depth())).append(s.words()).append(s.place()).append('\n'));
		return text.toString();
	}
}
