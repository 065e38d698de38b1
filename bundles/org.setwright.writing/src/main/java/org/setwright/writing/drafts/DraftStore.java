package org.setwright.writing.drafts;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.setwright.book.AtomicFile;

/**
 * Keeps drafts in a folder of the program's own, never in the book. Each is a file of its own that begins with the folder of the
 * book and the path of the file, a line each; it is written in one step, so that a crash leaves the old draft or the new one.
 */
public final class DraftStore {
	private static final String ENDING = ".draft";
	private final Path folder;

	/** @param folder of the drafts; made when the first is kept */
	public DraftStore(Path folder) {
		this.folder = folder;
	}

	/**
	 * Keeps a draft in place of an earlier one of the same file.
	 *
	 * @throws IOException when it cannot be written; the earlier one is still there then
	 */
	public void keep(Path book, Draft draft) throws IOException {
		Files.createDirectories(folder);
		AtomicFile.write(file(book, draft.path()), line(book.toString()) + line(draft.path()) + draft.text());
	}

	/** Forgets the draft of the file at {@code path}, when there is one. */
	public void forget(Path book, String path) throws IOException {
		Files.deleteIfExists(file(book, path));
	}

	/** @return the drafts of {@code book}, by path; what cannot be read as a draft is left out */
	public List<Draft> of(Path book) throws IOException {
		List<Draft> drafts = new ArrayList<>();
		if (Files.isDirectory(folder)) {
			try (Stream<Path> files = Files.list(folder)) {
				for (Path file : files.filter(f -> f.getFileName().toString().endsWith(ENDING)).toList()) {
					read(file, book).ifPresent(drafts::add);
				}
			}
		}
		drafts.sort(Comparator.comparing(Draft::path));
		return drafts;
	}

	/**
	 * Makes the drafts of {@code book} those of {@code texts}.
	 *
	 * @param texts by path below the book folder
	 * @param before what was kept by the last call; only what differs is written
	 * @throws IOException when one cannot be written; the others are
	 */
	public void keepOnly(Path book, Map<String, String> texts, Map<String, String> before) throws IOException {
		IOException failed = null;
		for (Map.Entry<String, String> text : texts.entrySet()) {
			if (!text.getValue().equals(before.get(text.getKey()))) {
				try {
					keep(book, new Draft(text.getKey(), text.getValue()));
				} catch (IOException e) {
					failed = e;
				}
			}
		}
		for (String path : before.keySet()) {
			if (!texts.containsKey(path)) {
				forget(book, path);
			}
		}
		if (failed != null) {
			throw failed;
		}
	}

	private static Optional<Draft> read(Path file, Path book) {
		try {
			String[] parts = Files.readString(file).split("\n", 3);
			return parts.length == 3 && parts[0].equals(book.toString()) ? Optional.of(new Draft(parts[1], parts[2])) : Optional.empty();
		} catch (IOException notText) {
			return Optional.empty();
		}
	}

	private Path file(Path book, String path) {
		UUID name = UUID.nameUUIDFromBytes((line(book.toString()) + path).getBytes(StandardCharsets.UTF_8));
		return folder.resolve(name + ENDING);
	}

	private static String line(String text) {
		return text + "\n";
	}
}
