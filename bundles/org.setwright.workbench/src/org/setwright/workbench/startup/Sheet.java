package org.setwright.workbench.startup;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.eclipse.osgi.util.NLS;
import org.setwright.engine.outcome.Caution;
import org.setwright.engine.outcome.Outcome;
import org.setwright.engine.outcome.StartUpCheck;
import org.setwright.trade.catalogue.CautionKind;
import org.setwright.trade.catalogue.JobField;
import org.setwright.trade.catalogue.Setting;
import org.setwright.trade.catalogue.StartUpPhase;
import org.setwright.trade.catalogue.UnitSystem;

/**
 * The start-up checks of a job as one text to be read from top to bottom, grave cautions first; a check perhaps needed is
 * only named.
 *
 * @param marks what stands out, in order, without overlaps
 * @param cards where each check stands, in order
 */
record Sheet(String text, List<Mark> marks, List<Card> cards) {

	/** What a stretch of the text is. */
	enum Kind {
		PHASE, STEP, LABEL, ALARM, QUIET
	}

	/** A stretch that stands out. @param start offset of its first character */
	record Mark(int start, int length, Kind kind) {
	}

	/** A check and its place. @param start offset of its first character @param end offset after its last one */
	record Card(int start, int end, StartUpCheck check) {
	}

	/** @return the sheet for {@code outcome}, quantities in {@code units} */
	static Sheet of(Outcome outcome, UnitSystem units) {
		return new Writer(units).write(outcome.cautions(), outcome.startUp());
	}

	/** @return the check whose card covers {@code offset}; empty on a heading */
	Optional<StartUpCheck> at(int offset) {
		return cards.stream().filter(c -> c.start() <= offset && offset < c.end()).map(Card::check).findFirst();
	}

	/** Puts a sheet together. */
	private static final class Writer {
		private final StringBuilder text = new StringBuilder();
		private final List<Mark> marks = new ArrayList<>();
		private final List<Card> cards = new ArrayList<>();
		private final UnitSystem units;

		Writer(UnitSystem units) {
			this.units = units;
		}

		Sheet write(List<Caution> cautions, List<StartUpCheck> checks) {
			add(Kind.QUIET, checks.isEmpty() ? Messages.Sheet_none : counted(checks)).add("\n"); //$NON-NLS-1$
			cautions.stream().filter(c -> c.kind().compareTo(CautionKind.LICENSED_WORK) <= 0).forEach(c -> add(Kind.ALARM,
					c.kind().label().toUpperCase(Locale.ROOT)).add("\t" + c.sentence() + "\n")); //$NON-NLS-1$ //$NON-NLS-2$
			StartUpPhase heading = null;
			for (StartUpCheck check : checks) {
				if (check.phase() != heading) {
					heading = check.phase();
					add("\n").add(Kind.PHASE, heading.label().toUpperCase(Locale.ROOT)).add("\n"); //$NON-NLS-1$ //$NON-NLS-2$
				}
				card(check);
			}
			return new Sheet(text.toString(), List.copyOf(marks), List.copyOf(cards));
		}

		private static String counted(List<StartUpCheck> checks) {
			long perhaps = checks.stream().filter(c -> !c.certain()).count();
			return NLS.bind(Messages.Sheet_counted, checks.size() - perhaps) + (perhaps == 0 ? "" : NLS.bind(Messages.Sheet_perhaps, perhaps)); //$NON-NLS-1$
		}

		private void card(StartUpCheck check) {
			int start = text.length();
			add(Kind.STEP, (cards.size() + 1) + "\t" + (check.certain() ? "" : Messages.Sheet_perhapsNeeded) + check.callFor().text(units)).add("\n"); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
			if (!check.undecided().isEmpty()) {
				line(Kind.ALARM, Messages.Sheet_stop, NLS.bind(Messages.Sheet_undecided, labels(check)));
			}
			if (check.certain()) {
				line(Kind.LABEL, Messages.Sheet_see, check.see().text(units));
				line(Kind.LABEL, Messages.Sheet_ifNot, check.ifNot().text(units));
				check.pause().ifPresent(p -> line(Kind.LABEL, Messages.Sheet_wait, p.text(units)));
			}
			if (!check.toFindOut().isEmpty()) {
				line(Kind.LABEL, Messages.Sheet_findOut, findOut(check));
			}
			add("\t").add(Kind.QUIET, Messages.Sheet_rule + "\t" + check.saidBy().stream().map(r -> r.name()).collect(Collectors.joining(", "))) //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
					.add("\n"); //$NON-NLS-1$
			cards.add(new Card(start, text.length(), check));
		}

		private static String labels(StartUpCheck check) {
			return check.undecided().stream().map(Setting::label).collect(Collectors.joining(", ")); //$NON-NLS-1$
		}

		private void line(Kind kind, String label, String words) {
			add("\t").add(kind, label).add("\t" + words + "\n"); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
		}

		private Writer add(String words) {
			text.append(words);
			return this;
		}

		private Writer add(Kind kind, String words) {
			marks.add(new Mark(text.length(), words.length(), kind));
			return add(words);
		}
	}

	/** @return what to look up first; the same question about several facts of a kind stands once */
	static String findOut(StartUpCheck check) {
		return check.toFindOut().stream().map(Sheet::ofAll).distinct().sorted().collect(Collectors.joining(", ")); //$NON-NLS-1$
	}

	private static String ofAll(JobField unknown) {
		return unknown.kind().many() && unknown.field().isPresent() ? unknown.kind().key() + ": " + unknown.field().get().label() //$NON-NLS-1$
				: unknown.label();
	}
}
