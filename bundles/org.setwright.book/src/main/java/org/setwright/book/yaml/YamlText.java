package org.setwright.book.yaml;

import java.util.List;
import java.util.Optional;

/**
 * What reading a YAML text gives.
 *
 * @param root empty when the text says nothing or cannot be read
 * @param faults what is wrong with how the text is arranged, in text order; empty when it is sound
 */
public record YamlText(Optional<YamlNode> root, List<Fault> faults) {
	public YamlText {
		faults = List.copyOf(faults);
	}

	/**
	 * Something wrong.
	 *
	 * @param offset where
	 * @param what what is wrong, one sentence
	 * @param remedy what to do, one sentence
	 */
	public record Fault(int offset, String what, String remedy) {
	}
}
