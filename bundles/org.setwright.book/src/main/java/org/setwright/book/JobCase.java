package org.setwright.book;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.setwright.trade.catalogue.Job;
import org.setwright.trade.catalogue.JobField;
import org.setwright.trade.catalogue.Quantity;
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
 * @param items what is expected besides settings, list by list in file order
 * @param accepted the outcomes somebody accepted, in file order
 * @param positions where each stated answer stands in the file
 */
public record JobCase(String path, String name, String notes, Job job, Map<Setting, Expectation> expected,
		List<ExpectedItem> items, List<Acceptance> accepted, Map<JobField, Position> positions) {
	public JobCase {
		expected = Collections.unmodifiableMap(new LinkedHashMap<>(expected));
		items = List.copyOf(items);
		accepted = List.copyOf(accepted);
		positions = Map.copyOf(positions);
	}

	/** A job case that expects nothing besides settings, and of which nothing has been accepted. */
	public JobCase(String path, String name, String notes, Job job, Map<Setting, Expectation> expected, Map<JobField, Position> positions) {
		this(path, name, notes, job, expected, List.of(), List.of(), positions);
	}

	/** @return how many things it states that it expects */
	public int expectations() {
		return expected.size() + items.size();
	}

	/** @return the items that stand in {@code list}, in file order */
	public List<ExpectedItem> items(ItemList list) {
		return items.stream().filter(i -> i.list() == list).toList();
	}

	/** @return the cautions that are expected to be raised or not to be, in file order */
	public List<ExpectedCaution> cautions() {
		return items.stream().filter(ExpectedCaution.class::isInstance).map(ExpectedCaution.class::cast).toList();
	}

	/** What a setting is expected to come to. */
	public sealed interface Expectation {
		/** Where it stands in the file. */
		Position at();

		/** @return on one line, for people */
		String text();
	}

	/** Settled with this value. @param within how far a number may be off, above 0; a difference, when the value is a temperature */
	public record Settled(Value value, Optional<Quantity> within, Position at) implements Expectation {
		/** Exactly this value. */
		public Settled(Value value, Position at) {
			this(value, Optional.empty(), at);
		}

		@Override
		public String text() {
			return value.text() + within.map(w -> " within " + w).orElse("");
		}
	}

	/** Settled, and by a rule that is named. @param is with which value; empty for any @param rule its name, or that of its table */
	public record DecidedBy(Optional<Settled> is, String rule, Position at) implements Expectation {
		@Override
		public String text() {
			return is.map(s -> s.text() + ", by ").orElse("decided by ") + rule;
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

	/** Without a value, whether the job needs one or not: there is nothing to enter. */
	public record NotSet(Position at) implements Expectation {
		@Override
		public String text() {
			return "not set";
		}
	}
}
