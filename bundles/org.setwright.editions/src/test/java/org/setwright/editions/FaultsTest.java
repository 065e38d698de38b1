package org.setwright.editions;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.setwright.editions.kept.Kept;
import org.setwright.editions.kept.NotDone;
import org.setwright.trade.Trade;

/** What can go wrong on a disk and between programs: each is said plainly, and nothing is lost. */
class FaultsTest {
	private static final String A = Shop.rule("A", "shop practice", "OutdoorUnit( )", "propose( COOL_STAGES, 1 );");
	private static final String B = Shop.rule("B", "shop practice", "OutdoorUnit( )", "propose( CHANGEOVER_VALVE, ENERGISED_IN_COOLING );");

	@TempDir
	Path folder;

	private Shop kept() throws IOException, NotDone {
		Shop shop = Shop.in(folder);
		shop.write("rules/a.drl", A).keep("First");
		return shop;
	}

	private static void hook(Shop shop, String name, String script) throws IOException {
		Path hook = shop.folder().resolve(".git/hooks/" + name);
		Files.createDirectories(hook.getParent());
		Files.writeString(hook, "#!/bin/sh\n" + script + "\n");
		hook.toFile().setExecutable(true);
	}

	/** Runs {@link KeepOnce} in a process of its own. @param limit what the shell says before @return what it printed */
	private static String keepElsewhere(Shop shop, String limit) throws IOException {
		String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
		Process process = new ProcessBuilder("bash", "-c", limit + "exec \"$@\"", "bash", java, "-XX:-UsePerfData", "-cp",
				System.getProperty("java.class.path"),
				KeepOnce.class.getName(), shop.folder().toString(), "From elsewhere").redirectErrorStream(true).start();
		return new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8).lines()
				.filter(l -> l.startsWith("kept") || l.startsWith("refused"))
				.findFirst().orElse("cut off");
	}

	private static void assertSound(Shop shop, String wanted) throws IOException, NotDone {
		assertEquals(wanted, shop.read("rules/a.drl"), "the work in hand");
		assertFalse(shop.git("fsck", "--strict", "--no-dangling").contains("error"));
		assertEquals("First", shop.editions().history().get(shop.editions().history().size() - 1).title());
	}

	@ParameterizedTest
	@ValueSource(strings = { "pre-commit", "commit-msg", "post-commit" })
	void aProgramCutOffWhileItKeepsLosesNothing(String moment) throws IOException, NotDone {
		try (Shop shop = kept()) {
			shop.write("rules/a.drl", A + B);
			hook(shop, moment, "kill -9 $(cat .git/keeping)");
			assertEquals("cut off", keepElsewhere(shop, ""));
			Files.delete(shop.folder().resolve(".git/hooks/" + moment));
			assertSound(shop, A + B);
			boolean done = shop.editions().history().size() == 2;
			assertEquals(moment.equals("post-commit"), done);
			if (!done) {
				Files.deleteIfExists(shop.folder().resolve(".git/index.lock"));
				assertEquals("Second", shop.keep("Second").title());
			}
			assertEquals("", shop.git("status", "--porcelain"));
		}
	}

	@Test
	void aFullDiskIsSaidAndKeepingWorksOnceThereIsRoom() throws IOException, NotDone {
		try (Shop shop = kept()) {
			StringBuilder notes = new StringBuilder();
			new Random(7).ints(60_000, 'a', 'z').forEach(c -> notes.append((char) c));
			shop.write("rules/a.drl", A + B).write("jobs/large.yaml", Shop.job("Large", 2) + "notes: " + notes + "\n");
			String said = keepElsewhere(shop, "ulimit -f 8; ");
			assertTrue(said.startsWith("refused: There is no room left on the disk to keep the edition. Nothing that was kept is lost"), said);
			assertSound(shop, A + B);
			assertEquals(1, shop.editions().history().size());
			assertTrue(keepElsewhere(shop, "").startsWith("kept "));
			assertEquals("", shop.git("status", "--porcelain"));
		}
	}

	@ParameterizedTest
	@ValueSource(strings = { "index.lock", "refs/heads/LINE.lock" })
	void aLockLeftBehindIsNamed(String lock) throws IOException, NotDone {
		try (Shop shop = kept()) {
			shop.write("rules/a.drl", A + B);
			Path left = shop.folder().resolve(".git").resolve(lock.replace("LINE", shop.editions().repo().line().orElseThrow()));
			Files.writeString(left, "");
			NotDone refused = assertThrows(NotDone.class, () -> shop.keep("Second"));
			assertTrue(refused.what().startsWith("Another program is at work in this repository, or one was cut off there"), refused.what());
			assertTrue(refused.remedy().contains("delete the file " + left.toRealPath()), refused.remedy());
			assertSound(shop, A + B);
			Files.delete(left);
			assertEquals("Second", shop.keep("Second").title());
		}
	}

	@Test
	void aDamagedFileOfAnOldEditionIsSaidAndTheRestGoesOn() throws IOException, NotDone {
		try (Shop shop = kept()) {
			Kept first = shop.editions().demandLast();
			damage(shop, shop.git("rev-parse", "HEAD:rules/a.drl"));
			Kept second = shop.write("rules/a.drl", A + B).keep("Second");
			assertEquals(List.of(second, first), shop.editions().history());
			NotDone refused = assertThrows(NotDone.class, () -> shop.editions().at(first));
			assertTrue(refused.what().startsWith("A part of the history cannot be read"), refused.getMessage());
			assertTrue(refused.remedy().startsWith("The files you work on are not touched. Fetch the history anew"), refused.remedy());
			assertThrows(NotDone.class, () -> shop.editions().restore(first));
			Kept again = shop.write("rules/a.drl", A + B.replace("COOLING", "HEATING")).keep("Heating");
			try (EditionsOf fresh = EditionsOf.find(folder, Trade.catalogue(), List.of()).orElseThrow()) {
				assertEquals(List.of("\"B\": outcome changed"), fresh.changes(fresh.at(second), fresh.at(again)).rules().stream().map(c -> c.shown()).toList());
			}
			shop.write("rules/a.drl", A + B);
			assertEquals(A + B, shop.read("rules/a.drl"));
			assertEquals("Third", shop.write("rules/a.drl", B).keep("Third").title());
		}
	}

	@ParameterizedTest
	@ValueSource(strings = { "HEAD", "HEAD^{tree}" })
	void aDamagedEditionIsSaidAndTheFilesStay(String what) throws IOException, NotDone {
		try (Shop shop = kept()) {
			shop.write("rules/a.drl", A + B);
			damage(shop, shop.git("rev-parse", what));
			try (EditionsOf fresh = EditionsOf.find(folder, Trade.catalogue(), List.of()).orElseThrow()) {
				NotDone refused = assertThrows(NotDone.class, fresh::history);
				assertTrue(refused.what().startsWith("A part of the history cannot be read"), refused.getMessage());
			}
			assertEquals(A + B, shop.read("rules/a.drl"));
		}
	}

	private static void damage(Shop shop, String object) throws IOException {
		Path loose = shop.folder().resolve(".git/objects/" + object.substring(0, 2) + "/" + object.substring(2));
		byte[] bytes = Files.readAllBytes(loose);
		for (int i = bytes.length / 3; i < bytes.length; i++) {
			bytes[i] ^= 0x5A;
		}
		loose.toFile().setWritable(true);
		Files.write(loose, bytes);
	}

	@Test
	void aLockThatKeepsFromGoingOverIsNamed() throws IOException, NotDone {
		try (Shop shop = kept()) {
			shop.git("branch", "other");
			Path left = shop.folder().resolve(".git/HEAD.lock");
			Files.writeString(left, "");
			NotDone refused = assertThrows(NotDone.class, () -> shop.editions().lines().open("other"));
			assertTrue(refused.remedy().contains("delete the file " + left.toRealPath()), refused.getMessage());
			Files.delete(left);
			shop.editions().lines().open("other");
		}
	}

	@ParameterizedTest
	@ValueSource(strings = { "pre-commit", "commit-msg" })
	void anEditionKeptBySomebodyElseInTheSameMomentIsNotOverwritten(String moment) throws IOException, NotDone {
		try (Shop shop = kept()) {
			shop.write("rules/a.drl", A + B);
			hook(shop, moment, "new=$(git commit-tree -p HEAD -m Theirs HEAD^{tree}) && git update-ref HEAD $new");
			NotDone refused = assertThrows(NotDone.class, () -> shop.keep("Ours"));
			assertTrue(refused.what().startsWith("Somebody else kept an edition at the same moment"), refused.getMessage());
			Files.delete(shop.folder().resolve(".git/hooks/" + moment));
			assertEquals("Theirs", shop.git("log", "-1", "--format=%s"));
			assertSound(shop, A + B);
			assertEquals("Ours", shop.keep("Ours").title());
			assertEquals(3, shop.git("rev-list", "HEAD").lines().count());
		}
	}

	@Test
	void twoWorkbenchesOnOneBookLoseNothing() throws Exception {
		try (Shop shop = kept(); EditionsOf other = EditionsOf.find(folder, Trade.catalogue(), List.of()).orElseThrow()) {
			ExecutorService both = Executors.newFixedThreadPool(2);
			List<Future<Integer>> done = new ArrayList<>();
			for (EditionsOf one : List.of(shop.editions(), other)) {
				done.add(both.submit(() -> busy(one, one == other ? "other" : "one")));
			}
			int kept = 0;
			for (Future<Integer> each : done) {
				kept += each.get();
			}
			both.shutdown();
			assertTrue(kept > 0, "somebody got through");
			if (!shop.editions().work().notKept().isEmpty()) {
				shop.keep("The rest");
			}
			assertEquals("", shop.git("status", "--porcelain"));
			assertSound(shop, A);
			for (String who : List.of("one", "other")) {
				for (int i = 0; i < 12; i++) {
					assertEquals(Shop.job(who + i, 1).strip(), shop.git("show", "HEAD:jobs/" + who + i + ".yaml"));
				}
			}
		}
	}

	private Integer busy(EditionsOf editions, String who) throws IOException {
		int kept = 0;
		for (int i = 0; i < 12; i++) {
			Shop.write(folder, "jobs/" + who + i + ".yaml", Shop.job(who + i, 1));
			try {
				editions.keep(editions.work(), who + " " + i, Optional.of(Shop.ODD));
				kept++;
			} catch (NotDone refused) {
				assertFalse(refused.remedy().isBlank());
				assertFalse(refused.what().contains("Exception"), refused.what());
			}
		}
		return kept;
	}

	@Test
	void whatCommandLineGitLeftUnfinishedIsFinishedThere() throws IOException, NotDone {
		try (Shop shop = kept()) {
			shop.git("checkout", "-q", "-b", "other");
			shop.write("rules/a.drl", A.replace("1 )", "2 )")).keep("Two");
			shop.git("checkout", "-q", "-");
			shop.write("rules/a.drl", A.replace("1 )", "3 )")).keep("Three");
			assertThrows(IOException.class, () -> shop.git("merge", "other"));
			NotDone refused = assertThrows(NotDone.class, () -> shop.keep("Half joined"));
			assertTrue(refused.what().startsWith("Something begun with command-line Git is not finished here"), refused.what());
			assertThrows(NotDone.class, () -> shop.editions().lines().open("other"));
			shop.git("merge", "--abort");
			assertEquals("Done", shop.write("rules/a.drl", B).keep("Done").title());
		}
	}

	@Test
	void aHookThatSaysNoIsQuoted() throws IOException, NotDone {
		try (Shop shop = kept()) {
			hook(shop, "pre-commit", "echo 'Not on a Sunday.' >&2; exit 1");
			shop.write("rules/a.drl", B);
			assertEquals("A check that this repository runs said no (Not on a Sunday.).", assertThrows(NotDone.class, () -> shop.keep("Second")).what());
			assertEquals(B, shop.read("rules/a.drl"));
		}
	}

	@Test
	void nothingIsLeftBesideTheFilesWhenAnEditionIsRefused() throws IOException, NotDone {
		try (Shop shop = kept()) {
			hook(shop, "pre-commit", "exit 1");
			shop.write("rules/a.drl", B);
			assertThrows(NotDone.class, () -> shop.keep("Second"));
			try (Stream<Path> locks = Files.walk(shop.folder())) {
				assertEquals(List.of(), locks.filter(f -> f.toString().endsWith(".lock") || f.toString().endsWith(".part")).toList());
			}
		}
	}
}
