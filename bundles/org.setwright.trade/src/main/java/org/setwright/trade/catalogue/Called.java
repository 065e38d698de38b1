package org.setwright.trade.catalogue;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** The catalogue entry of one choice; stands on the constant of an enum that implements {@link Choice}. */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.FIELD)
public @interface Called {
	/** What people and files call it, for example "air-source heat pump". */
	String label();

	/** The trade's meaning in one sentence. */
	String meaning();
}
