package org.setwright.engine.change;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import org.setwright.engine.language.FindingOrder;
import org.setwright.engine.language.Rule;
import org.setwright.engine.logic.JobFacts;
import org.setwright.engine.logic.NearestWay;
import org.setwright.engine.logic.Truth;
import org.setwright.engine.logic.Verdict;
import org.setwright.engine.logic.Verdicts;
import org.setwright.trade.catalogue.Catalogue;
import org.setwright.trade.catalogue.Job;
import org.setwright.trade.catalogue.JobField;
import org.setwright.trade.catalogue.Setting;

/**
 * Looks for a job on which a book and an amended one come to different results, starting from jobs at hand and changing as
 * little as possible. Finding none proves nothing.
 */
public final class TellingApart {
	private static final int STARTS = 8;
	private static final int LARGEST = 2;
	private static final int FURTHER = 2;
	/** More changed jobs than this are not tried from one start. */
	private static final int MOST = 3000;

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
		Optional<Telltale> found = nearest.stream().map(differs).flatMap(Optional::stream).findFirst();
		for (int size = 1; size <= LARGEST; size++) {
			for (Job start : size == 1 ? nearest : nearest.subList(0, Math.min(FURTHER, nearest.size()))) {
				if (found.isEmpty() && !cancelled.getAsBoolean()) {
					found = search(start, size, cancelled);
				}
			}
		}
		return found;
	}

	private Optional<Telltale> search(Job start, int largest, BooleanSupplier cancelled) {
		Watch watch = new Watch() {
			private int tried;

			@Override
			public boolean goOn(int size) {
				return ++tried < MOST && !cancelled.getAsBoolean();
			}
		};
		Candidates candidates = new Candidates(new Slice(rivals(), order, catalogue), catalogue, start);
		return new Search(candidates, change -> true, this::same, job -> true, 1, watch).upTo(start, largest).stream().findFirst()
				.flatMap(made -> differs.apply(made.job()).map(t -> t.madeFrom(start, made.changes())));
	}

	/** @return empty when the books differ on {@code job}, else the places of which one has to change for them to differ */
	private Optional<Set<JobField>> same(Job job) {
		JobFacts facts = new JobFacts(catalogue.withCalculations(job), catalogue);
		Verdicts verdicts = new Verdicts(order, facts);
		Set<JobField> looked = new LinkedHashSet<>();
		Verdict before = any(dropped.stream().map(verdicts::of).toList());
		Verdict after = any(added.stream().map(r -> verdicts.trying(r, looked::add)).toList());
		dropped.forEach(r -> looked.addAll(verdicts.looked(r)));
		boolean sameConditions = added.size() == dropped.size() && added.get(0).when().equals(dropped.get(0).when());
		boolean may = sameConditions ? before.truth() != Truth.FALSE
				: before.truth() != after.truth() || before.ways().size() != after.ways().size();
		if (may && differs.apply(job).isPresent()) {
			return Optional.empty();
		}
		if (may) {
			rivals().forEach(r -> looked.addAll(verdicts.looked(r)));
		}
		return Optional.of(looked);
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

	/** The changed rules of the book and every rule that proposes the same settings. */
	private List<Rule> rivals() {
		Set<Setting> settings = new HashSet<>();
		both().forEach(r -> r.proposals().forEach(p -> settings.add(p.setting())));
		List<Rule> rivals = new ArrayList<>(dropped);
		order.sequence().stream().filter(r -> !dropped.contains(r) && r.proposals().stream().anyMatch(p -> settings.contains(p.setting()))).forEach(rivals::add);
		return rivals;
	}
}
