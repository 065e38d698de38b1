package org.setwright.editions;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.setwright.check.Progress;
import org.setwright.editions.git.Tag;
import org.setwright.editions.kept.Kept;
import org.setwright.editions.kept.NotDone;
import org.setwright.editions.kept.Who;
import org.setwright.editions.signing.About;
import org.setwright.editions.signing.Matter;
import org.setwright.editions.signing.Remark;
import org.setwright.editions.signing.Remarks;
import org.setwright.editions.signing.Review;
import org.setwright.editions.signing.SignedOff;
import org.setwright.editions.signing.Verified;

/** Remarks, reviewing and signing editions, and what a book demands of that. */
class SigningTest {
	private static final OffsetDateTime NOON = OffsetDateTime.parse("2026-03-02T12:00:00+01:00");
	private static final String PUMP = "OutdoorUnit( kind == AIR_SOURCE_HEAT_PUMP )";
	private static final String A = Shop.rule("A", "shop practice", PUMP, "propose( COOL_STAGES, 1 );");
	private static final String MET = Shop.job("One", 1) + "expect: { cooling stages: 1 }\n";
	private static final String DEMANDED = "book: Fennimore practice\nsign-off: demanded\n";

	@TempDir
	Path folder;

	private static Remark remark(Shop shop, Optional<String> thread, About about, Who by, OffsetDateTime on, Remark.Stand stand,
			String text) throws NotDone {
		return Remarks.write(shop.folder(), thread, about, shop.editions().last().map(k -> k.id().shown()).orElse(""), by, on, stand, text,
				Remarks.in(shop.editions().inHand().content()));
	}

	private static SignedOff sign(Shop shop, Who by) throws NotDone {
		return shop.editions().signOffs().sign(shop.editions().demandLast(), shop.editions().inHand().content(), by, "fine\nby me", Progress.UNWATCHED);
	}

	private static Verified verify(Shop shop) throws NotDone {
		return shop.editions().signOffs().verify(shop.editions().demandLast(), shop.editions().remarksAt(shop.editions().repo().tip().orElseThrow()),
				Progress.UNWATCHED);
	}

	private static List<String> lacks(Shop shop) throws NotDone {
		return verify(shop).lacks().stream().map(l -> l.what().replaceAll("[0-9a-f]{10}", "ID")).toList();
	}

	@Test
	void remarksAreThreadedPlainTextThatGoesWithTheBook() throws IOException, NotDone {
		try (Shop shop = Shop.in(folder)) {
			shop.write("rules/a.drl", A).write("jobs/one.yaml", MET).keep("First");
			Remark first = remark(shop, Optional.empty(), new About.OfRule("A"), Shop.MARIT, NOON, Remark.Stand.OPEN, "Why one?\nabout: nothing else");
			remark(shop, Optional.empty(), new About.OfRule("A"), Shop.MARIT, NOON, Remark.Stand.OPEN, "Another matter");
			remark(shop, Optional.of(first.thread()), first.about(), Shop.TRINE, NOON.plusHours(1), Remark.Stand.SETTLED, "Because they have one.");
			remark(shop, Optional.empty(), new About.OfDecision("jobs/one.yaml", "cooling stages"), Shop.ODD, NOON, Remark.Stand.OPEN, "Right?");
			assertEquals("about: rule A\nedition: " + shop.editions().demandLast().id()
					+ "\nby: Marit Cole <marit@fennimore.example>\non: 2026-03-02T12:00+01:00\n"
					+ "stands: open\n\nWhy one?\nabout: nothing else\n", shop.read("remarks/a/2026-03-02-110000-000-marit-cole.txt"));
			List<Matter> matters = Remarks.in(shop.editions().inHand().content());
			assertEquals(List.of("a false 2", "a-2 true 1", "one-cooling-stages true 1"), matters.stream()
					.map(m -> m.thread() + " " + m.open() + " " + m.remarks().size()).toList());
			assertEquals(first, matters.get(0).remarks().get(0));
			Kept same = shop.keep("Remarks");
			assertEquals(1, shop.editions().history().size(), "remarks alone make no new edition");
			assertEquals(same, shop.editions().demandLast());
			assertTrue(shop.editions().notKept().none(), "remarks that were kept are no change any more");
			assertEquals(matters, Remarks.in(shop.editions().remarksAt(shop.git("rev-parse", "HEAD"))));
		}
	}

