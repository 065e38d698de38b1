package org.setwright.check.cases;

import java.util.List;
import java.util.stream.Collectors;
import org.setwright.book.ExpectedCaution;
import org.setwright.book.Position;
import org.setwright.engine.outcome.Caution;

/** A caution that is expected to be raised, or not to be. @param raised those of the job that are meant */
public record CautionPoint(ExpectedCaution wanted, List<Caution> raised) implements Point {
	public CautionPoint {
		raised = List.copyOf(raised);
	}

	@Override
	public Standing standing() {
		return raised.isEmpty() == wanted.appears() ? Standing.NOT_MET : Standing.MET;
	}

	@Override
	public String what() {
		return (wanted.appears() ? "caution " : "no caution ") + wanted.text();
	}

	@Override
	public String expected() {
		return wanted.appears() ? "raised" : "not raised";
	}

	@Override
	public String came() {
		return raised.isEmpty() ? "not raised"
				: wanted.other() ? raised.stream().map(c -> c.kind().label() + ": " + c.sentence()).collect(Collectors.joining(" ")) : "raised";
	}

	@Override
	public Position at() {
		return wanted.at();
	}
}
