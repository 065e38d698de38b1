package org.setwright.trade.catalogue;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * The catalogue entry of one field of a fact; stands on a record component of type {@code Answer<T>}, where T is an
 * enum implementing {@link Choice}, Integer, {@link Quantity}, Boolean or String.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.RECORD_COMPONENT)
public @interface Asked {
	/** What people and files call it, lower case: "valve energised in". */
	String label();

	/**
	 * How a sentence about the fact says it, with {} where the answer goes: "feeds {}", "has {} stages", "is {a}" when the
	 * answer takes an article; for yes and no two sentences, "has a common|has no common". What {@link Field#says()} makes of
	 * the label when left out.
	 */
	String says() default "";

	/** The trade's meaning in one sentence. */
	String meaning();

	/** The unit it is usually shown in, when T is Quantity; also fixes the dimension. */
	Unit unit() default Unit.NONE;

	/** Smallest value allowed, in {@link #unit()} for quantities. */
	double least() default 0;

	/** Largest value allowed, in {@link #unit()} for quantities. */
	double most() default 1e9;

	/** Whether somebody on site can change it (land a wire, fit a sensor), or it is given. */
	boolean changesOnSite() default false;

	/** Whether it alone names the item in a list, so that a file may write just this value. */
	boolean naming() default false;
}
