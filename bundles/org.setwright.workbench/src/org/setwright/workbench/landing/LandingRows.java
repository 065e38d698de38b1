package org.setwright.workbench.landing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.eclipse.osgi.util.NLS;
import org.setwright.landing.LandingPlan;
import org.setwright.landing.need.Check;
import org.setwright.landing.plan.End;
import org.setwright.landing.plan.Landing;
import org.setwright.landing.plan.Shared;
import org.setwright.landing.plan.Unserved;
import org.setwright.landing.plan.Unused;
import org.setwright.landing.plan.Warning;
import org.setwright.landing.wall.Conductor;
import org.setwright.trade.catalogue.Quantity;
import org.setwright.trade.catalogue.Setting;
import org.setwright.trade.wiring.TerminalMark;
import org.setwright.workbench.landing.LandingRow.Mark;

/** A landing plan as lines under headings. */
final class LandingRows {
	private static final String NONE = ""; //$NON-NLS-1$
	private static final String LINE = "\n"; //$NON-NLS-1$
	private static final String BLANK = "\n\n"; //$NON-NLS-1$

	/** Lines under a heading. */
	record Group(String heading, List<LandingRow> rows) {
	}

	private LandingRows() {
	}

	/** @return the headings that have lines, in the order they are read */
	static List<Group> of(LandingPlan plan) {
		List<Group> groups = new ArrayList<>();
		add(groups, Messages.LandingRows_stops, plan.stops().stream().map(LandingRows::warning));
		add(groups, Messages.LandingRows_landed, plan.landings().stream().map(LandingRows::landing));
		add(groups, Messages.LandingRows_shared, plan.shared().stream().map(LandingRows::shared));
		add(groups, Messages.LandingRows_unserved, plan.unserved().stream().map(LandingRows::unserved));
		add(groups, Messages.LandingRows_unused, plan.unused().stream().map(LandingRows::unused));
		add(groups, Messages.LandingRows_toFindOut, plan.toFindOut().stream()
				.map(c -> new LandingRow(c.sentence(), NONE, Optional.empty(), Optional.empty(), NONE, NONE, NONE, c.sentence(), Mark.UNKNOWN, c.sentence())));
		add(groups, Messages.LandingRows_cautions, plan.cautions().stream().map(LandingRows::warning));
		return groups;
	}

	private static void add(List<Group> groups, String heading, Stream<LandingRow> rows) {
		List<LandingRow> all = rows.toList();
		if (!all.isEmpty()) {
			groups.add(new Group(heading, all));
		}
	}

	private static LandingRow landing(Landing landing) {
		Conductor conductor = landing.conductor();
		String first = landing.checks().stream().map(Check::sentence).collect(Collectors.joining(LINE));
		String open = landing.heldOpenBy().stream().map(Setting::label).collect(Collectors.joining(Messages.LandingRows_between));
		String detail = landing.reason() + (first.isEmpty() ? NONE : BLANK + NLS.bind(Messages.LandingRows_first, first))
				+ (open.isEmpty() ? NONE : BLANK + NLS.bind(Messages.LandingRows_heldOpen, open)) + BLANK + source(landing.source());
		String what = landing.isSure() ? landing.change().label() : NLS.bind(Messages.LandingRows_conditional, landing.change().label());
		return new LandingRow(landing.need().label(), name(conductor), conductor.wire().colour().value(), Optional.of(conductor.item()), landing.need().label(),
				landing.atWall().text(), equipment(landing.atEquipment()), what, landing.isSure() ? Mark.SETTLED : Mark.SETTLED_SO_FAR, detail);
	}

	private static LandingRow shared(Shared shared) {
		return new LandingRow(shared.need().label(), NLS.bind(Messages.LandingRows_with, name(shared.conductor())), shared.conductor().wire().colour().value(),
				Optional.of(shared.conductor().item()), shared.need().label(), NONE, NONE, shared.economy().how(), Mark.SETTLED,
				shared.need().because() + " " + shared.sentence() + BLANK + source(shared.economy().source())); //$NON-NLS-1$
	}

	private static LandingRow unused(Unused unused) {
		Conductor conductor = unused.conductor();
		return new LandingRow(Integer.toString(conductor.item()), name(conductor), conductor.wire().colour().value(), Optional.of(conductor.item()), NONE,
				mark(conductor.control()), mark(conductor.equipment()), unused.doThis(), Mark.NOT_NEEDED,
				unused.doThis() + LINE + unused.because() + BLANK + source(unused.source()));
	}

	private static LandingRow unserved(Unserved unserved) {
		List<String> lines = new ArrayList<>(List.of(unserved.need().because() + " " + unserved.because(), NONE)); //$NON-NLS-1$
		for (int i = 0; i < unserved.remedies().size(); i++) {
			lines.add((i + 1) + ". " + unserved.remedies().get(i).sentence()); //$NON-NLS-1$
		}
		lines.add(NONE);
		lines.add(source(unserved.need().source() + Messages.LandingRows_between + unserved.source()));
		return new LandingRow(unserved.label(), NONE, Optional.empty(), Optional.empty(), unserved.label(), NONE, NONE, unserved.remedies().get(0).sentence(), Mark.GAP,
				String.join(LINE, lines));
	}

	private static LandingRow warning(Warning warning) {
		return new LandingRow(warning.sentence(), warning.kind().label(), Optional.empty(), Optional.empty(), NONE, NONE, NONE, warning.sentence(), Mark.valueOf(warning.kind().name()),
				warning.sentence() + BLANK + source(warning.source()));
	}

	private static String name(Conductor conductor) {
		return conductor.label() + conductor.wire().gauge().value().map(Quantity::toString).map(g -> " " + g).orElse(NONE); //$NON-NLS-1$
	}

	private static String equipment(End end) {
		return end.text() + end.machine().map(m -> " (" + m.label() + ")").orElse(NONE); //$NON-NLS-1$ //$NON-NLS-2$
	}

	private static String mark(Optional<TerminalMark> mark) {
		return mark.map(TerminalMark::label).orElse("?"); //$NON-NLS-1$
	}

	private static String source(String source) {
		return NLS.bind(Messages.LandingRows_source, source);
	}
}
