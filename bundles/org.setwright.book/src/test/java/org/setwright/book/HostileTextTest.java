package org.setwright.book;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.setwright.book.text.SourceText;
import org.setwright.trade.Trade;

/** Sound files with random damage, the same for the same seed: nothing makes a reader throw or hang. */
@Timeout(300)
class HostileTextTest {
	private static final int TRIES = 1500;
	private static final String PATH = "jobs/a.yaml";

	@ParameterizedTest
	@ValueSource(longs = { 1, 2, 3 })
	void jobTextsNeverBreakTheReader(long seed) {
		Random random = new Random(seed);
		RandomJobs jobs = new RandomJobs(seed, Sample.CATALOGUE);
		String text = "";
		for (int i = 0; i < TRIES; i++) {
			text = i % 20 == 0 ? new RandomHand(jobs).write(jobs.job()) : text;
			text = Damage.to(text, random);
			JobText read = JobReader.read(PATH, text, Sample.CATALOGUE);
			assertPlacesExist(read.problems(), text);
			assertPlacesExist(read.job().positions().values().stream().map(at -> Problem.error(at, "", "")).toList(), text);
			if (read.sound()) {
				assertSoundTextCanBeEdited(text, read.job(), jobs);
			}
		}
	}

	/** A sound text is edited as wanted, or refused with a sentence; either way nothing is thrown that is not said. */
	private static void assertSoundTextCanBeEdited(String text, JobCase job, RandomJobs jobs) {
		JobWriter writer = new JobWriter(Sample.CATALOGUE);
		try {
			JobEdit edit = jobs.edit(job);
			JobCase edited = JobReader.read(PATH, writer.edit(PATH, text, edit), Sample.CATALOGUE).job();
			assertTrue(EditedJob.same(EditedJob.of(job, edit), edited), text);
			JobCase fresh = JobReader.read(PATH, writer.write(job), Sample.CATALOGUE).job();
			assertTrue(EditedJob.same(job, fresh), text);
		} catch (JobNotWritten refused) {
			assertTrue(refused.getMessage().endsWith("."), refused.getMessage());
		}
	}

	@Test
	void tableTextsNeverBreakTheReader() {
		Random random = new Random(4);
		String text = "";
		for (int i = 0; i < TRIES * 3; i++) {
			text = i % 20 == 0 ? "# t\npump maker, pump kind, => pump speed, because\nNorrvik, \"a, \"\"b\"\"\nc\", 2,\n\n  , x, 3, so\n" : text;
			text = Damage.to(text, random);
			TableText read = TableReader.read("tables/a.csv", text);
			assertPlacesExist(read.problems(), text);
			int columns = read.table().header().size();
			assertTrue(read.table().rows().stream().allMatch(r -> r.cells().size() == columns), text);
		}
	}

	@Test
	void bookTextsNeverBreakTheReader() {
		Random random = new Random(5);
		String text = "";
		for (int i = 0; i < TRIES; i++) {
			text = i % 20 == 0 ? "# b\nbook: Fennimore\ndescription: |\n  what\n  we do\nformat: 1\n" : text;
			text = Damage.to(text, random);
			assertPlacesExist(BookDetails.read(text).problems(), text);
		}
	}

	@Test
	void foldersOfDamagedBytesNeverBreakTheReader(@TempDir Path folder) throws IOException {
		Random random = new Random(6);
		List<String> files = List.of("book.yaml", "rules/a.drl", "tables/a.csv", "jobs/a.yaml", "jobs/b.yaml");
		for (String file : files) {
			Files.createDirectories(folder.resolve(file).getParent());
		}
		for (int i = 0; i < 100; i++) {
			for (String file : files) {
				byte[] bytes = ("book: A\njob: " + file + "\na, b\n35 °F\n").getBytes(StandardCharsets.UTF_8);
				for (int hits = random.nextInt(4); hits > 0; hits--) {
					bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
				}
				Files.write(folder.resolve(file), bytes);
			}
			Book book = BookReader.read(folder, Trade.catalogue());
			assertEquals(folder.toAbsolutePath(), book.folder());
			assertTrue(book.problems().stream().allMatch(p -> files.contains(p.at().file()) || p.at().file().isEmpty()), book.problems().toString());
		}
	}

	private static void assertPlacesExist(List<Problem> problems, String text) {
		List<String> lines = List.of((SourceText.of(text).text() + " ").split("\r\n|\r|\n", -1));
		for (Problem problem : problems) {
			Position at = problem.at();
			assertTrue(at.line() <= lines.size(), problem + " in:\n" + text);
			assertTrue(at.line() == 0 || at.column() <= lines.get(at.line() - 1).length() + 1, problem + " in:\n" + text);
		}
	}
}
