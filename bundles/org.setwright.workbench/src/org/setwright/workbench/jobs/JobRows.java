package org.setwright.workbench.jobs;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.eclipse.osgi.util.NLS;
import org.setwright.book.JobCase;
import org.setwright.check.cases.CheckedJob;
import org.setwright.engine.outcome.Outcome;
import org.setwright.engine.outcome.SettingOutcome.State;
import org.setwright.trade.catalogue.Fact;
import org.setwright.trade.catalogue.FactKind;
import org.setwright.workbench.desk.Evaluation;
import org.setwright.workbench.jobs.JobRow.Standing;

/** Turns an evaluation into the list of jobs. */
public final class JobRows {
	private JobRows() {
	}

	/** @return every job of the book, by file; files that cannot be read are listed too */
	public static List<JobRow> of(Evaluation evaluation) {
		Map<String, JobRow> byPath = new TreeMap<>();
		evaluation.problems().stream().map(p -> p.at().file()).filter(f -> f.startsWith("jobs/")) //$NON-NLS-1$
				.forEach(file -> byPath.put(file, unreadable(file)));
		evaluation.book().jobs().forEach(job -> byPath.put(job.path(), row(job, evaluation)));
		return List.copyOf(byPath.values());
	}

	private static JobRow unreadable(String file) {
		String name = file.substring(file.indexOf('/') + 1);
		return new JobRow(file, name, Standing.DOES_NOT_RUN, Messages.JobRows_mistakeInFile, "", name.toLowerCase(Locale.ROOT)); //$NON-NLS-1$
	}

	private static JobRow row(JobCase job, Evaluation evaluation) {
		Optional<Outcome> outcome = evaluation.outcome(job.path());
		Standing standing = outcome.map(o -> standing(job, o)).orElse(Standing.DOES_NOT_RUN);
		return new JobRow(job.path(), job.name(), standing, words(job, evaluation, standing),
				outcome.map(JobRows::progress).orElse(""), searched(job)); //$NON-NLS-1$
	}

	private static Standing standing(JobCase job, Outcome outcome) {
		if (job.expectations() == 0) {
			return Standing.NOTHING_EXPECTED;
		}
		return CheckedJob.of(job, outcome).allMet() ? Standing.AS_EXPECTED : Standing.DIFFERS;
	}

	private static String words(JobCase job, Evaluation evaluation, Standing standing) {
		return switch (standing) {
			case AS_EXPECTED -> NLS.bind(Messages.JobRows_asExpected, job.expectations());
			case DIFFERS -> NLS.bind(Messages.JobRows_differs,
					CheckedJob.of(job, evaluation.outcome(job.path()).orElseThrow()).notMet().size(), job.expectations());
			case NOTHING_EXPECTED -> Messages.JobRows_nothingExpected;
			case DOES_NOT_RUN -> evaluation.runs() ? Messages.JobRows_notRun : Messages.JobRows_mistakeInRules;
		};
	}

	private static String progress(Outcome outcome) {
		long open = outcome.count(State.GAP) + outcome.count(State.DISPUTED);
		return open == 0 ? NLS.bind(Messages.JobRows_settled, outcome.count(State.SETTLED))
				: NLS.bind(Messages.JobRows_settledAndOpen, outcome.count(State.SETTLED), open);
	}

	private static String searched(JobCase job) {
		Stream<String> answers = job.job().entries().entrySet().stream()
				.flatMap(e -> e.getValue().facts().stream().flatMap(f -> answers(e.getKey(), f)));
		return Stream.concat(Stream.of(job.name(), job.path(), job.notes()), answers).collect(Collectors.joining("\n")) //$NON-NLS-1$
				.toLowerCase(Locale.ROOT);
	}

	private static Stream<String> answers(FactKind kind, Fact fact) {
		return kind.fields().stream().flatMap(f -> kind.answer(fact, f).value().stream()).map(v -> v.text());
	}
}
