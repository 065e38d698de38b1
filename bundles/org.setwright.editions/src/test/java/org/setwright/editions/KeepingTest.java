package org.setwright.editions;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.setwright.editions.git.WorkInHand;
import org.setwright.editions.kept.Kept;
import org.setwright.editions.kept.NotDone;
import org.setwright.trade.Trade;

/** Starting a repository, keeping editions, and their history, beside command-line Git. */
class KeepingTest {
	private static final String PUMP = "OutdoorUnit( kind == AIR_SOURCE_HEAT_PUMP )";
	private static final String A = Shop.rule("A", "shop practice", PUMP, "propose( COOL_STAGES, 1 );");
	private static final String B = Shop.rule("B", "shop practice", PUMP, "propose( CHANGEOVER_VALVE, ENERGISED_IN_COOLING );");

	@TempDir
	Path folder;

	@Test
	void whatIsKeptIsWhatGitSees() throws IOException, NotDone {
		try (Shop shop = Shop.in(folder)) {
			assertEquals(Optional.empty(), shop.editions().last());
			Kept first = shop.write("rules/a.drl", A).write("jobs/one.yaml", Shop.job("One", 1)).keep("First edition\n\nWe begin.", Shop.ODD);
			assertEquals(first.id().hash(), shop.git("rev-parse", "HEAD"));
			assertEquals("Odd Bakke <odd@fennimore.example>", shop.git("log", "-1", "--format=%an <%ae>"));
			assertEquals("We begin.", first.reason());
			Kept second = shop.write("rules/a.drl", A + "\n" + B).delete("jobs/one.yaml").keep(shop.editions().suggestion());
			assertEquals("", shop.git("status", "--porcelain"));
			assertEquals("book.yaml\nrules/a.drl", shop.git("ls-files"));
			assertEquals(List.of(second, first), shop.editions().history());
			assertEquals("1 rule added, 1 job removed\n\n- \"B\": added\n- job One: removed", second.message().strip());
			assertEquals(List.of(first), shop.editions().history("jobs/one.yaml").subList(1, 2));
			shop.git("fsck", "--strict");
		}
	}

	@Test
	void otherFilesAndWhatIsStagedForThemStayAlone() throws IOException, NotDone {
		Shop.run(folder, java.util.Map.of(), List.of("git", "init", "-q"));
		Path book = folder.resolve("practice/book");
		Files.createDirectories(book);
		Files.writeString(folder.resolve("invoice.txt"), "unpaid");
		Files.writeString(folder.resolve("practice/letter.txt"), "dear");
		try (Shop shop = Shop.in(book)) {
			Files.writeString(book.resolve("notes.tmp"), "x");
			shop.git("add", "../../invoice.txt");
			shop.write("rules/a.drl", A).keep("First");
			assertEquals("practice/book/book.yaml\npractice/book/rules/a.drl", shop.git("-C", folder.toString(), "ls-tree", "-r", "--name-only", "HEAD"));
			assertEquals("A  invoice.txt\n?? practice/book/notes.tmp\n?? practice/letter.txt", shop.git("-C", folder.toString(), "status", "--porcelain"));
			Shop.write(folder, "invoice.txt", "paid");
			shop.git("-C", folder.toString(), "commit", "-qam", "Paid");
			assertEquals(List.of("First"), shop.editions().history().stream().map(Kept::title).toList());
			assertEquals("First", shop.editions().demandLast().title());
		}
	}

	@Test
	void nothingIsKeptWhenNothingChangedOrTheWorkIsNotWhatWasSeen() throws IOException, NotDone {
		try (Shop shop = Shop.in(folder)) {
			shop.write("rules/a.drl", A).keep("First");
			assertEquals("Nothing has changed since the last edition.", assertThrows(NotDone.class, () -> shop.keep("Again")).what());
			WorkInHand seen = shop.write("rules/a.drl", B).editions().work();
			shop.write("rules/a.drl", A + B);
			NotDone refused = assertThrows(NotDone.class, () -> shop.editions().keep(seen, "B", Optional.empty()));
			assertEquals("Files of the book changed while you were looking, so nothing was kept.", refused.what());
			assertTrue(assertThrows(NotDone.class, () -> shop.keep(" ")).remedy().contains("why"));
			assertEquals(1, shop.editions().history().size());
		}
	}

	@Test
	void aBookOutsideAnyRepositoryHasNoEditions() throws IOException, NotDone {
		Shop.write(folder, "book.yaml", "book: A\n");
		assertEquals(Optional.empty(), EditionsOf.find(folder, Trade.catalogue(), List.of(folder.toRealPath())));
	}

