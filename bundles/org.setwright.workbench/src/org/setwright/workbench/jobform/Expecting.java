package org.setwright.workbench.jobform;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.setwright.book.JobCase;
import org.setwright.book.JobCase.Expectation;
import org.setwright.book.Position;
import org.setwright.trade.catalogue.Setting;
import org.setwright.trade.catalogue.Value;

/** Reads and offers what a setting may be expected to come to. */
final class Expecting {
	private static final Position NOWHERE = Position.whole(""); //$NON-NLS-1$
	private static final List<Expectation> WORDS = List.of(new JobCase.Gap(NOWHERE), new JobCase.Dispute(NOWHERE),
			new JobCase.NotNeeded(NOWHERE));

	private Expecting() {
	}

	/** @return every value that can be listed, then the words for no value */
	static List<String> offered(Setting setting) {
		List<String> offered = new ArrayList<>(setting.domain().listed().stream().map(Value::text).toList());
		WORDS.forEach(w -> offered.add(w.text()));
		return offered;
	}

	/** @return what {@code text} means for {@code setting}, or empty when it means nothing */
	static Optional<Expectation> read(Setting setting, String text) {
		String written = text.strip();
		return WORDS.stream().filter(w -> w.text().equalsIgnoreCase(written)).findFirst()
				.or(() -> setting.domain().read(written).map(v -> new JobCase.Settled(v, NOWHERE)));
	}
}
