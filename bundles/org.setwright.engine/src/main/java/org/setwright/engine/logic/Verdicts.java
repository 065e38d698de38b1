package org.setwright.engine.logic;

import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import org.setwright.engine.language.FindingOrder;
import org.setwright.engine.language.Rule;
import org.setwright.trade.catalogue.JobField;

/**
 * The rules of a book tried on one job, each when it is first asked for, after those that make the findings it asks for.
 * Thread-safe.
 */
public final class Verdicts {
	private final FindingOrder order;
	private final JobFacts job;
	private final Verdicts earlier;
	private final Map<Rule, Rule> kept;
	private final Map<Rule, Verdict> tried = new IdentityHashMap<>();
	private final Map<Rule, Set<JobField>> looked = new IdentityHashMap<>();
	private final Map<String, Verdict> findings = new HashMap<>();

	/** @param order of all rules */
	public Verdicts(FindingOrder order, JobFacts job) {
		this(order, job, null, Map.of());
	}

	/** @param earlier of the book before an amendment; null when there was none */
	private Verdicts(FindingOrder order, JobFacts job, Verdicts earlier, Map<Rule, Rule> kept) {
		this.order = order;
		this.job = job;
		this.earlier = earlier;
		this.kept = kept;
	}

	/**
	 * The same job under an amended book. Only rules that are new, or that ask for a finding which comes out differently, are
	 * tried again.
	 *
	 * @param amended the order of the amended book
	 * @param left what each rule was that the amendment leaves alone, by what it is now
	 */
	public Verdicts under(FindingOrder amended, Map<Rule, Rule> left) {
		return new Verdicts(amended, job, this, left);
	}

	/** @return what trying a rule that is not of this book would give */
	public Verdict trying(Rule stranger) {
		return Trial.of(stranger, job, this::finding, Bindings.NOBODY);
	}

	/** @param looked gets every place of the job that is read, for the findings asked for too @return what trying a stranger would give */
	public Verdict trying(Rule stranger, Consumer<JobField> looked) {
		return Trial.of(stranger, job, name -> {
			order.makers(name).forEach(maker -> looked(maker).forEach(looked));
			return finding(name);
		}, looked);
	}

	/** @return what trying {@code rule} gives */
	public synchronized Verdict of(Rule rule) {
		Verdict known = tried.get(rule);
		if (known == null) {
			known = stands(rule) ? earlier.of(kept.get(rule)) : trying(rule);
			tried.put(rule, known);
		}
		return known;
	}

	/**
	 * Tries {@code rule} once more to see what it reads; few ask.
	 *
	 * @return every place of the job that was read to try {@code rule}, and the rules that make the findings it asks for:
	 *         as long as nothing changes there, trying it again gives the same
	 */
	public synchronized Set<JobField> looked(Rule rule) {
		Set<JobField> known = looked.get(rule);
		if (known == null) {
			known = stands(rule) ? earlier.looked(kept.get(rule)) : new LinkedHashSet<>();
			if (!stands(rule)) {
				trying(rule, known::add);
			}
			looked.put(rule, known);
		}
		return known;
	}

	/** Whether what the book before the amendment said of {@code rule} still holds. */
	private boolean stands(Rule rule) {
		return kept.containsKey(rule) && order.asked(rule).stream().allMatch(f -> earlier.finding(f).equals(finding(f)));
	}

	/** @return the rules that make {@code finding} */
	public List<Rule> makers(String finding) {
		return order.makers(finding);
	}

	/** @return whether {@code finding} is made, might be made, or is not */
	public synchronized Verdict finding(String finding) {
		Verdict known = findings.get(finding);
		if (known == null) {
			known = made(finding);
			findings.put(finding, known);
		}
		return known;
	}

	private Verdict made(String finding) {
		Truth truth = Truth.FALSE;
		Set<JobField> unknowns = new LinkedHashSet<>();
		for (Rule maker : order.makers(finding)) {
			Verdict made = of(maker);
			truth = truth.or(made.truth());
			unknowns.addAll(made.unknowns());
		}
		return new Verdict(truth, List.of(), truth == Truth.UNKNOWN ? unknowns : Set.of());
	}
}