	@Test
	void aRepositoryIsNotStartedInsideAnother() throws IOException, NotDone {
		try (Shop outer = Shop.in(folder)) {
			Shop.write(folder, "second/book.yaml", "book: B\n");
			try (EditionsOf inner = EditionsOf.start(folder.resolve("second"), Trade.catalogue(), List.of())) {
				assertEquals("second", inner.repo().prefix());
				assertEquals(false, Files.exists(folder.resolve("second/.git")));
			}
		}
	}

	@Test
	void aWorktreeOfGitIsUnderstood() throws IOException, NotDone {
		try (Shop shop = Shop.in(folder.resolve("main"))) {
			shop.write("rules/a.drl", A).keep("First");
			shop.git("worktree", "add", "-q", "../trial");
			try (Shop trial = Shop.started(folder.resolve("trial"))) {
				trial.write("rules/b.drl", B).keep("In the worktree", Shop.ODD);
				assertEquals("In the worktree", trial.git("log", "-1", "--format=%s", "trial"));
				assertEquals("First", shop.editions().demandLast().title());
			}
		}
	}

	@Test
	void editionsAreFoundByNameAsPeopleWriteThem() throws IOException, NotDone {
		try (Shop shop = Shop.in(folder)) {
			Kept first = shop.write("rules/a.drl", A).keep("First");
			Kept second = shop.write("rules/a.drl", B).keep("Second");
			EditionsOf editions = shop.editions();
			assertEquals(List.of(second, first, first, second), List.of(editions.edition("last"), editions.edition("HEAD~1"),
					editions.edition(first.id().shown()), editions.edition("HEAD")));
			assertThrows(NotDone.class, () -> editions.edition("feedfeed"));
			assertThrows(NotDone.class, () -> editions.edition("no such^^^{"));
		}
	}

	@Test
	void keepingIsRefusedWhereItWouldBeLostFromSight() throws IOException, NotDone {
		try (Shop shop = Shop.in(folder)) {
			shop.write("rules/a.drl", A).keep("First");
			shop.git("checkout", "-q", "--detach");
			shop.write("rules/a.drl", B);
			assertTrue(assertThrows(NotDone.class, () -> shop.keep("Second")).remedy().contains("trial NAME"));
			assertEquals(B, shop.read("rules/a.drl"));
		}
	}

	@Test
	void lookingAtABookFromSomebodyElseRunsNothingOfTheirs() throws IOException, NotDone {
		try (Shop theirs = Shop.in(folder)) {
			theirs.write("rules/a.drl", A).write("jobs/one.yaml", Shop.job("One", 1)).keep("First");
			Path ran = folder.resolve("ran");
			Path program = folder.resolve("program");
			Files.writeString(program, "#!/bin/sh\ntouch '" + ran + "'\nexit 1\n");
			program.toFile().setExecutable(true);
			theirs.git("tag", "-a", "-m", "x\n-----BEGIN PGP SIGNATURE-----\n\nabc\n-----END PGP SIGNATURE-----", "signed-off/x");
			theirs.git("config", "filter.own.clean", program.toString());
			theirs.git("config", "core.fsmonitor", program.toString());
			theirs.git("config", "gpg.program", program.toString());
			theirs.write(".gitattributes", "* filter=own\n").write("rules/a.drl", A + B);
			try (EditionsOf looking = EditionsOf.find(folder, Trade.catalogue(), List.of()).orElseThrow()) {
				assertEquals(List.of("rules/a.drl"), looking.work().notKept());
				assertEquals(1, looking.notKept().rules().size());
				assertEquals(1, looking.signOffs().all().size());
				looking.answers();
				assertEquals(false, Files.exists(ran));
				looking.lines().addPlace("shop", "https://server.example/x");
				assertEquals(program.toString(), theirs.git("config", "filter.own.clean"), "their settings stay as they are");
				assertEquals("https://server.example/x", theirs.git("config", "remote.shop.url"));
			}
		}
	}

	@Test
	void linesThatEndAsOnWindowsAreNoChangeByThemselves() throws IOException, NotDone {
		try (Shop shop = Shop.in(folder)) {
			shop.git("config", "core.autocrlf", "true");
			shop.write("rules/a.drl", A.replace("\n", "\r\n")).write("jobs/one.yaml", Shop.job("One", 1).replace("\n", "\r\n")).keep("First");
			assertEquals(A.strip(), shop.git("show", "HEAD:rules/a.drl"));
			assertEquals(List.of(), shop.editions().work().notKept());
			assertTrue(shop.editions().notKept().none());
			shop.write("rules/a.drl", (A + B).replace("\n", "\r\n"));
			assertEquals(List.of("\"B\": added"), shop.editions().notKept().rules().stream().map(c -> c.shown()).toList());
		}
	}
}
