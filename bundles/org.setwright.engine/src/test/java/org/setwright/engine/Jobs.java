package org.setwright.engine;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.setwright.trade.Trade;
import org.setwright.trade.catalogue.Fact;
import org.setwright.trade.catalogue.FactKind;
import org.setwright.trade.catalogue.Field;
import org.setwright.trade.catalogue.Job;
import org.setwright.trade.catalogue.Value;

/** Makes jobs for tests. */
final class Jobs {
	private Jobs() {
	}

	/** @param statements each "Kind", "Kind none" or "Kind field=value, field=value" */
	static Job of(String... statements) {
		Map<FactKind, List<Fact>> facts = new HashMap<>();
		Job job = Job.blank();
		for (String statement : statements) {
			String[] parts = statement.split(" ", 2);
			FactKind kind = Trade.catalogue().kind(parts[0]).orElseThrow(() -> new AssertionError(parts[0]));
			if (parts.length > 1 && parts[1].equals("none")) {
				job = job.with(kind, Job.Entry.NONE);
				continue;
			}
			Map<Field, Value> known = new HashMap<>();
			for (String answer : parts.length == 1 ? new String[0] : parts[1].split(", ")) {
				Field field = kind.field(answer.split("=")[0]).orElseThrow(() -> new AssertionError(answer));
				known.put(field, field.domain().read(answer.split("=")[1]).orElseThrow(() -> new AssertionError(answer)));
			}
			facts.computeIfAbsent(kind, x -> new ArrayList<>()).add(kind.create(known));
			job = job.with(kind, Job.Entry.of(facts.get(kind)));
		}
		return job;
	}
}
