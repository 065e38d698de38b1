package org.setwright.editions.signing;

import java.util.List;
import java.util.Optional;
import org.setwright.check.Progress;
import org.setwright.check.cases.CaseCheck;
import org.setwright.check.cases.Standing;
import org.setwright.editions.kept.NotDone;
import org.setwright.editions.reading.BookAt;
import org.setwright.editions.reading.Shelf;
import org.setwright.engine.Edition;

/** What the job cases of an edition come to. @param check empty when the book has errors @param words in one line */
record Cases(Optional<CaseCheck> check, String words) {

	static Cases of(Shelf shelf, BookAt book, Progress progress) throws NotDone {
		Optional<Edition> edition = shelf.compiled(book).edition();
		if (edition.isEmpty()) {
			return new Cases(Optional.empty(), "not run, because the book has errors");
		}
		Optional<CaseCheck> check = CaseCheck.of(edition.get(), shelf.book(book).jobs(), progress, true);
		return new Cases(check, check.map(Cases::words).orElse("not run"));
	}

	private static String words(CaseCheck check) {
		long notRun = check.jobs().stream().filter(j -> j.outcome().isEmpty()).count();
		return check.jobs().size() + " jobs, " + check.count(Standing.MET) + " met, " + check.count(Standing.NOT_MET) + " not met, " + notRun + " not run";
	}

	boolean allMet() {
		return check.filter(CaseCheck::allMet).isPresent();
	}

	List<String> amiss() {
		return check.stream().flatMap(c -> c.amiss().stream()).map(j -> j.job().name()).toList();
	}
}