	@Test
	void aSignOffIsAnAnnotatedTagWithTheCaseCheckInIt() throws IOException, NotDone {
		try (Shop shop = Shop.in(folder)) {
			Kept first = shop.write("rules/a.drl", A).write("jobs/one.yaml", MET).keep("First");
			SignedOff signed = sign(shop, Shop.MARIT);
			assertEquals("tag", shop.git("cat-file", "-t", signed.mark()));
			assertEquals("Signed off: Fennimore practice\n\nedition: " + first.id().hash()
					+ "\ncases: 1 jobs, 1 met, 0 not met, 0 not run\nremarks: 0 settled, 0 open\n"
					+ "proof: none was run\nnote: fine by me", shop.git("tag", "-l", "--format=%(contents)", signed.mark()));
			assertEquals(List.of(signed), shop.editions().signOffs().all());
			assertEquals(List.of("fine by me", Tag.Signature.NONE), List.of(signed.note(), signed.key()));
			Kept second = shop.write("rules/a.drl", A.replace("1 )", "2 )")).keep("Two");
			assertEquals(Optional.empty(), shop.editions().signOffs().of(second));
			Review review = shop.editions().signOffs().review(second, List.of());
			assertEquals(List.of("\"A\": outcome changed"), review.changes().rules().stream().map(c -> c.shown()).toList());
			shop.editions().restore(first);
			assertEquals(Optional.of(signed), shop.editions().signOffs().of(shop.keep("Back")), "what was signed is signed, whenever it is kept again");
			shop.git("fsck", "--strict");
		}
	}

	@Test
	void everythingIsReviewedBeforeTheFirstSignature() throws IOException, NotDone {
		try (Shop shop = Shop.in(folder)) {
			Kept first = shop.write("rules/a.drl", A).write("jobs/one.yaml", MET).keep("First");
			remark(shop, Optional.empty(), new About.OfRule("A"), Shop.MARIT, NOON, Remark.Stand.OPEN, "Why one?");
			Review review = shop.editions().signOffs().review(first, Remarks.in(shop.editions().inHand().content()));
			assertEquals(List.of("a"), review.on(review.changes().rules().get(0)).stream().map(Matter::thread).toList());
			assertEquals(1, review.open().size());
			assertEquals("Remarks are still open: a.", assertThrows(NotDone.class, () -> sign(shop, Shop.MARIT)).what());
		}
	}

	@Test
	void aBookThatDemandsItIsOnlyFitWhenSignedWithAllCasesMet() throws IOException, NotDone {
		try (Shop shop = Shop.in(folder)) {
			shop.write("book.yaml", DEMANDED).write("rules/a.drl", A).write("jobs/one.yaml", MET.replace("stages: 1 }\n", "stages: 2 }\n")).keep("First");
			assertEquals(List.of("Not every job comes to what it expects: One.", "Nobody has signed edition ID, and the book demands it."), lacks(shop));
			assertEquals("Not every job comes to what it expects: One.", assertThrows(NotDone.class, () -> sign(shop, Shop.MARIT)).what());
			shop.write("jobs/one.yaml", MET).keep("Right");
			assertEquals(List.of("Nobody has signed edition ID, and the book demands it."), lacks(shop));
			sign(shop, Shop.TRINE);
			assertTrue(verify(shop).fit());
			shop.write("rules/a.drl", A.replace("always", "mostly")).keep("Reworded");
			assertEquals(1, lacks(shop).size(), "a signature holds for what was signed alone");
		}
	}

	@Test
	void aTagMadeByHandDoesNotMakeCasesMet() throws IOException, NotDone {
		try (Shop shop = Shop.in(folder)) {
			shop.write("book.yaml", DEMANDED).write("rules/a.drl", A).write("jobs/one.yaml", MET.replace("stages: 1 }\n", "stages: 2 }\n")).keep("First");
			shop.git("tag", "-a", "-m", "cases: 1 jobs, 1 met, 0 not met, 0 not run", "signed-off/by-hand");
			assertEquals(List.of("Not every job comes to what it expects: One."), lacks(shop));
		}
	}

	@Test
	void aSecondPersonMayBeDemanded() throws IOException, NotDone {
		try (Shop shop = Shop.in(folder)) {
			shop.write("book.yaml", DEMANDED.replace("demanded", "demanded from a second person")).write("rules/a.drl", A).write("jobs/one.yaml", MET)
					.keep("First");
			assertEquals("Let somebody sign who wrote none of it.", assertThrows(NotDone.class, () -> sign(shop, Shop.TRINE)).remedy());
			shop.git("tag", "-a", "-m", "x", "signed-off/own");
			assertEquals(List.of("Edition ID is signed only by Trine Aasen, who wrote some of it."), lacks(shop));
			sign(shop, Shop.MARIT);
			assertEquals(List.of(), lacks(shop));
			shop.write("rules/a.drl", A.replace("always", "mostly")).keep("Reworded by Marit", Shop.MARIT);
			assertThrows(NotDone.class, () -> sign(shop, Shop.MARIT));
			sign(shop, Shop.TRINE);
			assertEquals(List.of(), lacks(shop), "Trine wrote nothing since the last signed edition");
		}
	}

