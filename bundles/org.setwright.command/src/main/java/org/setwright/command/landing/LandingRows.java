package org.setwright.command.landing;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.setwright.landing.LandingPlan;
import org.setwright.landing.need.Check;
import org.setwright.landing.plan.End;
import org.setwright.landing.plan.Landing;
import org.setwright.landing.plan.Shared;
import org.setwright.landing.plan.Unserved;
import org.setwright.landing.plan.Unused;
import org.setwright.landing.plan.Warning;
import org.setwright.landing.wall.Conductor;
import org.setwright.trade.catalogue.Setting;
import org.setwright.trade.wiring.TerminalMark;

/** A landing plan as CSV: one row for each stop, conductor, need without a conductor, and caution. */
final class LandingRows {
	private static final List<String> HEADER = List.of("row", "wire", "colour", "gauge", "duty", "wall from", "wall to", "equipment from", "equipment to", "what", "reason",
			"source", "first", "held open by");

	private LandingRows() {
	}

	static List<List<String>> of(LandingPlan plan) {
		List<List<String>> rows = new ArrayList<>();
		rows.add(HEADER);
		plan.stops().forEach(w -> rows.add(warning("stop", w)));
		plan.landings().forEach(l -> rows.add(landing(l)));
		plan.shared().forEach(s -> rows.add(shared(s)));
		plan.unused().forEach(u -> rows.add(unused(u)));
		plan.unserved().forEach(u -> rows.add(unserved(u)));
		plan.toFindOut().forEach(c -> rows.add(List.of("to find out", "", "", "", "", "", "", "", "", c.sentence(), "", "", "", "")));
		plan.cautions().forEach(w -> rows.add(warning("caution", w)));
		return rows;
	}

	private static List<String> landing(Landing landing) {
		Conductor c = landing.conductor();
		return List.of("landing", number(c), c.label(), Named.gauge(c, ""), landing.need().label(), Named.mark(landing.atWall().from()), to(landing.atWall()),
				Named.mark(landing.atEquipment().from()), to(landing.atEquipment()), landing.change().label(), landing.reason(), landing.source(),
				landing.checks().stream().map(Check::sentence).collect(Collectors.joining(" ")),
				landing.heldOpenBy().stream().map(Setting::label).collect(Collectors.joining(", ")));
	}

	private static List<String> shared(Shared shared) {
		Conductor c = shared.conductor();
		return List.of("shared", number(c), c.label(), Named.gauge(c, ""), shared.need().label(), "", "", "", "", shared.sentence(), shared.need().because(),
				shared.economy().source(), "", "");
	}

	private static List<String> unused(Unused unused) {
		Conductor c = unused.conductor();
		return List.of("unused", number(c), c.label(), Named.gauge(c, ""), "", Named.mark(c.control()), "", Named.mark(c.equipment()), "", unused.doThis(), unused.because(),
				unused.source(), unused.check().map(Check::sentence).orElse(""), "");
	}

	private static List<String> unserved(Unserved unserved) {
		return List.of("unserved", "", "", "", unserved.label(), "", "", "", "",
				unserved.remedies().stream().map(Unserved.Remedy::sentence).collect(Collectors.joining(" ")), unserved.need().because() + " " + unserved.because(),
				unserved.need().source() + "; " + unserved.source(), "", unserved.need().heldOpenBy().stream().map(Setting::label).collect(Collectors.joining(", ")));
	}

	private static List<String> warning(String row, Warning warning) {
		return List.of(row, "", "", "", "", "", "", "", "", warning.kind().label() + ": " + warning.sentence(), "", warning.source(), "", "");
	}

	private static String number(Conductor conductor) {
		return Integer.toString(conductor.item() + 1);
	}

	private static String to(End end) {
		return end.to().map(TerminalMark::label).orElse("left as it is");
	}
}
