package org.setwright.engine.tables;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.setwright.engine.language.Operand;
import org.setwright.engine.language.Test;
import org.setwright.trade.catalogue.Domain;
import org.setwright.trade.catalogue.Quantity;
import org.setwright.trade.catalogue.Value;

/**
 * Every answer to the question of one column, cut into as many pieces as its cells tell apart; the unknown answer is the
 * first.
 *
 * @param unknownAsked whether some cell asks for the unknown answer
 */
record Axis(Column.Asks column, List<Piece> pieces, boolean unknownAsked) {
	Axis {
		pieces = List.copyOf(pieces);
	}

	/** @param tests those of the column's cells */
	static Axis of(Column.Asks column, List<Test> tests) {
		List<Piece> pieces = new ArrayList<>(List.of(Piece.unknown()));
		Domain domain = column.field().domain();
		List<Value> values = tests.stream().flatMap(Axis::values).toList();
		if (!domain.listed().isEmpty()) {
			domain.listed().forEach(v -> pieces.add(Piece.single(v.plain(), v.text())));
		} else if (domain instanceof Domain.Words) {
			values.stream().map(Value::text).distinct().forEach(words -> pieces.add(Piece.single(words, words)));
			pieces.add(new Piece(Optional.of(new Object()), Optional.empty(), Optional.empty(), "any other"));
		} else {
			pieces.addAll(ranges(domain, values));
		}
		return new Axis(column, pieces, tests.stream().anyMatch(Test.IsUnknown.class::isInstance));
	}

	/** @return the pieces that pass; all of them when there is no test */
	BitSet passing(Optional<Test> test) {
		BitSet passing = new BitSet();
		for (int i = 0; i < pieces.size(); i++) {
			passing.set(i, test.isEmpty() || pieces.get(i).passes(test.get()));
		}
		return passing;
	}

	/** @return every piece but the unknown answer */
	BitSet known() {
		BitSet known = new BitSet();
		known.set(1, pieces.size());
		return known;
	}

	private static Stream<Value> values(Test test) {
		if (test instanceof Test.AllOf all) {
			return all.tests().stream().flatMap(Axis::values);
		} else if (test instanceof Test.Among among) {
			return among.values().stream();
		}
		return test instanceof Test.Compare compare ? Stream.of(((Operand.Literal) compare.right()).value()) : Stream.empty();
	}

	/** Below the first limit, the limit itself, between it and the next, and so on. */
	private static List<Piece> ranges(Domain domain, List<Value> values) {
		Map<Double, String> limits = new TreeMap<>();
		values.forEach(v -> limits.putIfAbsent(number(v), v.text()));
		double least = least(domain);
		double most = most(domain);
		List<Piece> pieces = new ArrayList<>();
		double before = least;
		Optional<Piece.End> from = Optional.empty();
		for (Map.Entry<Double, String> limit : limits.entrySet()) {
			double at = limit.getKey();
			boolean first = from.isEmpty();
			if (first ? at > least : room(domain, before, at)) {
				Object inside = plain(domain, between(domain, before, at, first));
				pieces.add(new Piece(Optional.of(inside), from, Optional.of(new Piece.End(limit.getValue(), false)), ""));
			}
			pieces.add(Piece.single(plain(domain, at), limit.getValue()));
			before = at;
			from = Optional.of(new Piece.End(limit.getValue(), false));
		}
		if (from.isEmpty() || most > before) {
			pieces.add(new Piece(Optional.of(plain(domain, most)), from, Optional.empty(), ""));
		}
		return pieces;
	}

	private static boolean room(Domain domain, double from, double to) {
		return domain instanceof Domain.Measure || to - from > 1;
	}

	private static double between(Domain domain, double from, double to, boolean fromWithin) {
		return domain instanceof Domain.Measure ? (from + to) / 2 : fromWithin ? from : from + 1;
	}

	private static Object plain(Domain domain, double number) {
		return domain instanceof Domain.Measure ? (Object) number : (Object) (int) number;
	}

	private static double number(Value value) {
		return ((Number) value.plain()).doubleValue();
	}

	private static double least(Domain domain) {
		return domain instanceof Domain.Measure m ? new Quantity(m.least(), m.unit()).base() : ((Domain.Whole) domain).least();
	}

	private static double most(Domain domain) {
		return domain instanceof Domain.Measure m ? new Quantity(m.most(), m.unit()).base() : ((Domain.Whole) domain).most();
	}
}
