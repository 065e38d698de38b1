package org.setwright.editions.signing;

import java.util.List;
import java.util.Optional;
import org.setwright.book.SignOff;
import org.setwright.editions.kept.Kept;

/**
 * Whether an edition may go out. Immutable.
 *
 * @param demanded what its own book demands
 * @param signed the last sign-off of what it holds; empty when nobody signed
 * @param cases what its job cases come to now, in words; empty when they cannot be run
 * @param lacks what is missing; empty when it may go out
 */
public record Verified(Kept edition, SignOff demanded, Optional<SignedOff> signed, String cases, List<Lack> lacks) {
	public Verified {
		lacks = List.copyOf(lacks);
	}

	/** @return whether it may go out */
	public boolean fit() {
		return lacks.isEmpty();
	}
}
