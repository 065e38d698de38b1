package org.setwright.editions.kept;

/** Somebody who keeps or signs editions. @param name for people @param email tells people apart; may be empty */
public record Who(String name, String email) {

	/** @return whether {@code other} is the same person: the same address, or the same name where one has none */
	public boolean same(Who other) {
		return email.isBlank() || other.email.isBlank() ? name.equalsIgnoreCase(other.name) : email.equalsIgnoreCase(other.email);
	}

	/** @return name and address */
	@Override
	public String toString() {
		return email.isBlank() ? name : name + " <" + email + ">";
	}
}
