package org.setwright.trade.catalogue;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** Marks a field that is computed from others and never asked for; stands beside {@link Asked} on a record component. */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.RECORD_COMPONENT)
public @interface Calculated {
	/** The fields it is computed from, each as {@code Kind.field}, for example {@code Building.floorArea}. */
	String[] from();

	/** The calculated fields it is computed by way of, each as {@code Kind.field}; what they need stands in {@link #from()} too. */
	String[] through() default {};

	/** The formula in words a trainer can read out. */
	String formula();

	/** Document, edition and clause, or "common practice". */
	String source();
}
