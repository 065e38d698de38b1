package org.setwright.editions.year;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.Predicate;

/** What the people of the shop do to their book, by chance. */
final class Hands {
	static final List<String> MAKERS = List.of("Norrvik", "Larchwick", "Tarn", "Halvard", "Quillon", "Birk");
	private static final List<String> WORDS = List.of("amber", "lantern", "copper", "gate", "willow", "harbour", "slate", "ember", "thistle", "anchor",
			"marble", "heron",
			"cinder", "meadow", "flint", "raven", "juniper", "basalt", "orchard", "kestrel", "pewter", "bramble", "quarry", "saffron", "timber", "velvet",
					"wharf", "yarrow");
	private final Random random;
	private int last;

	Hands(long seed) {
		random = new Random(seed);
	}

	Random random() {
		return random;
	}

	int fresh() {
		return ++last;
	}

	<T> T one(List<T> things) {
		return things.get(random.nextInt(things.size()));
	}

	private String words(int number) {
		List<String> words = new ArrayList<>();
		for (int i = 0; i < number; i++) {
			words.add(one(WORDS));
		}
		return String.join(" ", words);
	}

	State.Rule rule(int id) {
		boolean stages = random.nextBoolean();
		return new State.Rule(id, "Number " + id + " " + words(3), "rules/" + one(List.of("cooling", "heating", "valve")) + ".drl", 1 + random.nextInt(2),
				random.nextInt(3) == 0 ? "" : one(MAKERS), stages ? State.STAGES : State.VALVE, stages ? "" + (1 + random.nextInt(2)) : valve(),
				one(State.AUTHORITIES), "As " + words(6) + " " + id + " says.", false);
	}

	private String valve() {
		return random.nextBoolean() ? "energised in cooling" : "energised in heating";
	}

	State begin() {
		State state = new State(java.util.Map.of(), List.of(), java.util.Map.of(), "makers");
		for (int i = 0; i < 10; i++) {
			State.Rule rule = rule(fresh());
			state.rules().put(rule.id(), rule);
		}
		for (String maker : MAKERS.subList(0, 3)) {
			state.rows().add(new State.Row(fresh(), maker, valve(), "maker's instructions"));
		}
		for (int i = 0; i < 8; i++) {
			addJob(state);
		}
		return state;
	}

	private void addJob(State state) {
		int id = fresh();
		State.Job job = new State.Job(id, "Lane " + id, 1 + random.nextInt(2), one(MAKERS), "");
		String now = state.comesTo(job, State.STAGES);
		state.jobs().put(id, new State.Job(id, job.name(), job.stages(), job.maker(), now.length() == 1 ? now : ""));
	}

	/** Changes one rule, or makes or removes one. @param mine which rules may be touched */
	void work(State state, Predicate<Integer> mine) {
		List<State.Rule> rules = state.rules().values().stream().filter(r -> mine.test(r.id())).toList();
		if (rules.isEmpty() || random.nextInt(5) == 0) {
			State.Rule rule = rule(fresh());
			state.rules().put(rule.id(), rule);
			return;
		}
		State.Rule r = one(rules);
		State.Rule o = rule(r.id());
		State.Rule changed = switch (random.nextInt(8)) {
			case 0 -> new State.Rule(r.id(), r.name(), r.file(), 3 - r.stages(), r.maker(), r.setting(), r.value(), r.authority(), r.because(), r.slip());
			case 1 -> new State.Rule(r.id(), r.name(), r.file(), r.stages(), r.maker().isEmpty() ? "Tarn" : "", r.setting(), r.value(), r.authority(),
					r.because(), r.slip());
			case 2, 3 -> new State.Rule(r.id(), r.name(), r.file(), r.stages(), r.maker(), r.setting(), other(r), r.authority(), r.because(), r.slip());
			case 4 -> new State.Rule(r.id(), r.name(), r.file(), r.stages(), r.maker(), r.setting(), r.value(),
					State.AUTHORITIES.get((State.AUTHORITIES.indexOf(r.authority()) + 1) % 5), r.because(), r.slip());
			case 5 -> new State.Rule(r.id(), r.name(), r.file(), r.stages(), r.maker(), r.setting(), r.value(), r.authority(), o.because(), r.slip());
			case 6 -> new State.Rule(r.id(), o.name() + " anew", r.file(), r.stages(), r.maker(), r.setting(), r.value(), r.authority(), r.because(),
					r.slip());
			default -> new State.Rule(r.id(), r.name(), r.file().equals("rules/valve.drl") ? "rules/cooling.drl" : "rules/valve.drl", r.stages(), r.maker(),
					r.setting(), r.value(),
					r.authority(), r.because(), r.slip());
		};
		state.rules().put(r.id(), changed);
	}

	static String other(State.Rule rule) {
		return switch (rule.value()) {
			case "1" -> "2";
			case "2" -> "1";
			case "energised in cooling" -> "energised in heating";
			default -> "energised in cooling";
		};
	}

	/** Takes a rule out. */
	void remove(State state, Predicate<Integer> mine) {
		state.rules().values().stream().filter(r -> mine.test(r.id())).findFirst().ifPresent(r -> state.rules().remove(r.id()));
	}

	/** Works on the table. */
	void table(State state) {
		List<State.Row> rows = state.rows();
		int at = random.nextInt(rows.size());
		State.Row row = rows.get(at);
		List<String> free = MAKERS.stream().filter(m -> rows.stream().noneMatch(r -> r.maker().equals(m))).toList();
		switch (random.nextInt(4)) {
			case 0 -> rows.set(at, new State.Row(row.id(), row.maker(), row.value().endsWith("cooling") ? "energised in heating" : "energised in cooling",
					row.authority()));
			case 1 -> {
				if (free.isEmpty()) {
					rows.remove(at);
				} else {
					rows.add(at, new State.Row(fresh(), free.get(0), valve(), "shop practice"));
				}
			}
			case 2 -> rows.set(at, new State.Row(row.id(), row.maker(), row.value(), row.authority().startsWith("shop") ? "maker's instructions"
					: "shop practice"));
			default -> {
				rows.add(rows.remove(at));
				rows.set(0, new State.Row(rows.get(0).id(), rows.get(0).maker(), rows.get(0).value(), rows.get(0).authority().startsWith("code") ? "shop practice"
						: "code or safety"));
			}
		}
	}

	/** Works on the jobs. */
	void job(State state) {
		if (random.nextInt(3) == 0) {
			addJob(state);
			return;
		}
		State.Job job = one(List.copyOf(state.jobs().values()));
		state.jobs().put(job.id(), new State.Job(job.id(), job.name(), 3 - job.stages(), job.maker(), job.expected()));
	}
}
