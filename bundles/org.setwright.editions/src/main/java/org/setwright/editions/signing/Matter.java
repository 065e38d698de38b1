package org.setwright.editions.signing;

import java.util.List;

/** Everything said on one matter. Immutable. @param thread names it @param remarks oldest first; not empty */
public record Matter(String thread, List<Remark> remarks) {
	public Matter {
		remarks = List.copyOf(remarks);
	}

	/** @return what it is about */
	public About about() {
		return remarks.get(0).about();
	}

	/** @return whether the last word on it left it open */
	public boolean open() {
		return remarks.get(remarks.size() - 1).stand() == Remark.Stand.OPEN;
	}
}
