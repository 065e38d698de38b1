package org.setwright.editions.year;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.setwright.check.Progress;
import org.setwright.editions.EditionsOf;
import org.setwright.editions.compare.BookChanges;
import org.setwright.editions.compare.RuleChange;
import org.setwright.editions.impact.Cause;
import org.setwright.editions.impact.Culprit;
import org.setwright.editions.impact.Difference;
import org.setwright.editions.impact.Impact;
import org.setwright.editions.impact.JobImpact;
import org.setwright.editions.kept.Kept;
import org.setwright.editions.kept.NotDone;
import org.setwright.editions.lineage.Answer;
import org.setwright.editions.since.Since;
import org.setwright.editions.year.Year.Node;
import org.setwright.trade.Trade;

/** A shop's year is played by a generator that knows the truth, and every question about it is answered as it was. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class YearTest {
	private static final long SEED = Long.getLong("year.seed", 20261127);

	private Year year;
	private EditionsOf editions;

	@BeforeAll
	void play(@TempDir Path folder) throws IOException, NotDone {
		year = new Year(folder.resolve("book"), SEED);
		year.play();
		editions = year.shop().editions();
	}

	@AfterAll
	void end() {
		year.close();
	}

	private Kept kept(Node node) throws NotDone {
		return editions.edition(node.hash());
	}

	@Test
	void theYearIsAsLongAsItShouldBe() throws NotDone {
		assertEquals(50, year.nodes().size());
		assertEquals(3, year.nodes().stream().map(Node::by).distinct().count());
		assertEquals(3, editions.lines().all().size());
		assertEquals(List.of(2L, 1L), List.of(year.nodes().stream().filter(n -> n.parents().size() == 2).count(), (long) year.conflicts));
		assertTrue(year.throughGit >= 40);
	}

	@Test
	void commandLineGitAgreesOnEveryEdition() throws IOException, NotDone {
		assertEquals("", year.shop().git("status", "--porcelain"));
		assertEquals(Set.copyOf(year.shop().git("rev-list", "HEAD").lines().toList()), editions.history().stream().map(k -> k.id().hash())
				.collect(Collectors.toSet()));
		for (Node node : year.nodes()) {
			Kept kept = kept(node);
			assertEquals(node.message(), kept.message().strip());
			assertEquals(node.by(), kept.by());
			assertEquals(node.parents().stream().map(Node::hash).toList(), kept.parents().stream().map(p -> p.hash()).toList());
			assertEquals(List.copyOf(node.files().keySet()), year.shop().git("ls-tree", "-r", "--name-only", node.hash()).lines().toList());
			for (Map.Entry<String, String> file : node.files().entrySet()) {
				assertEquals(file.getValue(), Year.text(editions.at(kept).content().bytes(file.getKey())));
			}
			assertEquals(node.files().get("rules/valve.drl") == null ? "" : node.files().get("rules/valve.drl").strip(),
					node.files().get("rules/valve.drl") == null ? "" : year.shown(node, "rules/valve.drl"));
		}
		year.shop().git("fsck", "--strict", "--full");
	}

	@Test
	void theHistoryOfEveryFileIsAsItWas() throws NotDone {
		Set<String> paths = new TreeSet<>();
		year.nodes().forEach(n -> paths.addAll(n.files().keySet()));
		for (String path : paths) {
			Set<String> expected = new TreeSet<>();
			for (Node node : year.nodes()) {
				String is = node.files().get(path);
				boolean same = node.parents().isEmpty() && is == null || node.parents().stream().anyMatch(p -> java.util.Objects.equals(p.files().get(path), is));
				if (!same) {
					expected.add(node.hash());
				}
			}
			assertEquals(expected, editions.history(path).stream().map(k -> k.id().hash()).collect(Collectors.toCollection(TreeSet::new)), path);
		}
	}

	private Map<String, String> changes(Node before, Node after) throws NotDone {
		Map<String, String> told = new TreeMap<>();
		for (RuleChange change : editions.changes(editions.at(kept(before)), editions.at(kept(after))).rules()) {
			String what = change.before().isEmpty() ? "added" : change.after().isEmpty() ? "removed" : Truth.told(change.aspects());
			told.put(change.rule().name(), what);
		}
		return told;
	}

	@Test
	void whatEachEditionChangedIsTold() throws NotDone {
		for (Node node : year.nodes()) {
			for (Node parent : node.parents()) {
				assertEquals(Truth.changes(parent.state(), node.state()), changes(parent, node), node.message());
			}
		}
	}

	@Test
	void whatChangedBetweenAnyTwoEditionsIsTold() throws NotDone {
		Random random = new Random(SEED);
		for (int i = 0; i < 60; i++) {
			Node one = year.nodes().get(random.nextInt(year.nodes().size()));
			Node other = year.nodes().get(random.nextInt(year.nodes().size()));
			assertEquals(Truth.changes(one.state(), other.state()), changes(one, other), one.message() + " to " + other.message());
		}
	}

	@Test
	void everyRuleIsFollowedToWhereItCameFromAndWhoeverChangedItAnswers() throws NotDone {
		List<Answer> answers = editions.answers();
		assertEquals(year.last().state().rules().size() + year.last().state().rows().size(), answers.size());
		for (State.Rule rule : year.last().state().rules().values()) {
			Answer answer = answers.stream().filter(a -> a.rule().name().equals(rule.name())).findFirst().orElseThrow();
			List<String> told = answer.steps().stream().map(s -> s.edition().id().hash() + " "
					+ (s.change().before().isEmpty() ? "added" : Truth.told(s.change().aspects()))).toList();
			assertEquals(new TreeSet<>(Truth.history(year.nodes(), year.last(), rule.id())), new TreeSet<>(told), rule.name());
			Node last = year.nodes().stream().filter(n -> told.get(0).startsWith(n.hash())).findFirst().orElseThrow();
			assertEquals(last.by(), answer.last().orElseThrow().edition().by());
			assertEquals(last.message().contains("\n") ? last.message().split("\n\n")[1] : "", answer.last().orElseThrow().edition().reason());
		}
	}

	@Test
	void whichJobGetsWhatIsTold() throws NotDone {
		List<Node> sound = year.nodes().stream().filter(n -> !n.state().broken()).toList();
		Random random = new Random(SEED + 1);
		int found = 0;
		int together = 0;
		for (int i = 0; i < 12; i++) {
			Node one = sound.get(random.nextInt(sound.size()));
			Node other = i < 6 ? sound.get(random.nextInt(sound.size())) : sound.get(Math.min(sound.size() - 1, sound.indexOf(one) + 1 + random.nextInt(4)));
			BookChanges changes = editions.changes(editions.at(kept(one)), editions.at(kept(other)));
			Impact impact = editions.impact(changes, Progress.UNWATCHED).orElseThrow();
			assertEquals("", impact.fault());
			Set<Integer> jobs = new TreeSet<>(one.state().jobs().keySet());
			jobs.addAll(other.state().jobs().keySet());
			assertEquals(jobs.size(), impact.run());
			for (int id : jobs) {
				State.Job is = other.state().jobs().getOrDefault(id, one.state().jobs().get(id));
				State.Job was = one.state().jobs().getOrDefault(id, is);
				for (String setting : List.of(State.STAGES, State.VALVE)) {
					String before = one.state().comesTo(was, setting);
					String after = other.state().comesTo(is, setting);
					List<Difference> told = impact.jobs().stream().filter(j -> j.job().name().equals(is.name())).map(JobImpact::differences).flatMap(List::stream)
							.filter(d -> d.point().words().equals(setting)).toList();
					assertEquals(before.equals(after) ? List.of() : List.of(before + " -> " + after), told.stream().map(d -> d.before() + " -> " + d.after())
							.toList());
					if (!told.isEmpty()) {
						found++;
						together += responsible(one.state(), other.state(), was, is, setting, after, told.get(0).causes());
					}
				}
			}
		}
		assertTrue(found > 20 && together > 0, found + " differences, of which " + together + " by several changes together");
	}

	/** @return 1 when no change alone does it */
	private static int responsible(State before, State after, State.Job was, State.Job is, String setting, String wanted, List<Cause> causes) {
		Set<String> all = new HashSet<>(Truth.changes(before, after).keySet());
		if (was.stages() != is.stages()) {
			all.add("answers");
		}
		Set<String> alone = all.stream().filter(c -> Truth.mixed(before, after, was, is, setting, Set.of(c)).equals(wanted))
				.collect(Collectors.toCollection(TreeSet::new));
		List<Set<String>> told = new ArrayList<>();
		causes.forEach(c -> told.add(c.together().stream().map(YearTest::name).collect(Collectors.toCollection(TreeSet::new))));
		if (!alone.isEmpty()) {
			assertEquals(alone, told.stream().flatMap(Set::stream).collect(Collectors.toCollection(TreeSet::new)));
			assertTrue(told.stream().allMatch(c -> c.size() == 1));
			return 0;
		}
		assertEquals(1, told.size());
		assertEquals(wanted, Truth.mixed(before, after, was, is, setting, told.get(0)));
		for (String one : told.get(0)) {
			Set<String> fewer = new HashSet<>(told.get(0));
			fewer.remove(one);
			assertTrue(!Truth.mixed(before, after, was, is, setting, fewer).equals(wanted), one + " could be left out of " + told);
		}
		return 1;
	}

	private static String name(Culprit culprit) {
		return culprit.rule().map(r -> r.rule().name()).orElse("answers");
	}

	@Test
	void sinceWhenEachJobGetsItsValueIsTold() throws NotDone {
		int asked = 0;
		for (State.Job job : year.last().state().jobs().values()) {
			for (String setting : List.of(State.STAGES, State.VALVE)) {
				Since since = editions.since(editions.shelf().job(editions.inHand(), "jobs/job-" + job.id() + ".yaml").job(),
						Trade.catalogue().settings().stream().filter(s -> s.label().equals(setting)).findFirst().orElseThrow());
				assertEquals(year.last().state().comesTo(job, setting), since.value());
				assertEquals(Truth.since(year.last(), job, setting), since.origins().stream().map(o -> o.edition().id().hash())
						.collect(Collectors.toCollection(TreeSet::new)), job + " " + setting);
				since.origins().stream().filter(o -> o.before().isPresent()).forEach(origin -> {
					Node is = node(origin.edition());
					Node was = node(origin.before().orElseThrow());
					assertEquals(was.state().comesTo(job, setting), origin.valueBefore());
					responsible(was.state(), is.state(), job, job, setting, since.value(), origin.causes());
				});
				asked++;
			}
		}
		assertTrue(asked >= 16);
	}

	private Node node(Kept kept) {
		return year.nodes().stream().filter(n -> n.hash().equals(kept.id().hash())).findFirst().orElseThrow();
	}

	@Test
	void whoSignedWhatIsTold() throws IOException, NotDone {
		assertEquals(year.signed(), editions.signOffs().all());
		assertEquals(year.signed().get(0), editions.signOffs().before(editions.demandLast()).orElseThrow());
		for (var signed : year.signed()) {
			State state = node(signed.edition()).state();
			long expecting = state.jobs().values().stream().filter(j -> !j.expected().isEmpty()).count();
			long met = state.jobs().values().stream().filter(j -> !j.expected().isEmpty() && state.comesTo(j, State.STAGES).equals(j.expected())).count();
			assertEquals(state.jobs().size() + " jobs, " + met + " met, " + (expecting - met) + " not met, 0 not run", signed.cases());
			assertEquals(signed.edition().id().hash(), year.shop().git("rev-parse", signed.mark() + "^{commit}"));
		}
	}
}
