package org.setwright.workbench.editions;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.setwright.editions.EditionsOf;
import org.setwright.editions.OtherLines.Line;
import org.setwright.editions.git.WorkInHand;
import org.setwright.editions.kept.EditionId;
import org.setwright.editions.kept.Kept;
import org.setwright.editions.kept.NotDone;
import org.setwright.editions.signing.Matter;
import org.setwright.editions.signing.Remarks;
import org.setwright.editions.signing.SignOffs;
import org.setwright.editions.signing.SignedOff;

/**
 * How things stand with the editions of the open book. Immutable.
 *
 * @param line the open line of work; empty when an earlier edition is open and no line
 * @param work what lies in the folder
 * @param history the editions of the open line, newest first
 * @param signed the last sign-off of each that is signed
 * @param matters everything remarked, as it lies in the folder
 * @param lines every line of work
 */
record Ledger(Optional<String> line, WorkInHand work, List<Kept> history, Map<EditionId, SignedOff> signed, List<Matter> matters,
		List<Line> lines) {
	Ledger {
		history = List.copyOf(history);
		signed = Map.copyOf(signed);
		matters = List.copyOf(matters);
		lines = List.copyOf(lines);
	}

	static Ledger of(EditionsOf editions) throws NotDone {
		List<Kept> history = editions.history();
		SignOffs signOffs = editions.signOffs();
		Map<EditionId, SignedOff> signed = new HashMap<>();
		history.forEach(e -> signOffs.of(e).ifPresent(s -> signed.put(e.id(), s)));
		WorkInHand work = editions.work();
		return new Ledger(editions.repo().line(), work, history, signed, Remarks.in(work.files()), editions.lines().all());
	}

	/** @return the edition the open line is at; empty when nothing was kept */
	Optional<Kept> last() {
		return history.stream().findFirst();
	}

	/** @return the newest edition of the open line that is signed */
	Optional<Kept> lastSigned() {
		return history.stream().filter(e -> signed.containsKey(e.id())).findFirst();
	}

	/** @return the one that {@code edition} came from; the first of several */
	Optional<Kept> before(Kept edition) {
		return edition.parents().stream().flatMap(id -> history.stream().filter(e -> e.id().equals(id))).findFirst();
	}

	/** @param edition empty for the work in hand @return below 0 for that, then from 0 for the last edition on */
	int place(Optional<Kept> edition) {
		return edition.map(history::indexOf).orElse(-1);
	}

	/** @return the matters that are still open */
	List<Matter> open() {
		return matters.stream().filter(Matter::open).toList();
	}
}
