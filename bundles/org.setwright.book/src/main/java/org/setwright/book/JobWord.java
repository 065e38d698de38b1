package org.setwright.book;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.setwright.trade.catalogue.Catalogue;
import org.setwright.trade.catalogue.FactKind;
import org.setwright.trade.catalogue.Field;
import org.setwright.trade.catalogue.Setting;

/** What a word in the text of a job is about, found by where it stands. Offsets count Java characters from 0. */
public sealed interface JobWord {
	/** @return offset of its first character */
	int start();

	/** @return offset behind its last character */
	int end();

	/** The name of a kind of fact, or that there is none of it. */
	record OfKind(FactKind kind, int start, int end) implements JobWord {
	}

	/** The name of a field, or an answer. @param written the answer; empty at the name of the field */
	record OfField(FactKind kind, Field field, Optional<String> written, int start, int end) implements JobWord {
	}

	/** The name of a setting, or what it is expected to come to. @param written the latter; empty at the name */
	record OfSetting(Setting setting, Optional<String> written, int start, int end) implements JobWord {
	}

	/** A finding that is expected, or not to be made. @param word its word in rules */
	record OfFinding(String word, int start, int end) implements JobWord {
	}

	/** The name of a rule, or of a table after the word "table". */
	record OfRule(String name, int start, int end) implements JobWord {
	}

	/** @return every word of a job that is about something, in no certain order; never throws for what {@code text} says */
	static List<JobWord> all(String text, Catalogue catalogue) {
		return JobWords.of(text, catalogue);
	}

	/**
	 * Never throws for what the text says.
	 *
	 * @param text the whole file, saved or still being typed
	 * @return what the word at {@code offset}, or the one that ends there, is about; empty for comments, notes and the like,
	 *         and while the text cannot be read
	 */
	static Optional<JobWord> at(String text, int offset, Catalogue catalogue) {
		List<JobWord> all = JobWords.of(text, catalogue);
		return all.stream().filter(w -> w.start() <= offset && offset <= w.end()).min(Comparator.comparingInt(w -> w.end() - w.start()));
	}
}
