package org.setwright.trade.calculation.facts;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.setwright.trade.Trade;
import org.setwright.trade.catalogue.Catalogue;
import org.setwright.trade.catalogue.Fact;
import org.setwright.trade.catalogue.FactKind;
import org.setwright.trade.catalogue.Field;
import org.setwright.trade.catalogue.Job;
import org.setwright.trade.catalogue.JobField;
import org.setwright.trade.catalogue.Value;

/** A job written down by labels, as in job files: {@code "floor area: 1500 ft2", "bedrooms: 3"}. */
record Sketch(Job job) {
	private static final Catalogue CATALOGUE = Trade.catalogue();

	static Sketch blank() {
		return new Sketch(Job.blank());
	}

	/** @return the same with one more fact of {@code type}; fields not listed are unknown */
	Sketch with(Class<? extends Fact> type, String... answers) {
		FactKind kind = CATALOGUE.kind(type);
		Map<Field, Value> known = new HashMap<>();
		for (String answer : answers) {
			String[] parts = answer.split(": ");
			Field field = kind.fieldLabelled(parts[0]).orElseThrow(() -> new IllegalArgumentException(answer));
			known.put(field, field.domain().read(parts[1]).orElseThrow(() -> new IllegalArgumentException(answer)));
		}
		List<Fact> facts = new ArrayList<>(job.entry(kind).facts());
		facts.add(kind.create(known));
		return new Sketch(job.with(kind, Job.Entry.of(facts)));
	}

	@SafeVarargs
	final Sketch without(Class<? extends Fact>... types) {
		Job result = job;
		for (Class<? extends Fact> type : types) {
			result = result.with(CATALOGUE.kind(type), Job.Entry.NONE);
		}
		return new Sketch(result);
	}

	/** @return what the computed field called {@code label} of {@code type} says: its text, "unknown", or of the kind "none" */
	String says(Class<? extends Fact> type, String label) {
		FactKind kind = CATALOGUE.kind(type);
		Job.Entry entry = computed().entry(kind);
		return switch (entry.presence()) {
			case NONE -> "none";
			case UNKNOWN -> "unknown whether";
			case PRESENT -> kind.answer(entry.facts().get(0), kind.fieldLabelled(label).orElseThrow()).value().map(Value::text)
					.orElse("unknown");
		};
	}

	/** @return what has to be looked up for that, by label, in the order of its sources */
	List<String> asksFor(Class<? extends Fact> type, String label) {
		FactKind kind = CATALOGUE.kind(type);
		JobField place = computed().entry(kind).presence() == Job.Presence.UNKNOWN ? JobField.presence(kind)
				: JobField.of(kind, 0, kind.fieldLabelled(label).orElseThrow());
		return CATALOGUE.toLookUp(computed(), place).stream().map(JobField::label).toList();
	}

	private Job computed() {
		return CATALOGUE.withCalculations(job);
	}
}
