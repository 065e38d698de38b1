package org.setwright.editions.signing;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.Normalizer;
import java.time.DateTimeException;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.setwright.book.AtomicFile;
import org.setwright.editions.git.BookPart;
import org.setwright.editions.git.Content;
import org.setwright.editions.kept.NotDone;
import org.setwright.editions.kept.Who;

/**
 * Reads and writes remarks: one plain text file each, in a folder for each matter, so that two people never write the same file and
 * lines of work join without a conflict.
 */
public final class Remarks {
	private static final DateTimeFormatter STAMP = DateTimeFormatter.ofPattern("uuuu-MM-dd-HHmmss-SSS");
	private static final int LONGEST_NAME = 40;

	private Remarks() {
	}

	/** @return every matter in {@code content}, by name */
	public static List<Matter> in(Content content) throws NotDone {
		Map<String, List<Remark>> threads = new TreeMap<>();
		for (String path : content.names().keySet()) {
			String[] parts = path.split("/");
			if (parts.length == 3 && parts[0].equals(BookPart.REMARKS) && path.endsWith(".txt")) {
				threads.computeIfAbsent(parts[1], x -> new ArrayList<>()).add(read(parts[1], path, new String(content.bytes(path), StandardCharsets.UTF_8)));
			}
		}
		List<Matter> matters = new ArrayList<>();
		threads.forEach((thread, remarks) -> {
			remarks.sort(Comparator.comparing((Remark r) -> r.on().toInstant()).thenComparing(Remark::file));
			matters.add(new Matter(thread, remarks));
		});
		return matters;
	}

	static Remark read(String thread, String file, String text) {
		Map<String, String> heads = new HashMap<>();
		List<String> lines = text.lines().toList();
		int at = 0;
		for (; at < lines.size() && lines.get(at).matches("[a-z ]+: .*"); at++) {
			String line = lines.get(at);
			heads.putIfAbsent(line.substring(0, line.indexOf(':')), line.substring(line.indexOf(':') + 1).strip());
		}
		String said = String.join("\n", lines.subList(Math.min(at, lines.size()), lines.size())).strip();
		return new Remark(thread, file, About.read(heads.getOrDefault("about", "")), heads.getOrDefault("edition", ""),
				who(heads.getOrDefault("by", "somebody")),
				on(heads.getOrDefault("on", "")), heads.getOrDefault("stands", "").equals("settled") ? Remark.Stand.SETTLED : Remark.Stand.OPEN, said);
	}

	private static Who who(String text) {
		int open = text.indexOf('<');
		return open < 0 || !text.endsWith(">") ? new Who(text, "") : new Who(text.substring(0, open).strip(), text.substring(open + 1, text.length() - 1));
	}

	private static OffsetDateTime on(String text) {
		try {
			return OffsetDateTime.parse(text);
		} catch (DateTimeException written) {
			return OffsetDateTime.of(1970, 1, 1, 0, 0, 0, 0, ZoneOffset.UTC);
		}
	}

	/**
	 * Writes a remark into the folder of a book. It becomes part of the history with the next edition that is kept.
	 *
	 * @param thread the matter it belongs to; empty to open a new one
	 * @param edition the first digits of the edition it is written on; may be empty
	 * @param text not blank
	 * @param known the matters there are
	 */
	public static Remark write(Path folder, Optional<String> thread, About about, String edition, Who by, OffsetDateTime on, Remark.Stand stand,
			String text,
			List<Matter> known) throws NotDone {
		String name = thread.orElseGet(() -> fresh(about, known));
		String file = BookPart.REMARKS + "/" + name + "/" + STAMP.format(on.withOffsetSameInstant(ZoneOffset.UTC)) + "-" + plain(by.name());
		String written = "about: " + about.words() + "\n" + (edition.isEmpty() ? "" : "edition: " + edition + "\n") + "by: " + by + "\non: "
				+ on.truncatedTo(ChronoUnit.MILLIS) + "\nstands: " + stand.words() + "\n\n" + text.strip() + "\n";
		try {
			String free = file + ".txt";
			for (int i = 2; Files.exists(folder.resolve(free)); i++) {
				free = file + "-" + i + ".txt";
			}
			Files.createDirectories(folder.resolve(free).getParent());
			AtomicFile.write(folder.resolve(free), written);
			return read(name, free, written);
		} catch (IOException e) {
			throw new NotDone("The remark could not be written into " + folder + ".", "Check the disk, and who may write there.", e);
		}
	}

	private static String fresh(About about, List<Matter> known) {
		String base = plain(about instanceof About.OfRule rule ? rule.name() : about instanceof About.OfDecision decision
				? decision.job().replaceAll(".*/|\\.yaml$", "") + "-" + decision.setting() : "book");
		String name = base;
		for (int i = 2; taken(name, known); i++) {
			name = base + "-" + i;
		}
		return name;
	}

	private static boolean taken(String name, List<Matter> known) {
		return known.stream().anyMatch(m -> m.thread().equals(name));
	}

	/** Letters and digits with dashes, as file names are safe everywhere. */
	private static String plain(String text) {
		String letters = Normalizer.normalize(text, Normalizer.Form.NFD).replaceAll("\\p{M}", "").toLowerCase(Locale.ROOT)
				.replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
		String cut = letters.length() > LONGEST_NAME ? letters.substring(0, LONGEST_NAME).replaceAll("-$", "") : letters;
		return cut.isEmpty() ? "remark" : cut;
	}
}
