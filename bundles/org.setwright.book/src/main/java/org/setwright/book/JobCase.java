package org.setwright.book;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.setwright.trade.catalogue.Job;
import org.setwright.trade.catalogue.JobField;
import org.setwright.trade.catalogue.Setting;
import org.setwright.trade.catalogue.Value;

/**
 * One saved job: what is known, what is expected, and notes.
 *
 * @param path below the book folder, for example {@code jobs/larch-lane-14.yaml}
 * @param name what the shop calls the job; unique in the book
 * @param notes free text; may be empty
 * @param job the facts as stated (calculated facts are not in it)
 * @param expected by setting, in file order
 * @param positions where each stated answer stands in the file
 */
public record JobCase(String path, String name, String notes, Job job, Map<Setting, Expectation> expected,
		Map<JobField, Position> positions) {
	public JobCase {
		expected = Collections.unmodifiableMap(new LinkedHashMap<>(expected));
		positions = Map.copyOf(positions);
	}

	/** What a setting is expected to come to. */
	public sealed interface Expectation {
		/** Where it stands in the file. */
		Position at();

		/** @return as written in the file */
		String text();
	}

	/** Settled with this value. */
	public record Settled(Value value, Position at) implements Expectation {
		@Override
		public String text() {
			return value.text();
		}
	}

	/** Needed, and no rule proposes a value. */
	public record Gap(Position at) implements Expectation {
		@Override
		public String text() {
			return "gap";
		}
	}

	/** Different values proposed with equal authority. */
	public record Dispute(Position at) implements Expectation {
		@Override
		public String text() {
			return "dispute";
		}
	}

	/** Not needed on this job, and not proposed. */
	public record NotNeeded(Position at) implements Expectation {
		@Override
		public String text() {
			return "not needed";
		}
	}
}
