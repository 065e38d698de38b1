package org.setwright.editions.kept;

/** Which edition is meant, whatever repository it is in. @param hash 40 hexadecimal digits, the commit's own name in Git */
public record EditionId(String hash) {
	private static final int SHORT = 10;

	public EditionId {
		if (!hash.matches("[0-9a-f]{40}")) {
			throw new IllegalArgumentException("not the name of an edition: " + hash);
		}
	}

	/** @return the first digits, enough to tell editions apart when spoken or typed */
	public String shown() {
		return hash.substring(0, SHORT);
	}

	@Override
	public String toString() {
		return shown();
	}
}
