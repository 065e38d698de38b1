package org.setwright.book.history;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Imports that were broken off by a crash or a power cut. */
public final class UnfinishedImports {
	private UnfinishedImports() {
	}

	/**
	 * What was found. @param finished how many imports were put in their place @param thrownAway how many had not got so far
	 * that anything could be lost, and were cleared away
	 */
	public record Found(int finished, int thrownAway) {
		/** @return whether there was nothing to do */
		public boolean isEmpty() {
			return finished + thrownAway == 0;
		}
	}

	/**
	 * Finishes or throws away every import that was broken off in {@code folder}, so that all of its jobs are there, or none.
	 * An import that somebody is still at is left alone. Call it before the book is read.
	 *
	 * @param folder of the book; it need not exist
	 * @throws IOException when one could be neither finished nor thrown away; it stays to be tried again
	 */
	public static Found settle(Path folder) throws IOException {
		int finished = 0;
		int thrownAway = 0;
		for (Path left : left(folder)) {
			Optional<Staging> staging = Staging.left(left);
			if (staging.isPresent()) {
				try (Staging open = staging.get()) {
					boolean placed = open.finish();
					finished += placed ? 1 : 0;
					thrownAway += placed ? 0 : 1;
				}
			}
		}
		return new Found(finished, thrownAway);
	}

	private static List<Path> left(Path folder) throws IOException {
		List<Path> found = new ArrayList<>();
		if (Files.isDirectory(folder)) {
			try (DirectoryStream<Path> all = Files.newDirectoryStream(folder, Staging.PREFIX + "*")) {
				all.forEach(found::add);
			}
		}
		found.sort(null);
		return found;
	}
}
