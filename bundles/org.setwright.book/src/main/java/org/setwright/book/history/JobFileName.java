package org.setwright.book.history;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

/** What the file of a job is called. */
final class JobFileName {
	private static final int LONGEST = 60;
	private static final String ENDING = ".yaml";

	private JobFileName() {
	}

	/** @return a name made of the words of {@code job}, which no file in any of {@code folders} has */
	static String of(String job, Path... folders) {
		String words = job.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", "-").replaceAll("^-|-$", "");
		return free((words.isEmpty() ? "job" : words.substring(0, Math.min(words.length(), LONGEST))) + ENDING, folders);
	}

	/** @return {@code file}, or the same with a number, which no file in any of {@code folders} has */
	static String free(String file, Path... folders) {
		String stem = file.endsWith(ENDING) ? file.substring(0, file.length() - ENDING.length()) : file;
		String free = file;
		for (int i = 2; taken(free, folders); i++) {
			free = stem + "-" + i + ENDING;
		}
		return free;
	}

	private static boolean taken(String file, Path... folders) {
		for (Path folder : folders) {
			if (Files.exists(folder.resolve(file))) {
				return true;
			}
		}
		return false;
	}
}
