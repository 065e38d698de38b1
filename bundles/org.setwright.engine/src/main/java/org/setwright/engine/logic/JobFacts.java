package org.setwright.engine.logic;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.setwright.trade.catalogue.Answer;
import org.setwright.trade.catalogue.Catalogue;
import org.setwright.trade.catalogue.Fact;
import org.setwright.trade.catalogue.FactKind;
import org.setwright.trade.catalogue.Field;
import org.setwright.trade.catalogue.Job;
import org.setwright.trade.catalogue.JobField;
import org.setwright.trade.catalogue.Value;

/**
 * A job laid out for testing: for every kind of fact its items. A kind nobody has said anything about has one
 * <em>phantom</em> item, of which nothing is known, not even whether it is there; a kind every job has, such as the
 * building, is there all the same, with every answer unknown.
 */
public final class JobFacts {
	private final Catalogue catalogue;
	private final Job job;
	private final Map<FactKind, List<Item>> items = new HashMap<>();
	private final Map<JobField, Set<JobField>> lookUps = new ConcurrentHashMap<>();

	/**
	 * One fact.
	 *
	 * @param item which of several of its kind, from 0
	 * @param answers as {@link Value#plain()}, by field; null where unknown
	 * @param phantom whether it is not even known to be there
	 */
	public record Item(FactKind kind, int item, Object[] answers, boolean phantom) {
		/** @return the plain answer for {@code field}, or null when unknown */
		public Object answer(Field field) {
			return answers[kind.index(field)];
		}

		/** @return the place of {@code field}, or of the whole kind when this is a phantom */
		public JobField place(Field field) {
			return phantom ? JobField.presence(kind) : JobField.of(kind, item, field);
		}
	}

	/** @param job with its calculated facts */
	public JobFacts(Job job, Catalogue catalogue) {
		this.job = job;
		this.catalogue = catalogue;
		for (FactKind kind : catalogue.kinds()) {
			items.put(kind, items(kind, job.entry(kind)));
		}
	}

	/** @return the job */
	public Job job() {
		return job;
	}

	/** @return the facts of {@code kind} */
	public List<Item> items(FactKind kind) {
		return items.get(kind);
	}

	/** @return every fact, phantoms included */
	public List<Item> all() {
		return items.values().stream().flatMap(List::stream).toList();
	}

	/** @return the answer at {@code place}, as the job says it */
	public Answer<Value> answer(JobField place) {
		List<Fact> facts = job.entry(place.kind()).facts();
		return place.field().isEmpty() || place.item() >= facts.size() ? Answer.unknown()
				: place.kind().answer(facts.get(place.item()), place.field().get());
	}

	/** @return what somebody would have to look up to know the answer at {@code place}, see {@link Catalogue#toLookUp} */
	public Set<JobField> toLookUp(JobField place) {
		return lookUps.computeIfAbsent(place, p -> catalogue.toLookUp(job, p));
	}

	private static List<Item> items(FactKind kind, Job.Entry entry) {
		if (entry.presence() == Job.Presence.UNKNOWN) {
			return List.of(new Item(kind, 0, new Object[kind.fields().size()], !kind.exactlyOne()));
		}
		List<Item> items = new ArrayList<>();
		for (int i = 0; i < entry.facts().size(); i++) {
			Object[] answers = new Object[kind.fields().size()];
			for (int f = 0; f < answers.length; f++) {
				answers[f] = kind.answer(entry.facts().get(i), kind.fields().get(f)).value().map(Value::plain).orElse(null);
			}
			items.add(new Item(kind, i, answers, false));
		}
		return items;
	}
}