	@Test
	void aBookThatDemandsNothingIsFitUnsigned() throws IOException, NotDone {
		try (Shop shop = Shop.in(folder)) {
			shop.write("rules/a.drl", A).write("jobs/one.yaml", MET).keep("First");
			assertTrue(verify(shop).fit());
			shop.write("rules/a.drl", A.replace("COOL_STAGES", "NONE_SUCH")).keep("Broken");
			assertEquals(List.of("Edition ID has errors."), lacks(shop));
		}
	}

	@Test
	void aKeyOfSshSignsWhereGitIsSetUpForItAndGitAcceptsIt() throws IOException, NotDone {
		try (Shop shop = Shop.in(folder.resolve("book"))) {
			Path key = folder.resolve("key");
			Shop.run(folder, Map.of(), List.of("ssh-keygen", "-q", "-t", "ed25519", "-N", "", "-f", key.toString()));
			Files.writeString(folder.resolve("allowed"), Shop.MARIT.email() + " " + Files.readString(Path.of(key + ".pub")));
			shop.git("config", "gpg.format", "ssh");
			shop.git("config", "user.signingKey", key.toString());
			shop.git("config", "gpg.ssh.allowedSignersFile", folder.resolve("allowed").toString());
			shop.git("config", "commit.gpgSign", "true");
			shop.write("book.yaml", DEMANDED).write("rules/a.drl", A).write("jobs/one.yaml", MET).keep("First", Shop.MARIT);
			SignedOff signed = sign(shop, Shop.MARIT);
			assertEquals(Tag.Signature.GOOD, signed.key());
			shop.git("verify-tag", signed.mark());
			shop.git("verify-commit", "HEAD");
			assertTrue(verify(shop).fit());
			shop.editions().lines().begin("trial");
			shop.write("rules/a.drl", A.replace("always", "mostly")).keep("There", Shop.MARIT);
			shop.git("checkout", "-q", "-");
			shop.write("jobs/two.yaml", MET.replace("One", "Two")).keep("Here", Shop.MARIT);
			shop.editions().lines().keepJoined(shop.editions().lines().join("trial"), "Joined", Optional.of(Shop.MARIT));
			shop.git("verify-commit", "HEAD");
			shop.editions().restore(signed.edition());
			shop.keep("As signed", Shop.MARIT);
			Files.writeString(folder.resolve("allowed"), "");
			assertEquals(Tag.Signature.NOT_ACCEPTED, shop.editions().signOffs().all().get(0).key());
			assertEquals(List.of("The key that signed edition ID is not accepted."), lacks(shop));
		}
	}

	@Test
	void aKeyOfGnuPgSignsWhereGitIsSetUpForIt() throws IOException, NotDone {
		Path home = Files.createDirectory(folder.resolve("gnupg"), java.nio.file.attribute.PosixFilePermissions.asFileAttribute(
				java.nio.file.attribute.PosixFilePermissions.fromString("rwx------")));
		Map<String, String> here = Map.of("GNUPGHOME", home.toString());
		try (Shop shop = Shop.in(folder.resolve("book"))) {
			Shop.run(folder, here, List.of("gpg", "--batch", "--quiet", "--pinentry-mode", "loopback", "--passphrase", "", "--quick-gen-key",
					"Marit Cole <marit@fennimore.example>", "default", "sign", "never"));
			Path program = folder.resolve("gpg-here");
			Files.writeString(program, "#!/bin/sh\nGNUPGHOME='" + home + "' exec gpg \"$@\"\n");
			program.toFile().setExecutable(true);
			shop.git("config", "gpg.program", program.toString());
			shop.git("config", "tag.gpgSign", "true");
			shop.write("rules/a.drl", A).write("jobs/one.yaml", MET).keep("First", Shop.MARIT);
			SignedOff signed = sign(shop, Shop.MARIT);
			shop.git("verify-tag", signed.mark());
			assertEquals(Tag.Signature.NOT_ACCEPTED, signed.key(), "only the user's own set-up decides, and it does not know this key");
			Shop.run(folder, here, List.of("gpgconf", "--kill", "gpg-agent"));
		}
	}

	@Test
	void aSigningProgramThatFailsLeavesNothingSigned() throws IOException, NotDone {
		try (Shop shop = Shop.in(folder)) {
			shop.git("config", "tag.gpgSign", "true");
			shop.git("config", "gpg.program", "false");
			shop.write("rules/a.drl", A).write("jobs/one.yaml", MET).keep("First", Shop.MARIT);
			assertTrue(assertThrows(NotDone.class, () -> sign(shop, Shop.MARIT)).what().contains("sign the edition"));
			assertEquals("", shop.git("tag"));
		}
	}
}
