package org.setwright.trade.catalogue;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** The catalogue entry of a kind of fact; stands on its record. */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.TYPE)
public @interface About {
	/** What people and files call one of them, lower case: "outdoor unit". */
	String label();

	/** What files call the list of them, when a job may have several; empty when a job has at most one. */
	String plural() default "";

	/** The trade's meaning in one sentence. */
	String meaning();

	/** Whether the label is a word without plural, such as "auxiliary heat", which takes no "a" or "an". */
	boolean uncountable() default false;

	/** Whether every job has one, so that "none" is not an answer (the building, the climate). */
	boolean always() default false;

	/** Whether somebody on site can add or take one away (pull a wire, fit a sensor), or what is there stays. */
	boolean changesOnSite() default false;
}
