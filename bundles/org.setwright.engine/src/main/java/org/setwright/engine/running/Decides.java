package org.setwright.engine.running;

import java.util.BitSet;
import org.setwright.engine.logic.JobFacts;

/** The rule engine with the rules of a book. Thread-safe. */
@FunctionalInterface
public interface Decides {
	/** @return the numbers of the rules whose conditions certainly hold on {@code job} */
	BitSet fired(JobFacts job);
}
