package org.setwright.workbench.editions;

import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.osgi.util.NLS;
import org.setwright.editions.kept.Kept;
import org.setwright.editions.signing.SignedOff;
import org.setwright.workbench.look.Icon;

/**
 * A line of the list of editions.
 *
 * @param kept empty for the work in hand
 * @param signed whether somebody signed it
 * @param cells when, who, what, and how it stands with signing
 * @param message the whole message
 */
record EditionLine(Optional<Kept> kept, boolean signed, List<String> cells, String message) {
	/** Dates and times as they are shown everywhere in this view, by the clock of whoever kept the edition. */
	static final DateTimeFormatter WHEN = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm"); //$NON-NLS-1$

	/** @return the work in hand, then every edition of the open line, newest first */
	static List<EditionLine> of(Ledger ledger) {
		List<EditionLine> lines = new ArrayList<>();
		List<String> notKept = ledger.work().notKept();
		String what = notKept.isEmpty() ? Messages.EditionLine_allKept
				: NLS.bind(Messages.EditionLine_notKept, notKept.size(), String.join(", ", notKept)); //$NON-NLS-1$
		lines.add(new EditionLine(Optional.empty(), false, List.of(Messages.EditionLine_inHand, "", what, ""), what)); //$NON-NLS-1$ //$NON-NLS-2$
		for (Kept edition : ledger.history()) {
			Optional<SignedOff> signed = Optional.ofNullable(ledger.signed().get(edition.id()));
			lines.add(new EditionLine(Optional.of(edition), signed.isPresent(), List.of(WHEN.format(edition.on()), edition.by().name(), edition.title(),
					signed.map(SignedOff::shown).orElse(Messages.EditionLine_notSigned)), edition.message()));
		}
		return lines;
	}

	/** @return the sign before this column, from 0; empty for none */
	Optional<Icon> sign(int column) {
		return switch (column) {
			case 0 -> Optional.of(kept.isPresent() ? Icon.BOOK : Icon.WRITE);
			case 3 -> kept.map(k -> signed ? Icon.AS_EXPECTED : Icon.NOTHING_EXPECTED);
			default -> Optional.empty();
		};
	}
}
