package org.setwright.editions.git;

import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;
import org.eclipse.jgit.lib.Constants;
import org.eclipse.jgit.lib.ObjectInserter;

/** Files held in memory. @param files the bytes by path below the book @param names see {@link Content} */
public record InHand(Map<String, byte[]> files, Map<String, String> names) implements Content {

	/** @return the files of {@code bytes} that belong to a book */
	public static InHand of(Map<String, byte[]> bytes) {
		Map<String, byte[]> files = new TreeMap<>();
		Map<String, String> names = new TreeMap<>();
		bytes.forEach((path, held) -> {
			if (BookPart.is(path)) {
				files.put(path, held);
				names.put(path, new ObjectInserter.Formatter().idFor(Constants.OBJ_BLOB, held).name());
			}
		});
		return new InHand(Collections.unmodifiableMap(files), Collections.unmodifiableMap(names));
	}

	@Override
	public byte[] bytes(String path) {
		return files.get(path).clone();
	}

	/** Equal when the files hold the same. */
	@Override
	public boolean equals(Object other) {
		return other instanceof InHand hand && hand.names.equals(names);
	}

	@Override
	public int hashCode() {
		return names.hashCode();
	}
}
