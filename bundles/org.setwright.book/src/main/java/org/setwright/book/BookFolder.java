package org.setwright.book;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/** The folder of a book: lists and reads its files, and nothing outside it. */
final class BookFolder implements BookFiles {
	/** No file of a book may be larger, in bytes. */
	static final int LARGEST_FILE = 2_000_000;
	/** No folder of a book may hold more files. */
	static final int MOST_FILES = 10_000;
	/** All files of a book together may not be larger, in bytes. */
	static final long LARGEST_BOOK = 200_000_000;

	private final Path root;
	private final int mostFiles;
	private final Consumer<Problem> problems;
	private long bytesRead;

	/** @param root the real path of an existing folder @param problems told of everything that cannot be read */
	BookFolder(Path root, Consumer<Problem> problems) {
		this(root, problems, MOST_FILES);
	}

	BookFolder(Path root, Consumer<Problem> problems, int mostFiles) {
		this.root = root;
		this.mostFiles = mostFiles;
		this.problems = problems;
	}

	@Override
	public List<String> list(String folder, String ending) {
		Path directory = root.resolve(folder);
		if (!Files.exists(directory, LinkOption.NOFOLLOW_LINKS)) {
			return List.of();
		} else if (!Files.isDirectory(directory)) {
			error(folder, "\"" + folder + "\" is not a folder.", "Rename it, and make a folder \"" + folder + "\" for these files.");
			return List.of();
		} else if (inside(directory).isEmpty()) {
			error(folder, "\"" + folder + "\" is a link to a place outside the book, which is not followed.",
					"Replace the link by a real folder.");
			return List.of();
		}
		List<String> found = new ArrayList<>();
		try (DirectoryStream<Path> files = Files.newDirectoryStream(directory)) {
			for (Path file : files) {
				if (found.size() >= mostFiles) {
					error(folder, "There are more than " + mostFiles + " files in \"" + folder + "\"; the rest is not read.",
							"Split the book into several.");
					break;
				}
				consider(folder + "/" + file.getFileName(), ending, found);
			}
		} catch (IOException | DirectoryIteratorException e) {
			error(folder, "The folder \"" + folder + "\" cannot be read.", "Check who may read it.");
		}
		found.sort(null);
		return found;
	}

	private void consider(String path, String ending, List<String> found) {
		String name = path.substring(path.indexOf('/') + 1);
		if (name.startsWith(".") || name.endsWith("~") || name.equalsIgnoreCase("README.md")) {
			return;
		} else if (name.codePoints().anyMatch(c -> Character.isISOControl(c) || c == 0xFFFD || c == '\\')) {
			error(path.replaceAll("\\p{Cntrl}", "?"), "The name of this file holds characters that do not belong in a name.",
					"Rename it with letters, digits, blanks and dashes.");
		} else if (!name.endsWith(ending)) {
			String what = Files.isDirectory(root.resolve(path)) ? "folder" : "file";
			problems.accept(Problem.warning(Position.whole(path),
					"This " + what + " is not read: only files that stand here and end in " + ending + " are.",
					what.equals("folder") ? "Move its files here." : "Rename it, or move it out of the folder."));
		} else {
			found.add(path);
		}
	}

	@Override
	public boolean has(String path) {
		return Files.exists(root.resolve(path), LinkOption.NOFOLLOW_LINKS);
	}

	@Override
	public FileContents read(String path) {
		Path file = root.resolve(path);
		if (!Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
			return refused(path, "There is no such file.", "Restore it, or make it anew.");
		}
		Optional<Path> real = inside(file);
		if (real.isEmpty()) {
			return refused(path, Files.exists(file) ? "This is a link to a place outside the book, which is not followed."
					: "This is a link that leads nowhere.", "Replace the link by the file itself.");
		} else if (Files.isDirectory(real.get())) {
			return refused(path, "This is a folder, and a file is expected here.", "Rename the folder.");
		} else if (!Files.isRegularFile(real.get())) {
			return refused(path, "This is not a file that can be read.", "Remove it from the book.");
		}
		return readReal(path, real.get());
	}

	private FileContents readReal(String path, Path real) {
		try (InputStream in = Files.newInputStream(real, LinkOption.NOFOLLOW_LINKS)) {
			byte[] bytes = in.readNBytes(LARGEST_FILE + 1);
			bytesRead += bytes.length;
			if (bytes.length > LARGEST_FILE) {
				return refused(path, "The file is larger than " + LARGEST_FILE / 1_000_000 + " MB, so it is not read.", "Split it.");
			} else if (bytesRead > LARGEST_BOOK) {
				return refused(path, "The book is larger than " + LARGEST_BOOK / 1_000_000 + " MB, so this file is not read.",
						"Split the book into several.");
			}
			return FileContents.decode(path, bytes);
		} catch (NoSuchFileException | AccessDeniedException e) {
			return refused(path, "The file cannot be opened.", "Check that you may read it, and read the book again.");
		} catch (IOException e) {
			return refused(path, "The file cannot be read from the disk.", "Check the disk, and read the book again.");
		}
	}

	/** @return the real path, all links followed, when it is in the book */
	private Optional<Path> inside(Path path) {
		try {
			return Optional.of(path.toRealPath()).filter(real -> real.startsWith(root));
		} catch (IOException unreachable) {
			return Optional.empty();
		}
	}

	private static FileContents refused(String path, String what, String remedy) {
		return FileContents.refused(Problem.error(Position.whole(path), what, remedy));
	}

	private void error(String path, String what, String remedy) {
		problems.accept(Problem.error(Position.whole(path), what, remedy));
	}
}
