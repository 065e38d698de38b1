package org.setwright.editions.year;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.setwright.editions.compare.Aspect;
import org.setwright.editions.year.Year.Node;

/** What is true of a year, worked out from what was done in it and not from any repository. */
final class Truth {
	private Truth() {
	}

	/** @return every rule and row that is different, by its name after, or before when it is gone, with what is different */
	static Map<String, String> changes(State before, State after) {
		Map<String, String> changes = new TreeMap<>();
		Set<Integer> rules = new TreeSet<>(before.rules().keySet());
		rules.addAll(after.rules().keySet());
		for (int id : rules) {
			State.Rule was = before.rules().get(id);
			State.Rule is = after.rules().get(id);
			String what = was == null ? "added" : is == null ? "removed" : told(is.against(was));
			if (!what.isEmpty()) {
				changes.put((is == null ? was : is).name(), what);
			}
		}
		Map<Integer, State.Row> rows = new HashMap<>();
		before.rows().forEach(r -> rows.put(r.id(), r));
		for (int i = 0; i < after.rows().size(); i++) {
			State.Row is = after.rows().get(i);
			State.Row was = rows.remove(is.id());
			Set<Aspect> aspects = was == null ? Set.of() : is.against(was);
			if (was != null && !before.table().equals(after.table())) {
				aspects.add(Aspect.PLACE);
			}
			String what = was == null ? "added" : told(aspects);
			if (!what.isEmpty()) {
				changes.put(rowName(after, i), what);
			}
		}
		rows.values().forEach(gone -> changes.put(rowName(before, before.rows().indexOf(gone)), "removed"));
		return changes;
	}

	static String rowName(State state, int at) {
		return "table " + state.table() + ", row " + (at + 1);
	}

	static String told(Set<Aspect> aspects) {
		return aspects.stream().sorted().map(Aspect::words).collect(Collectors.joining(" "));
	}

	/** @return the numbers of the editions that made or changed rule {@code id}, newest first, with what they changed */
	static List<String> history(List<Node> nodes, Node from, int id) {
		List<String> steps = new ArrayList<>();
		Set<Node> wanted = new LinkedHashSet<>(Set.of(from));
		for (int i = nodes.size() - 1; i >= 0; i--) {
			Node node = nodes.get(i);
			if (!wanted.contains(node)) {
				continue;
			}
			State.Rule is = node.state().rules().get(id);
			List<Node> having = node.parents().stream().filter(p -> p.state().rules().containsKey(id)).toList();
			List<Node> same = having.stream().filter(p -> p.state().rules().get(id).equals(is)).toList();
			if (!same.isEmpty()) {
				wanted.add(same.get(0));
			} else {
				wanted.addAll(having);
				steps.add(node.hash() + " " + (having.isEmpty() ? "added" : told(is.against(having.get(0).state().rules().get(id)))));
			}
		}
		return steps;
	}

	/** @return the editions since which {@code job} comes to what it does at {@code from} */
	static Set<String> since(Node from, State.Job job, String setting) {
		String value = from.state().comesTo(job, setting);
		Set<String> origins = new TreeSet<>();
		Set<Node> seen = new LinkedHashSet<>(Set.of(from));
		Deque<Node> open = new ArrayDeque<>(seen);
		while (!open.isEmpty()) {
			Node node = open.remove();
			List<Node> same = runnable(node).stream().filter(p -> p.state().comesTo(job, setting).equals(value)).toList();
			if (same.isEmpty()) {
				origins.add(node.hash());
			}
			same.stream().filter(seen::add).forEach(open::add);
		}
		return origins;
	}

	static List<Node> runnable(Node node) {
		List<Node> found = new ArrayList<>();
		node.parents().forEach(p -> found.addAll(p.state().broken() ? runnable(p) : List.of(p)));
		return found;
	}

	/** @param chosen names as in {@link #changes}, and "answers" for the job's own @return what the job comes to with these changes made */
	static String mixed(State before, State after, State.Job was, State.Job is, String setting, Set<String> chosen) {
		State mix = before.copy();
		for (Integer id : before.rules().keySet()) {
			State.Rule later = after.rules().get(id);
			if (chosen.contains((later == null ? before.rules().get(id) : later).name())) {
				if (later == null) {
					mix.rules().remove(id);
				} else {
					mix.rules().put(id, later);
				}
			}
		}
		after.rules().forEach((id, rule) -> {
			if (!before.rules().containsKey(id) && chosen.contains(rule.name())) {
				mix.rules().put(id, rule);
			}
		});
		for (State.Row row : before.rows()) {
			int at = after.rows().stream().map(State.Row::id).toList().indexOf(row.id());
			if (at < 0 && chosen.contains(rowName(before, before.rows().indexOf(row)))) {
				mix.rows().remove(row);
			} else if (at >= 0 && chosen.contains(rowName(after, at))) {
				mix.rows().set(mix.rows().indexOf(row), after.rows().get(at));
			}
		}
		for (int i = 0; i < after.rows().size(); i++) {
			State.Row row = after.rows().get(i);
			if (before.rows().stream().noneMatch(r -> r.id() == row.id()) && chosen.contains(rowName(after, i))) {
				mix.rows().add(row);
			}
		}
		return mix.comesTo(chosen.contains("answers") ? is : was, setting);
	}
}
