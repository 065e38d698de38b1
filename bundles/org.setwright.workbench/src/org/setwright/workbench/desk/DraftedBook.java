package org.setwright.workbench.desk;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.setwright.book.Book;
import org.setwright.book.JobCase;
import org.setwright.book.JobReader;
import org.setwright.book.JobText;
import org.setwright.book.Problem;
import org.setwright.book.Table;
import org.setwright.book.TableReader;
import org.setwright.book.TableText;

/** Reads what is being typed in place of what is saved. */
final class DraftedBook {
	private DraftedBook() {
	}

	/** @return {@code book} as it would be if {@code drafts} were saved, but for what {@code settings.yaml} and {@code book.yaml} say */
	static Book of(Book book, Drafts drafts) {
		Book result = book;
		for (Map.Entry<String, String> draft : drafts.texts().entrySet()) {
			result = with(result, draft.getKey(), draft.getValue());
		}
		return result;
	}

	private static Book with(Book book, String path, String text) {
		if (inFolder(path, "rules", ".drl")) { //$NON-NLS-1$ //$NON-NLS-2$
			return withProblems(book.withRules(new Book.RuleFile(path, text)), path, List.of());
		} else if (inFolder(path, "tables", ".csv")) { //$NON-NLS-1$ //$NON-NLS-2$
			TableText typed = TableReader.read(path, text);
			List<Table> tables = replaced(book.tables(), Table::path, path, typed.sound() ? List.of(typed.table()) : List.of());
			return withProblems(book.with(book.ruleFiles(), tables, book.jobs()), path, typed.problems());
		} else if (inFolder(path, "jobs", ".yaml")) { //$NON-NLS-1$ //$NON-NLS-2$
			JobText typed = JobReader.read(path, text, book.catalogue());
			List<JobCase> jobs = replaced(book.jobs(), JobCase::path, path, typed.sound() ? List.of(typed.job()) : List.of());
			return withProblems(book.with(book.ruleFiles(), book.tables(), jobs), path, typed.problems());
		}
		return book;
	}

	private static boolean inFolder(String path, String folder, String ending) {
		return path.startsWith(folder + "/") && path.endsWith(ending); //$NON-NLS-1$
	}

	private static <T> List<T> replaced(List<T> all, Function<T, String> pathOf, String path, List<T> by) {
		List<T> changed = new ArrayList<>(all);
		changed.removeIf(t -> pathOf.apply(t).equals(path));
		changed.addAll(by);
		changed.sort(Comparator.comparing(pathOf));
		return changed;
	}

	private static Book withProblems(Book book, String path, List<Problem> inFile) {
		List<Problem> problems = new ArrayList<>(book.problems());
		problems.removeIf(p -> p.at().file().equals(path));
		problems.addAll(inFile);
		return book.withProblems(problems);
	}
}
