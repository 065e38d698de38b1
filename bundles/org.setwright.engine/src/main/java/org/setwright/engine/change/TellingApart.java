package org.setwright.engine.change;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import org.setwright.engine.language.Action;
import org.setwright.engine.language.FindingOrder;
import org.setwright.engine.language.Rule;
import org.setwright.engine.logic.JobFacts;
import org.setwright.engine.logic.NearestWay;
import org.setwright.engine.logic.Truth;
import org.setwright.engine.logic.Verdict;
import org.setwright.engine.logic.Verdicts;
import org.setwright.trade.catalogue.Catalogue;
import org.setwright.trade.catalogue.Job;
import org.setwright.trade.catalogue.Setting;

/**
 * Looks for a job on which a book and an amended one come to different results, starting from jobs at hand and changing as
 * little as possible. Finding none proves nothing.
 */
public final class TellingApart {
	private static final int STARTS = 8;
	private static final int LARGEST = 2;

	private final Catalogue catalogue;
	private final FindingOrder order;
	private final List<Rule> dropped;
	private final List<Rule> added;
	private final Function<Job, Optional<Telltale>> differs;

	/**
	 * @param order of the book
	 * @param dropped the rules of the book that the amended one lacks
	 * @param added the rules it has instead; they ask for no finding the book does not make
	 * @param differs runs a job under both books
	 */
	public TellingApart(Catalogue catalogue, FindingOrder order, List<Rule> dropped, List<Rule> added,
			Function<Job, Optional<Telltale>> differs) {
		this.catalogue = catalogue;
		this.order = order;
		this.dropped = List.copyOf(dropped);
		this.added = List.copyOf(added);
		this.differs = differs;
	}

	/** @param starts jobs to start from @return a job that tells the books apart, or empty when none was found */
	public Optional<Telltale> from(List<Job> starts, BooleanSupplier cancelled) {
		List<Job> nearest = nearest(starts);
		Slice own = new Slice(both(), order, catalogue);
		Slice wide = new Slice(rivals(), order, catalogue);
		Optional<Telltale> found = nearest.stream().map(this::tells).flatMap(Optional::stream).findFirst();
		if (found.isEmpty()) {
			found = search(nearest, own, 1, cancelled);
		}
		if (found.isEmpty()) {
			found = search(nearest, wide, 1, cancelled);
		}
		return found.isPresent() ? found : search(nearest.subList(0, Math.min(2, nearest.size())), own, LARGEST, cancelled);
	}

	private Optional<Telltale> search(List<Job> starts, Slice slice, int largest, BooleanSupplier cancelled) {
		for (Job start : starts) {
			List<List<Change>> found = new Search(Candidates.of(slice, start), start, job -> tells(job).isPresent(), 1, cancelled).upTo(largest);
			if (!found.isEmpty()) {
				List<Change> changes = found.get(0);
				Job changed = start;
				for (Change change : changes) {
					changed = change.apply(changed);
				}
				return tells(changed).map(t -> t.madeFrom(start, changes));
			}
		}
		return Optional.empty();
	}

	private Optional<Telltale> tells(Job job) {
		return mayTell(job) ? differs.apply(job) : Optional.empty();
	}

	/** A quick look at the changed rules alone. */
	private boolean mayTell(Job job) {
		JobFacts facts = new JobFacts(catalogue.withCalculations(job), catalogue);
		Verdicts verdicts = new Verdicts(order, facts);
		Verdict before = any(dropped.stream().map(verdicts::of).toList());
		Verdict after = any(added.stream().map(verdicts::trying).toList());
		boolean sameConditions = added.size() == dropped.size() && added.get(0).when().equals(dropped.get(0).when());
		return sameConditions ? before.truth() != Truth.FALSE
				: before.truth() != after.truth() || before.ways().size() != after.ways().size();
	}

	private static Verdict any(List<Verdict> verdicts) {
		return verdicts.stream().max(Comparator.comparing(Verdict::truth)).orElse(Verdict.FALSE);
	}

	/** The jobs on which least is missing for the changed rules to speak come first. */
	private List<Job> nearest(List<Job> starts) {
		record Near(Job job, int missing) {
		}
		List<Rule> rules = both();
		return starts.stream().map(job -> {
			JobFacts facts = new JobFacts(catalogue.withCalculations(job), catalogue);
			Verdicts verdicts = new Verdicts(order, facts);
			return new Near(job, rules.stream().mapToInt(r -> NearestWay.obstacles(r, facts, verdicts::finding).size()).min().orElse(0));
		}).sorted(Comparator.comparingInt(Near::missing)).limit(STARTS).map(Near::job).toList();
	}

	private List<Rule> both() {
		List<Rule> both = new ArrayList<>(dropped);
		both.addAll(added);
		return both;
	}

	/** The changed rules and every rule that proposes the same settings. */
	private List<Rule> rivals() {
		Set<Setting> settings = new HashSet<>();
		both().forEach(r -> settings.addAll(proposed(r)));
		List<Rule> rivals = both();
		order.sequence().stream().filter(r -> proposed(r).stream().anyMatch(settings::contains)).forEach(rivals::add);
		return rivals;
	}

	private static List<Setting> proposed(Rule rule) {
		return rule.then().stream().filter(Action.Propose.class::isInstance).map(a -> ((Action.Propose) a).setting()).toList();
	}
}
