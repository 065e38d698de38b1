package org.setwright.book.history;

import java.util.ArrayList;
import java.util.List;

/** Faults as they are found: the first ones are kept, the rest is counted. */
final class FaultList {
	private final int most;
	private final List<Fault> kept = new ArrayList<>();
	private int more;

	FaultList(int most) {
		this.most = most;
	}

	void add(Fault fault) {
		if (kept.size() < most) {
			kept.add(fault);
		} else {
			more++;
		}
	}

	/** Forgets what was found, because of something worse. */
	void only(Fault fault) {
		kept.clear();
		more = 0;
		kept.add(fault);
	}

	boolean isEmpty() {
		return kept.isEmpty();
	}

	HistoryResult result(int jobs, boolean cancelled) {
		return new HistoryResult(jobs, kept, more, cancelled);
	}
}
