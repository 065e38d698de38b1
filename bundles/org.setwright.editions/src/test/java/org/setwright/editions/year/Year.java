package org.setwright.editions.year;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Predicate;
import org.setwright.check.Progress;
import org.setwright.editions.Shop;
import org.setwright.editions.joining.Conflict;
import org.setwright.editions.joining.JoinPlan;
import org.setwright.editions.kept.Kept;
import org.setwright.editions.kept.NotDone;
import org.setwright.editions.kept.Who;
import org.setwright.editions.signing.SignedOff;

/** A shop's year: fifty editions by three authors on the practice in force and on two trials beside it, and the truth about each. */
final class Year implements AutoCloseable {
	static final int EDITIONS = 50;
	private static final List<Who> AUTHORS = List.of(Shop.TRINE, Shop.ODD, Shop.MARIT);
	private static final Predicate<Integer> ANY = id -> true;

	/** One edition as it was made. @param files what Git has to show for it */
	record Node(String hash, State state, List<Node> parents, Who by, String message, Map<String, String> files) {
	}

	private final Shop shop;
	private final Hands hands;
	private final List<Node> nodes = new ArrayList<>();
	private final List<SignedOff> signed = new ArrayList<>();
	private Node open;
	int conflicts;
	int throughGit;

	Year(Path folder, long seed) throws IOException, NotDone {
		shop = Shop.started(Files.createDirectories(folder));
		shop.git("symbolic-ref", "HEAD", "refs/heads/main");
		hands = new Hands(seed);
	}

	Shop shop() {
		return shop;
	}

	List<Node> nodes() {
		return nodes;
	}

	List<SignedOff> signed() {
		return signed;
	}

	Node last() {
		return open;
	}

	void play() throws IOException, NotDone {
		keep(hands.begin());
		months(11);
		Node winter = open;
		shop.editions().lines().begin("winter-trial");
		months(5, id -> id % 2 == 1, false);
		Node trial = open;
		back(winter);
		months(5, id -> id % 2 == 0, true);
		join("winter-trial", winter, trial, Optional.empty());
		signLast();
		broken();
		months(6);
		Node makers = open;
		shop.editions().lines().begin("makers-trial");
		int contested = open.state().rules().keySet().iterator().next();
		months(3, id -> id % 2 == 1 && id != contested, false);
		contest(contested, 3);
		Node second = open;
		back(makers);
		contest(contested, 4);
		months(4, id -> id % 2 == 0 && id != contested, true);
		join("makers-trial", makers, second, Optional.of(contested));
		signLast();
		tableGetsAnotherName();
		comesBack();
		while (nodes.size() < EDITIONS) {
			months(1);
		}
	}

	private void months(int editions) throws IOException, NotDone {
		months(editions, ANY, true);
	}

	/** @param mine which rules may be touched @param all whether rows and jobs may be, too */
	private void months(int editions, Predicate<Integer> mine, boolean all) throws IOException, NotDone {
		for (int i = 0; i < editions; i++) {
			State next;
			do {
				next = open.state().copy();
				hands.work(next, mine);
				if (hands.random().nextInt(3) == 0) {
					hands.work(next, mine);
				}
				if (all && hands.random().nextInt(3) == 0) {
					hands.table(next);
				}
				if (all && hands.random().nextInt(3) == 0) {
					hands.job(next);
				}
			} while (next.files().equals(open.state().files()));
			keep(next);
		}
	}

	private void contest(int id, int how) throws IOException, NotDone {
		State next = open.state().copy();
		State.Rule r = next.rules().get(id);
		next.rules().put(id, new State.Rule(r.id(), r.name(), r.file(), r.stages(), r.maker(), r.setting(), how == 3 ? Hands.other(r) : r.value(),
				State.AUTHORITIES.get((State.AUTHORITIES.indexOf(r.authority()) + how) % 5), r.because(), false));
		keep(next);
	}

	private void broken() throws IOException, NotDone {
		Node before = open;
		State next = open.state().copy();
		State.Rule r = next.rules().values().iterator().next();
		next.rules().put(r.id(), new State.Rule(r.id(), r.name(), r.file(), r.stages(), r.maker(), r.setting(), r.value(), r.authority(), r.because(),
				true));
		keep(next);
		keep(before.state().copy());
	}

	private void tableGetsAnotherName() throws IOException, NotDone {
		keep(new State(open.state().rules(), open.state().rows(), open.state().jobs(), "valves"));
	}

	/** A rule is taken out, and brought back with the tool a little later. */
	private void comesBack() throws IOException, NotDone {
		Node had = open;
		State next = open.state().copy();
		State.Rule gone = next.rules().values().iterator().next();
		hands.remove(next, id -> id == gone.id());
		keep(next);
		shop.editions().restore(shop.editions().edition(had.hash()), gone.name());
		State again = open.state().copy();
		again.rules().put(gone.id(), gone);
		keepAsItLies(again);
		throughGit--;
	}

