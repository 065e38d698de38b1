package org.setwright.book;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** The files of a book, some of them as they are being typed. @param typed texts by their paths below the book */
record TypedFiles(BookFiles saved, Map<String, String> typed) implements BookFiles {

	@Override
	public List<String> list(String folder, String ending) {
		Stream<String> added = typed.keySet().stream().filter(p -> p.startsWith(folder + "/") && p.endsWith(ending) && p.indexOf('/', folder.length() + 1) < 0);
		return Stream.concat(saved.list(folder, ending).stream(), added).distinct().sorted().toList();
	}

	@Override
	public boolean has(String path) {
		return typed.containsKey(path) || saved.has(path);
	}

	@Override
	public FileContents read(String path) {
		return typed.containsKey(path) ? FileContents.typed(typed.get(path)) : saved.read(path);
	}
}
