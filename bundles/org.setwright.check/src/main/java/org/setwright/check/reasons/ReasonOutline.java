package org.setwright.check.reasons;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.setwright.book.JobCase;
import org.setwright.book.Position;
import org.setwright.engine.explaining.Wording;
import org.setwright.engine.language.Rule;
import org.setwright.engine.outcome.Basis;
import org.setwright.engine.outcome.Firing;
import org.setwright.engine.outcome.HeldOpen;
import org.setwright.engine.outcome.Proposal;
import org.setwright.engine.outcome.Reason;
import org.setwright.engine.outcome.SettingOutcome;
import org.setwright.trade.catalogue.JobField;

/** The reasons behind one setting as an outline: each step rests on the deeper ones below it. */
public final class ReasonOutline {
	private final List<Step> steps = new ArrayList<>();
	private final Set<Firing> told = new HashSet<>();
	private final Set<Basis> worked = new HashSet<>();
	private final JobCase jobCase;

	private ReasonOutline(JobCase jobCase) {
		this.jobCase = jobCase;
	}

	/** One line of the outline. @param kind what it is, for CSV @param at where it stands; may be empty */
	public record Step(int depth, String kind, String words, String at) {
		/** @return where it stands, to follow the words */
		public String place() {
			return at.isEmpty() ? "" : "   [" + at + "]";
		}
	}

	/**
	 * @param outcome what a setting came to
	 * @param jobCase whose places are named
	 * @return the setting, the rules that propose it, and what they rest on, each step before the deeper ones it rests on
	 */
	public static List<Step> of(SettingOutcome outcome, JobCase jobCase) {
		ReasonOutline outline = new ReasonOutline(jobCase);
		outline.setting(outcome);
		return List.copyOf(outline.steps);
	}

	/** @return the firing of a rule, and what it rests on */
	public static List<Step> of(Firing firing, JobCase jobCase) {
		ReasonOutline outline = new ReasonOutline(jobCase);
		outline.firing(0, "rule", "", firing);
		return List.copyOf(outline.steps);
	}

	private void setting(SettingOutcome outcome) {
		String label = outcome.setting().label();
		switch (outcome.state()) {
			case SETTLED -> add(0, "setting", label + ": " + outcome.value().orElseThrow().text(), "");
			case DISPUTED -> add(0, "setting", label + ": DISPUTED, rules of equal authority differ; a person has to decide", "");
			case GAP -> add(0, "setting", label + ": GAP, the job needs it and no rule gives a value", "");
			case PERHAPS -> add(0, "setting", label + ": PERHAPS NEEDED, which depends on what is unknown", "");
		}
		outcome.proposals().forEach(p -> proposal(p, outcome));
		heldOpen(outcome);
	}

	private void proposal(Proposal proposal, SettingOutcome outcome) {
		String value = proposal.value().text();
		boolean decides = outcome.deciding().contains(proposal);
		String fared = decides ? outcome.value().isPresent() ? "decided by " : value + ", says "
				: outcome.agreeing().contains(proposal) ? "and so says " : "outranked: " + value + ", says ";
		firing(1, "proposal", fared, proposal.firing());
	}

	private void firing(int depth, String kind, String prefix, Firing firing) {
		add(depth, kind, prefix + name(firing.rule()) + " (" + firing.rule().authority().label() + ")", firing.rule().at().toString());
		if (!told.add(firing)) {
			add(depth + 1, "again", "as explained above", "");
			return;
		}
		add(depth + 1, "because", firing.rule().because(), "");
		add(depth + 1, "source", "source: " + firing.rule().source(), "");
		if (firing.reasons().isEmpty()) {
			add(depth + 1, "always", "It speaks on every job: it has no conditions.", "");
		}
		firing.reasons().forEach(r -> reason(depth + 1, r));
	}

	private void reason(int depth, Reason reason) {
		if (reason instanceof Reason.OfFact fact) {
			add(depth, "fact", fact.sentence(), places(fact));
			fact.tested().forEach(t -> calculation(depth + 1, t.basis()));
		} else if (reason instanceof Reason.OfFinding finding) {
			add(depth, "finding", finding.sentence(), "");
			finding.madeBy().forEach(f -> firing(depth + 1, "rule", "concluded by ", f));
		} else if (reason instanceof Reason.OfAbsence absence) {
			add(depth, "absence", absence.sentence(), places(absence.looked().stream().map(Basis::place).toList()));
			absence.looked().forEach(b -> calculation(depth + 1, b));
			absence.findings().forEach(f -> asked(depth + 1, f));
		}
	}

	private void asked(int depth, Reason.AskedFinding finding) {
		finding.madeBy().forEach(f -> firing(depth, "rule", Wording.finding(finding.finding()) + ", concluded by ", f));
		for (Reason.SilentMaker maker : finding.silent()) {
			add(depth, "silent rule", name(maker.rule()) + " would conclude " + Wording.finding(finding.finding())
					+ " and does not:", maker.rule().at().toString());
			maker.looked().forEach(b -> basis(depth + 1, b));
		}
	}

	private void basis(int depth, Basis basis) {
		if (basis.calculation().isEmpty()) {
			add(depth, "answer", basis.sentence(), places(List.of(basis.place())));
		}
		calculation(depth, basis);
	}

	/** How a calculated answer was worked out; again told once only. */
	private void calculation(int depth, Basis basis) {
		basis.calculation().ifPresent(c -> {
			boolean first = worked.add(basis);
			add(depth, "calculation", basis.place().label() + ", " + basis.said()
					+ (first ? ", is worked out: " + c.formula() : ", is worked out as explained above"), "");
			if (first) {
				add(depth + 1, "source", "source: " + c.source(), "");
				c.from().forEach(b -> basis(depth + 1, b));
			}
		});
	}

	/** Rules that wait for the same answers stand together; the rows of a table count as one. */
	private void heldOpen(SettingOutcome outcome) {
		Map<List<String>, Map<String, Long>> rulesByUnknowns = new LinkedHashMap<>();
		for (HeldOpen held : outcome.heldOpen()) {
			List<String> unknowns = held.by().stream().map(JobField::label).sorted().toList();
			rulesByUnknowns.computeIfAbsent(unknowns, u -> new LinkedHashMap<>()).merge(name(held.rule()).replaceFirst(", row \\d+$", ""), 1L, Long::sum);
		}
		rulesByUnknowns.forEach((unknowns, rules) -> {
			String words = outcome.proposals().isEmpty() ? "open until known: " : "may still change, once known: ";
			add(1, "unknown", words + String.join("; ", unknowns), "");
			rules.forEach((rule, rows) -> add(2, "held open",
					rule + (rows > 1 ? ", " + rows + " rows," : "") + " could speak then", ""));
		});
	}

	/** In quotes; that of a table's row as it is. */
	private static String name(Rule rule) {
		return rule.at().file().endsWith(".csv") ? rule.name() : '"' + rule.name() + '"';
	}

	private String places(Reason.OfFact fact) {
		return places(fact.tested().isEmpty() ? List.of(fact.fact().place()) : fact.tested().stream().map(Reason.Tested::field).toList());
	}

	private String places(List<JobField> fields) {
		return fields.stream().map(jobCase.positions()::get).filter(Objects::nonNull).sorted().map(Position::toString).distinct()
				.collect(Collectors.joining(", "));
	}

	private void add(int depth, String kind, String words, String at) {
		steps.add(new Step(depth, kind, words, at));
	}
}
