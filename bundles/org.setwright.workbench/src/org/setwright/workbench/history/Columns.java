package org.setwright.workbench.history;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.eclipse.osgi.util.NLS;
import org.setwright.book.history.Mapping;
import org.setwright.book.history.Meaning;
import org.setwright.trade.catalogue.Catalogue;

/** Whether a mapping can be used. */
final class Columns {
	private static final String IGNORE = "ignore"; //$NON-NLS-1$
	private static final String JOB = "job"; //$NON-NLS-1$

	private Columns() {
	}

	/** @return what is wrong first, and what to do; empty when nothing is */
	static Optional<String> wrong(List<String> headings, Mapping mapping, Catalogue catalogue) {
		Set<String> used = new HashSet<>();
		for (String heading : headings) {
			String to = mapping.column(heading).to();
			Optional<Meaning> meaning = Meaning.of(to, catalogue);
			if (meaning.isEmpty()) {
				return Optional.of(notKnown(heading, to, catalogue));
			} else if (!meaning.get().name().equals(IGNORE) && !used.add(meaning.get().name())) {
				return Optional.of(NLS.bind(Messages.Columns_twice, meaning.get().name()));
			}
		}
		return used.contains(JOB) ? Optional.empty() : Optional.of(Messages.Columns_noJob);
	}

	private static String notKnown(String heading, String to, Catalogue catalogue) {
		return Meaning.near(to, catalogue).map(near -> NLS.bind(Messages.Columns_near, new Object[] { to, heading, near }))
				.orElse(NLS.bind(Messages.Columns_unknown, to, heading));
	}

	/** @return how a mapping knows {@code heading} */
	static String key(String heading) {
		return heading.strip().toLowerCase(Locale.ROOT);
	}
}
