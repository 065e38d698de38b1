package org.setwright.editions.year;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.setwright.editions.compare.Aspect;

/** What the invented shop knows at one moment: the truth that the answers about its editions are held against. */
record State(Map<Integer, Rule> rules, List<Row> rows, Map<Integer, Job> jobs, String table) {
	static final String STAGES = "cooling stages";
	static final String VALVE = "changeover valve";
	static final List<String> AUTHORITIES = List.of("factory default", "shop practice", "maker's instructions", "observed on site", "code or safety");

	State {
		rules = new LinkedHashMap<>(rules);
		rows = new ArrayList<>(rows);
		jobs = new LinkedHashMap<>(jobs);
	}

	State copy() {
		return new State(rules, rows, jobs, table);
	}

	/** @param maker empty for any @param slip whether it is written with a fault */
	record Rule(int id, String name, String file, int stages, String maker, String setting, String value, String authority, String because,
			boolean slip) {
		String text() {
			String when = "OutdoorUnit( stages == " + stages + (maker.isEmpty() ? "" : ", maker == \"" + maker + "\"") + " )";
			String word = setting.equals(STAGES) ? "COOL_STAGES, " + value : "CHANGEOVER_VALVE, " + value.toUpperCase(java.util.Locale.ROOT).replace(' ', '_');
			return "rule \"" + name + "\"\n    @authority( \"" + authority + "\" )\n    @because( \"" + because
					+ "\" )\n    @source( common practice )\nwhen\n    "
					+ when + "\nthen\n    " + (slip ? "prpose" : "propose") + "( " + word + " );\n    find( MARK_" + id + " );\nend\n";
		}

		boolean speaks(Job job) {
			return job.stages == stages && (maker.isEmpty() || maker.equals(job.maker));
		}

		Set<Aspect> against(Rule other) {
			Set<Aspect> aspects = EnumSet.noneOf(Aspect.class);
			if (stages != other.stages || !maker.equals(other.maker)) {
				aspects.add(Aspect.CONDITION);
			}
			if (!value.equals(other.value) || slip != other.slip) {
				aspects.add(Aspect.OUTCOME);
			}
			add(aspects, Aspect.AUTHORITY, authority, other.authority);
			add(aspects, Aspect.WORDING, because, other.because);
			add(aspects, Aspect.NAME, name, other.name);
			add(aspects, Aspect.PLACE, file, other.file);
			return aspects;
		}
	}

	/** A row of the table of makers. */
	record Row(int id, String maker, String value, String authority) {
		Set<Aspect> against(Row other) {
			Set<Aspect> aspects = EnumSet.noneOf(Aspect.class);
			add(aspects, Aspect.CONDITION, maker, other.maker);
			add(aspects, Aspect.OUTCOME, value, other.value);
			add(aspects, Aspect.AUTHORITY, authority, other.authority);
			return aspects;
		}
	}

	/** @param expected what it expects for the cooling stages; empty for nothing */
	record Job(int id, String name, int stages, String maker, String expected) {
		String text() {
			return "job: " + name + "\noutdoor unit: { kind: air-source heat pump, maker: " + maker + ", stages: " + stages
					+ ", valve energised in: unknown }\nindoor unit: { kind: air handler, fuel: none }\nauxiliary heat: none\n"
					+ (expected.isEmpty() ? "" : "expect: { cooling stages: " + expected + " }\n");
		}
	}

	private static void add(Set<Aspect> aspects, Aspect aspect, String one, String other) {
		if (!one.equals(other)) {
			aspects.add(aspect);
		}
	}

	boolean broken() {
		return rules.values().stream().anyMatch(Rule::slip);
	}

	/** @return every file of the book */
	Map<String, String> files() {
		Map<String, String> files = new TreeMap<>();
		files.put("book.yaml", "book: The practice of a year\n");
		rules.values().forEach(r -> files.merge(r.file, "// " + r.file + "\n\n" + r.text(), (a, b) -> a + "\n" + r.text()));
		StringBuilder makers = new StringBuilder("outdoor unit maker,=> changeover valve,authority,source\n");
		rows.forEach(r -> makers.append(r.maker).append(',').append(r.value).append(',').append(r.authority).append(",sheet of ").append(r.id)
				.append('\n'));
		files.put("tables/" + table + ".csv", makers.toString());
		jobs.values().forEach(j -> files.put("jobs/job-" + j.id + ".yaml", j.text()));
		return files;
	}

	/** @return what {@code job} comes to, worked out without the engine */
	String comesTo(Job job, String setting) {
		Map<Integer, Set<String>> byAuthority = new TreeMap<>(Comparator.reverseOrder());
		rules.values().stream().filter(r -> r.setting.equals(setting) && r.speaks(job))
				.forEach(r -> byAuthority.computeIfAbsent(AUTHORITIES.indexOf(r.authority), x -> new TreeSet<>()).add(r.value));
		if (setting.equals(VALVE)) {
			rows.stream().filter(r -> r.maker.equals(job.maker)).forEach(r -> byAuthority.computeIfAbsent(AUTHORITIES.indexOf(r.authority), x ->
					new TreeSet<>()).add(r.value));
		}
		if (byAuthority.isEmpty()) {
			return "gap";
		}
		Set<String> strongest = byAuthority.values().iterator().next();
		return strongest.size() == 1 ? strongest.iterator().next() : "dispute: " + String.join(" or ", strongest);
	}
}
