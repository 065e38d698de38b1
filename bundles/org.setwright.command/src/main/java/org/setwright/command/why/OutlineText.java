package org.setwright.command.why;

import java.util.List;
import org.setwright.check.reasons.ReasonOutline.Step;
import org.setwright.command.terminal.Page;
import org.setwright.command.terminal.Style;
import org.setwright.engine.outcome.SettingOutcome.State;

/** Reasons as an outline on a page. */
public final class OutlineText {
	private OutlineText() {
	}

	/** Prints {@code steps}, the outermost at {@code indent}. @param state of the setting they are about */
	public static void print(Page page, int indent, List<Step> steps, State state) {
		steps.forEach(step -> page.line(indent + 2 * step.depth(), style(step, state), step.words() + step.place()));
	}

	private static Style style(Step step, State state) {
		return switch (step.kind()) {
			case "setting" -> switch (state) {
				case SETTLED -> Style.STRONG;
				case DISPUTED, GAP -> Style.ALARM;
				case PERHAPS -> Style.ATTENTION;
			};
			case "source", "again" -> Style.QUIET;
			case "unknown" -> Style.ATTENTION;
			default -> Style.PLAIN;
		};
	}
}
