package org.setwright.check.cases;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import org.setwright.book.ExpectedItem;
import org.setwright.book.ItemList;
import org.setwright.book.Position;
import org.setwright.engine.outcome.Firing;

/**
 * A caution, a start-up check or a finding that is expected to be there, or not to be.
 *
 * @param there those of the job that are meant
 */
public record ItemPoint(ExpectedItem wanted, List<There> there) implements Point {
	public ItemPoint {
		there = List.copyOf(there);
	}

	/**
	 * Something a job comes to besides settings.
	 *
	 * @param exactly the item that expects it as it is, its place that of the point's
	 * @param words what it says, for people
	 * @param firings the rules behind it, and why they spoke; empty while that is not certain
	 */
	public record There(ExpectedItem exactly, String words, List<Firing> firings) {
		public There {
			firings = List.copyOf(firings);
		}
	}

	/** @return the list in which the item would be met */
	public ItemList stands() {
		return there.stream().map(t -> t.exactly().list()).min(Comparator.naturalOrder()).orElse(wanted.list().absent());
	}

	@Override
	public Standing standing() {
		return stands() == wanted.list() ? Standing.MET : Standing.NOT_MET;
	}

	@Override
	public String what() {
		return wanted.list().one() + " " + wanted.text();
	}

	@Override
	public String expected() {
		return wanted.list().state();
	}

	@Override
	public String came() {
		return wanted.other() && !there.isEmpty() ? there.stream().map(There::words).collect(Collectors.joining(" ")) : stands().state();
	}

	@Override
	public Position at() {
		return wanted.at();
	}
}