	private void keep(State state) throws IOException, NotDone {
		Map<String, String> files = state.files();
		for (String path : open == null ? List.<String>of() : List.copyOf(open.files().keySet())) {
			if (!files.containsKey(path)) {
				shop.delete(path);
			}
		}
		for (Map.Entry<String, String> file : files.entrySet()) {
			shop.write(file.getKey(), file.getValue());
		}
		keepAsItLies(state);
	}

	/** Every fifth edition is made with command-line Git alone. */
	private void keepAsItLies(State state) throws IOException, NotDone {
		Who by = AUTHORS.get(hands.random().nextInt(AUTHORS.size()));
		String message = "Edition " + (nodes.size() + 1) + "\n\nBecause of reason " + hands.fresh() + ".";
		if (++throughGit % 5 == 0) {
			shop.git("add", "-A");
			shop.git("-c", "user.name=" + by.name(), "-c", "user.email=" + by.email(), "commit", "-q", "-m", message);
		} else {
			shop.keep(message, by);
		}
		made(state, open == null ? List.of() : List.of(open), by, message);
	}

	private void made(State state, List<Node> parents, Who by, String message) throws IOException {
		Map<String, String> files = new TreeMap<>();
		for (String path : shop.git("ls-files").lines().toList()) {
			files.put(path, shop.read(path));
		}
		open = new Node(shop.git("rev-parse", "HEAD"), state, parents, by, message, files);
		nodes.add(open);
		if (!shop.git("status", "--porcelain").isEmpty() || shop.git("fsck", "--strict", "--no-dangling")
				.matches("(?s).*(error|missing|broken|warning).*")) {
			throw new IOException("Git disagrees after " + message + ": " + shop.git("status") + shop.git("fsck", "--strict"));
		}
	}

	private void back(Node to) throws NotDone {
		shop.editions().lines().open("main");
		open = to;
	}

	/** @param contested the rule both changed; the trial's way is chosen */
	private void join(String name, Node base, Node trial, Optional<Integer> contested) throws IOException, NotDone {
		Node here = open;
		JoinPlan plan = shop.editions().lines().join(name);
		List<String> expected = contested.map(id -> List.of('"' + base.state().rules().get(id).name() + '"')).orElse(List.of());
		if (!plan.conflicts().stream().map(Conflict::what).toList().equals(expected)) {
			throw new IOException("expected to be asked about " + expected + ", not " + plan.conflicts());
		}
		conflicts += expected.size();
		for (Conflict conflict : plan.conflicts()) {
			plan = plan.decided(shop.editions().repo(), conflict, conflict.theirs());
		}
		String message = "Joined " + name;
		shop.editions().lines().keepJoined(plan, message, Optional.of(Shop.MARIT));
		State joined = here.state().copy();
		for (Integer id : base.state().rules().keySet()) {
			if (!trial.state().rules().containsKey(id)) {
				joined.rules().remove(id);
			}
		}
		trial.state().rules().forEach((id, rule) -> {
			if (!rule.equals(base.state().rules().get(id))) {
				joined.rules().put(id, rule);
			}
		});
		made(inTheOrderOfTheFiles(joined), List.of(here, trial), Shop.MARIT, message);
	}

	/** Where joined rules stand is the tool's choice; what they are is not. */
	private State inTheOrderOfTheFiles(State joined) throws IOException {
		Map<String, String> expected = joined.files();
		StringBuilder all = new StringBuilder();
		for (Map.Entry<String, String> file : expected.entrySet()) {
			String text = shop.read(file.getKey());
			if (file.getKey().startsWith("rules/")) {
				all.append(text);
			} else if (!text.equals(file.getValue())) {
				throw new IOException("joined, " + file.getKey() + " is " + text);
			}
		}
		State ordered = new State(Map.of(), joined.rows(), joined.jobs(), joined.table());
		joined.rules().values().stream().sorted(java.util.Comparator.comparingInt(r -> all.indexOf(r.text()))).forEach(r -> ordered.rules().put(r.id(), r));
		for (State.Rule rule : joined.rules().values()) {
			if (!shop.read(rule.file()).contains(rule.text())) {
				throw new IOException("joined, " + rule.file() + " misses " + rule.text());
			}
		}
		long rules = all.toString().lines().filter(l -> l.startsWith("rule \"")).count();
		if (rules != joined.rules().size()) {
			throw new IOException("joined, there are " + rules + " rules instead of " + joined.rules().size());
		}
		return ordered;
	}

	private void signLast() throws NotDone {
		Kept last = shop.editions().demandLast();
		signed.add(0, shop.editions().signOffs().sign(last, shop.editions().inHand().content(), Shop.MARIT, "", Progress.UNWATCHED));
	}

	/** @return what Git shows of a file at an edition */
	String shown(Node node, String path) throws IOException {
		return shop.git("show", node.hash() + ":" + path);
	}

	static String text(byte[] bytes) {
		return new String(bytes, StandardCharsets.UTF_8);
	}

	@Override
	public void close() {
		shop.close();
	}
}
