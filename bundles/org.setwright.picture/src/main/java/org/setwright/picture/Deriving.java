package org.setwright.picture;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.setwright.engine.explaining.Wording;
import org.setwright.engine.outcome.Basis;
import org.setwright.engine.outcome.Firing;
import org.setwright.engine.outcome.Proposal;
import org.setwright.engine.outcome.Reason;
import org.setwright.engine.outcome.SettingOutcome;
import org.setwright.trade.catalogue.JobField;

/** Follows the reasons of a setting back to the job and notes everything it meets once. */
final class Deriving {
	private final List<Node> nodes = new ArrayList<>();
	private final Set<Derivation.Link> links = new LinkedHashSet<>();
	private final Map<Object, Integer> met = new LinkedHashMap<>();

	Derivation of(SettingOutcome outcome) {
		List<Integer> proposals = new ArrayList<>();
		outcome.proposals().forEach(p -> proposals.add(proposal(p, outcome)));
		String said = switch (outcome.state()) {
			case SETTLED -> outcome.value().orElseThrow().text();
			case DISPUTED -> "disputed: a person has to decide";
			case GAP -> "gap: no rule gives a value";
			case PERHAPS -> "perhaps needed: no rule gives a value";
		};
		int setting = add(new Node(Node.Sort.SETTING, outcome.setting().label(), said, false, Optional.empty(), Optional.empty()));
		proposals.forEach(p -> link(p, setting));
		return new Derivation(nodes, List.copyOf(links));
	}

	private int proposal(Proposal proposal, SettingOutcome outcome) {
		boolean outranked = outcome.outranked().contains(proposal);
		String standing = outranked ? "outranked" : outcome.agreeing().contains(proposal) ? "agrees"
				: outcome.state() == SettingOutcome.State.DISPUTED ? "disputed" : "decides";
		int rule = firing(proposal.firing(), outranked);
		int node = add(new Node(Node.Sort.PROPOSAL, proposal.value().text(), proposal.authority().label() + ", " + standing, outranked,
				Optional.empty(), Optional.of(proposal.rule().at())));
		link(rule, node);
		return node;
	}

	private int firing(Firing firing, boolean faint) {
		Integer known = met.get(firing);
		if (known != null) {
			return known;
		}
		List<Integer> from = new ArrayList<>();
		firing.reasons().forEach(r -> from.addAll(reason(r)));
		int node = add(new Node(Node.Sort.RULE, firing.rule().name(), from.isEmpty() ? "speaks on every job" : "", faint, Optional.empty(),
				Optional.of(firing.rule().at())));
		met.put(firing, node);
		from.forEach(f -> link(f, node));
		return node;
	}

	private List<Integer> reason(Reason reason) {
		List<Integer> from = new ArrayList<>();
		if (reason instanceof Reason.OfFact fact) {
			(fact.tested().isEmpty() ? List.of(fact.fact()) : fact.tested().stream().map(Reason.Tested::basis).toList())
					.forEach(b -> from.add(basis(b)));
		} else if (reason instanceof Reason.OfFinding finding) {
			from.add(finding(finding.finding(), finding.madeBy(), List.of()));
		} else if (reason instanceof Reason.OfAbsence absence) {
			absence.looked().forEach(b -> from.add(basis(b)));
			absence.findings().forEach(f -> from.add(finding(f.finding(), f.madeBy(), f.silent())));
		}
		return from;
	}

	private int finding(String name, List<Firing> makers, List<Reason.SilentMaker> silent) {
		Integer known = met.get(name);
		if (known != null) {
			return known;
		}
		List<Integer> from = new ArrayList<>();
		makers.forEach(f -> from.add(firing(f, false)));
		if (makers.isEmpty()) {
			silent.forEach(s -> s.looked().forEach(b -> from.add(basis(b))));
		}
		int node = add(new Node(Node.Sort.FINDING, Wording.finding(name), makers.isEmpty() ? "not found" : "", makers.isEmpty(),
				Optional.empty(), makers.stream().findFirst().map(f -> f.rule().at())));
		met.put(name, node);
		from.forEach(f -> link(f, node));
		return node;
	}

	private int basis(Basis basis) {
		JobField place = basis.place();
		Integer known = met.get(place);
		if (known != null) {
			return known;
		}
		List<Integer> from = new ArrayList<>();
		basis.calculation().ifPresent(c -> c.from().forEach(b -> from.add(basis(b))));
		String title = place.field().isPresent() ? place.label() : place.kind().label() + (place.kind().many() && basis.said().equals("there")
				? " " + (place.item() + 1) : "");
		int node = add(new Node(basis.calculation().isPresent() ? Node.Sort.CALCULATED : Node.Sort.ANSWER, title, basis.said(), false,
				Optional.of(place), Optional.empty()));
		met.put(place, node);
		from.forEach(f -> link(f, node));
		return node;
	}

	private int add(Node node) {
		nodes.add(node);
		return nodes.size() - 1;
	}

	private void link(int from, int to) {
		links.add(new Derivation.Link(from, to));
	}
}
