package org.setwright.command.landing;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.setwright.command.terminal.Cell;
import org.setwright.command.terminal.Page;
import org.setwright.command.terminal.Style;
import org.setwright.landing.LandingPlan;
import org.setwright.landing.need.Check;
import org.setwright.landing.need.Need;
import org.setwright.landing.plan.Landing;
import org.setwright.landing.plan.Shared;
import org.setwright.landing.plan.Unserved;
import org.setwright.landing.plan.Unused;
import org.setwright.landing.plan.Warning;
import org.setwright.trade.catalogue.CautionKind;
import org.setwright.trade.catalogue.Setting;

/** A landing plan for people: the conductors first, then what is impossible, then what to heed. */
record LandingText(Page page) {
	private static final int CONDUCTOR = 18;
	private static final int DUTY = 24;
	private static final int END = 12;

	void lay(String job, LandingPlan plan) {
		page.line(0, Style.STRONG, job + ": landing the conductors");
		warnings("No plan: first clear this", plan.stops());
		landings(plan);
		section("Without a conductor of its own", plan.shared(), this::shared);
		section("Not landed", plan.unused(), this::unused);
		unserved(plan.unserved());
		section("Taken for granted until somebody looks", plan.toFindOut(), c -> page.line(2, Style.ATTENTION, c.sentence()));
		warnings("Cautions", plan.cautions());
	}

	private <T> void section(String title, List<T> all, java.util.function.Consumer<T> line) {
		if (!all.isEmpty()) {
			page.blank().line(0, Style.STRONG, title);
			all.forEach(line);
		}
	}

	private void warnings(String title, List<Warning> warnings) {
		section(title, warnings, w -> {
			Style style = w.kind() == CautionKind.STOP ? Style.ALARM : w.kind() == CautionKind.NOTE ? Style.PLAIN : Style.ATTENTION;
			page.line(2, style, w.kind().label().toUpperCase(Locale.ROOT) + ": " + w.sentence());
			page.line(4, Style.QUIET, "source: " + w.source());
		});
	}

	private void landings(LandingPlan plan) {
		if (!plan.landings().isEmpty()) {
			page.blank().row(0, new Cell(CONDUCTOR + 2, Style.STRONG, "Conductor"), new Cell(DUTY, Style.STRONG, "for"), new Cell(END, Style.STRONG, "at the wall"),
					Cell.rest(Style.STRONG, "at the equipment"));
			plan.landings().forEach(this::landing);
		}
	}

	private void landing(Landing landing) {
		page.row(2, new Cell(CONDUCTOR, Style.STRONG, Named.conductor(landing.conductor())), new Cell(DUTY, Style.PLAIN, landing.need().label()),
				new Cell(END, Style.PLAIN, landing.atWall().text()), Cell.rest(Style.PLAIN, Named.equipment(landing.atEquipment())));
		page.line(4, Style.PLAIN, landing.change().label() + ": " + landing.reason());
		if (!landing.checks().isEmpty()) {
			page.line(4, Style.ATTENTION, "first: " + landing.checks().stream().map(Check::sentence).collect(Collectors.joining(" ")));
		}
		heldOpen(landing.need());
		page.line(4, Style.QUIET, "source: " + landing.source());
	}

	private void heldOpen(Need need) {
		if (!need.heldOpenBy().isEmpty()) {
			page.line(4, Style.ATTENTION, "held open by: " + need.heldOpenBy().stream().map(Setting::label).collect(Collectors.joining(", ")));
		}
	}

	private void shared(Shared shared) {
		page.row(2, new Cell(CONDUCTOR, Style.STRONG, "with " + Named.conductor(shared.conductor())), Cell.rest(Style.PLAIN, shared.need().label()));
		page.line(4, Style.ATTENTION, shared.sentence());
		page.line(4, Style.QUIET, "source: " + shared.economy().source());
	}

	private void unused(Unused unused) {
		page.row(2, new Cell(CONDUCTOR, Style.STRONG, Named.conductor(unused.conductor())), Cell.rest(Style.PLAIN, Named.now(unused.conductor()) + ". " + unused.doThis()));
		page.line(4, Style.PLAIN, unused.because());
		page.line(4, Style.QUIET, "source: " + unused.source());
	}

	/** Remedies that are the same for several stand once, below the last of them. */
	private void unserved(List<Unserved> all) {
		if (!all.isEmpty()) {
			page.blank().line(0, Style.STRONG, "No conductor for");
		}
		for (int i = 0; i < all.size(); i++) {
			Unserved one = all.get(i);
			page.row(2, new Cell(CONDUCTOR + 2 + DUTY, Style.ALARM, one.label()), Cell.rest(Style.PLAIN, Named.strength(one.need())));
			page.line(4, Style.PLAIN, one.need().because() + " " + one.because());
			heldOpen(one.need());
			page.line(4, Style.QUIET, "source: " + one.need().source());
			if (i + 1 == all.size() || !all.get(i + 1).remedies().equals(one.remedies())) {
				remedies(one);
			}
		}
	}

	private void remedies(Unserved unserved) {
		int number = 1;
		for (Unserved.Remedy remedy : unserved.remedies()) {
			page.row(6, new Cell(2, Style.PLAIN, number++ + "."), Cell.rest(Style.PLAIN, remedy.sentence()));
		}
		page.line(6, Style.QUIET, "source: " + unserved.source());
	}
}
