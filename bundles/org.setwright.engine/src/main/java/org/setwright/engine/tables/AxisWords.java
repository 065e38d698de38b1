package org.setwright.engine.tables;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;

/** Says which answers a set of pieces of an axis holds, as a sentence and as a cell. */
final class AxisWords {
	private AxisWords() {
	}

	/** @return for example "natural gas or propane", "at least 2 stages"; empty when every answer is in it */
	static String words(Axis axis, BitSet set) {
		if (set.equals(axis.known())) {
			return axis.unknownAsked() ? "known" : "";
		}
		return set.cardinality() == axis.pieces().size() ? "" : String.join(" or ", runs(axis, set).stream().map(AxisWords::words).toList());
	}

	/** @return a cell that takes exactly these answers, or empty when one cell cannot say it */
	static Optional<String> cell(Axis axis, BitSet set) {
		if (set.equals(axis.known())) {
			return axis.unknownAsked() ? Optional.empty() : Optional.of("");
		} else if (set.cardinality() == axis.pieces().size()) {
			return Optional.of("");
		}
		if (set.cardinality() == 1 && set.get(0)) {
			return Optional.of("unknown");
		}
		List<Run> runs = runs(axis, set);
		boolean singles = runs.stream().allMatch(r -> r.first == r.last && !r.first.words().isEmpty() && r.first.from().isPresent());
		if (singles) {
			return Optional.of(String.join(" or ", runs.stream().map(r -> r.first.words()).toList()));
		}
		return runs.size() == 1 ? cell(runs.get(0)) : Optional.empty();
	}

	/** Neighbouring pieces of an ordered field; elsewhere each piece by itself. */
	private record Run(Piece first, Piece last) {
	}

	private static List<Run> runs(Axis axis, BitSet set) {
		boolean ordered = axis.column().field().domain().listed().isEmpty()
				&& axis.pieces().stream().anyMatch(p -> p.plain().isPresent() && p.words().isEmpty());
		List<Run> runs = new ArrayList<>();
		int last = -2;
		for (int i = set.nextSetBit(0); i >= 0; i = set.nextSetBit(i + 1)) {
			Piece piece = axis.pieces().get(i);
			if (ordered && i == last + 1 && piece.plain().isPresent() && last > 0) {
				runs.set(runs.size() - 1, new Run(runs.get(runs.size() - 1).first, piece));
			} else {
				runs.add(new Run(piece, piece));
			}
			last = i;
		}
		return runs;
	}

	private static String words(Run run) {
		Optional<Piece.End> from = run.first.from();
		Optional<Piece.End> to = run.last.to();
		if (run.first == run.last && !run.first.words().isEmpty()) {
			return run.first.words();
		}
		String low = from.map(e -> (e.within() ? "at least " : "above ") + e.text()).orElse("");
		String high = to.map(e -> (e.within() ? "at most " : "below ") + e.text()).orElse("");
		return low.isEmpty() || high.isEmpty() ? low + high : low + " and " + high;
	}

	private static Optional<String> cell(Run run) {
		Optional<Piece.End> from = run.first.from();
		Optional<Piece.End> to = run.last.to();
		if (from.isPresent() && to.isPresent()) {
			return from.get().within() && to.get().within() ? Optional.of(from.get().text() + ".." + to.get().text()) : Optional.empty();
		}
		return from.map(e -> (e.within() ? ">= " : "> ") + e.text()).or(() -> to.map(e -> (e.within() ? "<= " : "< ") + e.text()));
	}
}
