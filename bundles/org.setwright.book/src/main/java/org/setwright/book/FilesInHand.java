package org.setwright.book;

import java.util.List;
import java.util.Map;

/** The files of a book that are held in memory. @param bytes of each file, by its path below the book */
record FilesInHand(Map<String, byte[]> bytes) implements BookFiles {

	@Override
	public List<String> list(String folder, String ending) {
		String start = folder + "/";
		return bytes.keySet().stream().filter(p -> p.startsWith(start) && p.endsWith(ending)).map(p -> p.substring(start.length()))
				.filter(name -> !name.contains("/") && !name.startsWith(".")).sorted().map(name -> start + name).toList();
	}

	@Override
	public boolean has(String path) {
		return bytes.containsKey(path);
	}

	@Override
	public FileContents read(String path) {
		byte[] found = bytes.get(path);
		if (found == null) {
			return FileContents.refused(Problem.error(Position.whole(path), "There is no such file.", "Restore it, or make it anew."));
		} else if (found.length > BookFolder.LARGEST_FILE) {
			return FileContents.refused(Problem.error(Position.whole(path),
					"The file is larger than " + BookFolder.LARGEST_FILE / 1_000_000 + " MB, so it is not read.", "Split it."));
		}
		return FileContents.decode(path, found);
	}
}
