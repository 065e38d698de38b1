package org.setwright.workbench.desk;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Texts that are being typed and not saved yet, by path below the book folder. Immutable.
 *
 * @param texts the whole text of each file as it stands in its editor
 */
public record Drafts(Map<String, String> texts) {
	/** Nothing is being typed. */
	public static final Drafts NONE = new Drafts(Map.of());

	public Drafts {
		texts = Map.copyOf(texts);
	}

	/** @return these and {@code text} for {@code path} */
	public Drafts with(String path, String text) {
		Map<String, String> more = new LinkedHashMap<>(texts);
		more.put(path, text);
		return new Drafts(more);
	}

	/** @return these without {@code path} */
	public Drafts without(String path) {
		Map<String, String> fewer = new LinkedHashMap<>(texts);
		fewer.remove(path);
		return new Drafts(fewer);
	}

	/** @return whether nothing is being typed */
	public boolean isEmpty() {
		return texts.isEmpty();
	}
}
