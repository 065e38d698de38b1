package org.setwright.editions.restoring;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.TreeSet;
import org.setwright.book.AtomicFile;
import org.setwright.book.text.SourceText;
import org.setwright.editions.git.BookPart;
import org.setwright.editions.git.Content;
import org.setwright.editions.kept.NotDone;
import org.setwright.editions.reading.BookAt;
import org.setwright.editions.reading.Shelf;
import org.setwright.editions.written.WrittenRule;

/** Writes what an earlier edition said into the folder of a book. It is work in hand then, to be looked at and kept. */
public final class Restoring {
	private Restoring() {
	}

	/**
	 * Puts {@code old} in the place of {@code now}.
	 *
	 * @param now what the rule has become; empty when it is gone
	 * @param then the book that {@code old} is of
	 * @param inHand the book as it lies in the folder
	 * @return the path of the file that changed
	 */
	public static String rule(Path folder, WrittenRule old, Optional<WrittenRule> now, BookAt then, BookAt inHand) throws NotDone {
		String path = now.map(WrittenRule::file).orElse(old.file());
		Optional<WrittenRule> namesake = inHand.rules().stream().filter(r -> !r.isRow() && r.name().equals(old.name())).findFirst();
		if (!old.isRow() && namesake.isPresent() && !namesake.equals(now)) {
			throw new NotDone("Another rule is called " + old.shown() + " now, in " + namesake.get().file() + ".", "Rename that one first.");
		}
		boolean there = inHand.content().names().containsKey(path);
		String text = there ? Shelf.text(inHand.content(), path) : "";
		if (old.isRow() && !heading(text).equals(heading(Shelf.text(then.content(), old.file())))) {
			throw new NotDone("The table " + path + (there ? " has other headings now" : " is gone") + ", so a row of its own does not fit any more.",
					"Write the row by hand, or restore the whole book to that edition.");
		}
		String mark = SourceText.hasMark(text) ? text.substring(0, 1) : "";
		String plain = text.substring(mark.length());
		String fitted = old.text().replace("\r\n", "\n").replace("\n", SourceText.of(plain).lineBreak());
		String written = now.isPresent() ? plain.substring(0, now.get().start()) + fitted + plain.substring(now.get().end())
				: appended(plain, fitted, old.isRow(), SourceText.of(plain).lineBreak());
		write(folder, path, mark + written);
		return path;
	}

	private static String appended(String text, String rule, boolean row, String lineBreak) {
		String before = text.stripTrailing();
		return before + (before.isEmpty() ? "" : row ? lineBreak : lineBreak + lineBreak) + rule + lineBreak;
	}

	private static String heading(String table) {
		return table.lines().findFirst().orElse("").replaceAll("\\s+", " ").strip();
	}

	/**
	 * Makes the folder hold what {@code then} holds. Remarks stay: they are about every edition.
	 *
	 * @param inHand what lies there now, all of it kept
	 */
	public static void book(Path folder, Content then, Content inHand) throws NotDone {
		TreeSet<String> paths = new TreeSet<>(then.names().keySet());
		paths.addAll(inHand.names().keySet());
		paths.removeIf(p -> p.startsWith(BookPart.REMARKS + "/"));
		for (String path : paths) {
			try {
				if (!then.names().containsKey(path)) {
					Files.deleteIfExists(folder.resolve(path));
				} else if (!then.names().get(path).equals(inHand.names().get(path))) {
					write(folder, path, new String(then.bytes(path), StandardCharsets.UTF_8));
				}
			} catch (IOException e) {
				throw cannotWrite(path, e);
			}
		}
	}

	private static void write(Path folder, String path, String text) throws NotDone {
		try {
			Files.createDirectories(folder.resolve(path).getParent());
			AtomicFile.write(folder.resolve(path), text);
		} catch (IOException e) {
			throw cannotWrite(path, e);
		}
	}

	private static NotDone cannotWrite(String path, IOException e) {
		return new NotDone("The file " + path + " could not be written.",
				"Check the disk, and who may write there. Every edition is still in the repository.", e);
	}
}
