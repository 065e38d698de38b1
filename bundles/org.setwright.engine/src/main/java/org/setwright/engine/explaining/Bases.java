package org.setwright.engine.explaining;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.setwright.engine.logic.JobFacts;
import org.setwright.engine.outcome.Basis;
import org.setwright.trade.catalogue.Answer;
import org.setwright.trade.catalogue.Catalogue;
import org.setwright.trade.catalogue.FactKind;
import org.setwright.trade.catalogue.Field;
import org.setwright.trade.catalogue.Job;
import org.setwright.trade.catalogue.JobField;
import org.setwright.trade.catalogue.Value;

/** Says what stands at places of a job, and how what is calculated was worked out, down to what the job states. */
public final class Bases {
	private final JobFacts job;
	private final Catalogue catalogue;
	private final Map<JobField, Basis> said = new ConcurrentHashMap<>();

	/** @param catalogue where calculations name their fields */
	public Bases(JobFacts job, Catalogue catalogue) {
		this.job = job;
		this.catalogue = catalogue;
	}

	/** @return what stands at {@code place} */
	public Basis of(JobField place) {
		Basis known = said.get(place);
		if (known == null) {
			known = place.field().isPresent() ? ofField(place, place.field().get()) : ofPresence(place);
			said.put(place, known);
		}
		return known;
	}

	/** @return what stands at {@code places}; that there are facts of a kind is left out where one of them is named */
	public List<Basis> of(Collection<JobField> places) {
		Set<FactKind> named = places.stream().filter(p -> p.field().isPresent()).map(JobField::kind).collect(Collectors.toSet());
		return places.stream().filter(p -> p.field().isPresent() || !named.contains(p.kind())).distinct().map(this::of).toList();
	}

	private Basis ofField(JobField place, Field field) {
		Answer<Value> answer = job.answer(place);
		return new Basis(place, answer.value().map(Value::text).orElse("unknown"), answer.isKnown(),
				field.calculation().map(c -> new Basis.Calculation(c.formula(), c.source(), from(List.of(c)))));
	}

	private Basis ofPresence(JobField place) {
		FactKind kind = place.kind();
		Job.Entry entry = job.job().entry(kind);
		boolean one = !entry.facts().isEmpty() && place.item() < entry.facts().size();
		String said = switch (entry.presence()) {
			case PRESENT -> one || !kind.many() ? "there" : "no further one";
			case NONE -> "none";
			case UNKNOWN -> kind.exactlyOne() ? "there" : "unknown";
		};
		return new Basis(place, said, entry.presence() != Job.Presence.UNKNOWN, kind.calculated() ? Optional.of(whetherThere(kind)) : Optional.empty());
	}

	private Basis.Calculation whetherThere(FactKind kind) {
		List<Field.Calculation> all = kind.fields().stream().flatMap(f -> f.calculation().stream()).toList();
		return new Basis.Calculation("worked out only where it applies: " + kind.meaning(), all.get(0).source(), from(all));
	}

	/** What is computed on the way comes first; what that rests on is not repeated beside it. */
	private List<Basis> from(List<Field.Calculation> calculations) {
		Set<String> through = new LinkedHashSet<>();
		Set<String> from = new LinkedHashSet<>();
		calculations.forEach(c -> through.addAll(c.through()));
		calculations.forEach(c -> from.addAll(c.from()));
		through.removeIf(t -> calculations.stream().anyMatch(c -> field(t).calculation().filter(c::equals).isPresent()));
		through.forEach(t -> from.removeAll(field(t).calculation().orElseThrow().from()));
		return Stream.concat(through.stream(), from.stream()).flatMap(name -> places(name).stream()).map(this::of).toList();
	}

	private Field field(String kindAndField) {
		return kind(kindAndField).field(kindAndField.split("\\.")[1]).orElseThrow();
	}

	private FactKind kind(String kindAndField) {
		return catalogue.kind(kindAndField.split("\\.")[0]).orElseThrow();
	}

	private List<JobField> places(String kindAndField) {
		FactKind kind = kind(kindAndField);
		List<JobFacts.Item> items = job.items(kind);
		if (items.isEmpty()) {
			return List.of(JobField.presence(kind));
		}
		List<JobField> places = new ArrayList<>();
		items.forEach(i -> places.add(i.place(field(kindAndField))));
		return places;
	}
}
