package org.setwright.editions.git;

import java.util.Optional;

/** A name and a password or token for another place. It is used once, handed to the user's own helpers, and kept nowhere here. */
public record Login(String user, String password) {

	/** Asks the person, when the user's own Git helpers know nothing. */
	@FunctionalInterface
	public interface Asking {
		/** Nobody is there to be asked. */
		Asking NOBODY = where -> Optional.empty();

		/** @param where the address, without name and password @return empty when the person gives none */
		Optional<Login> login(String where);
	}

	/** Does not show the password. */
	@Override
	public String toString() {
		return user;
	}
}
