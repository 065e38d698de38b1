package org.setwright.book;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.setwright.book.JobEdit.Accepted;
import org.setwright.book.JobEdit.Added;
import org.setwright.book.JobEdit.Answered;
import org.setwright.book.JobEdit.Expected;
import org.setwright.book.JobEdit.Fitted;
import org.setwright.book.JobEdit.ItemExpected;
import org.setwright.book.JobEdit.ItemNotExpected;
import org.setwright.book.JobEdit.Named;
import org.setwright.book.JobEdit.NotExpected;
import org.setwright.book.JobEdit.Noted;
import org.setwright.book.JobEdit.Removed;
import org.setwright.book.text.SourceText;
import org.setwright.book.yaml.Comments.Comment;
import org.setwright.book.yaml.YamlEditor;
import org.setwright.book.yaml.YamlWords;
import org.setwright.trade.catalogue.Catalogue;
import org.setwright.trade.catalogue.FactKind;
import org.setwright.trade.catalogue.Value;

/**
 * Writes job files. An edit changes as few characters as can be and keeps comments, blank lines and order; before it is
 * given out it is read back, and must say exactly what was wanted and hold every comment.
 */
public final class JobWriter {
	private static final String NOTES_INDENT = "  ";
	private final Catalogue catalogue;

	/** @param catalogue which facts and settings there are */
	public JobWriter(Catalogue catalogue) {
		this.catalogue = catalogue;
	}

	/** One way to make an edit. */
	private interface Way {
		void in(JobFileEditor file);
	}

	/**
	 * @param job its positions count for nothing
	 * @return the text of a new file for it
	 * @throws JobNotWritten when a value cannot be written so that it reads back the same
	 */
	public String write(JobCase job) throws JobNotWritten {
		String text = new FreshJob(catalogue).text(job);
		JobText read = JobReader.read(job.path(), text, catalogue);
		if (!read.sound() || !EditedJob.same(read.job(), EditedJob.of(job, new Noted(job.notes())))) {
			throw refused(job.path(), "The job cannot be written: " + EditedJob.difference(job, read.job())
					+ " would not read back the same.", "Change that value.");
		}
		return text;
	}

	/**
	 * @param path of the file, for messages
	 * @param text the file as it is
	 * @return the file with {@code edit} made
	 * @throws JobNotWritten when the text has errors, the edit makes no sense for this job, or the text is arranged so
	 *         unusually that the edit cannot be made without losing something
	 */
	public String edit(String path, String text, JobEdit edit) throws JobNotWritten {
		JobText before = JobReader.read(path, text, catalogue);
		Optional<Problem> error = before.problems().stream().filter(p -> p.severity() == Problem.Severity.ERROR).findFirst();
		if (error.isPresent()) {
			throw new JobNotWritten(Problem.error(error.get().at(), "The file has errors, so it is not changed.", error.get().remedy()));
		}
		Optional<String> refusal = EditedJob.refusal(before.job(), edit);
		if (refusal.isPresent()) {
			throw refused(path, refusal.get(), "Nothing was changed.");
		}
		JobCase wanted = EditedJob.of(before.job(), edit);
		if (EditedJob.same(before.job(), wanted)) {
			return text;
		}
		String mark = SourceText.hasMark(text) ? text.substring(0, 1) : "";
		for (Way way : ways(edit)) {
			Optional<String> edited = tried(text, way, wanted);
			if (edited.isPresent()) {
				return mark + edited.get();
			}
		}
		throw refused(path, "The change cannot be made without risk to what else the file says.", "Make it in the file by hand.");
	}

	/**
	 * Makes several edits, each in what the one before it left.
	 *
	 * @param text the file as it is
	 * @return the file with all of them made
	 * @throws JobNotWritten as for {@link #edit}; then none is made
	 */
	public String editAll(String path, String text, List<JobEdit> edits) throws JobNotWritten {
		String edited = text;
		for (JobEdit edit : edits) {
			edited = edit(path, edited, edit);
		}
		return edited;
	}

	/**
	 * @param job as it is; what the edit concerns keeps its place
	 * @return what the job says with {@code edit} made; {@code job} itself when that changes nothing
	 * @throws JobNotWritten when the edit makes no sense for this job
	 */
	public static JobCase edited(JobCase job, JobEdit edit) throws JobNotWritten {
		Optional<String> refusal = EditedJob.refusal(job, edit);
		if (refusal.isPresent()) {
			throw refused(job.path(), refusal.get(), "Nothing was changed.");
		}
		JobCase edited = EditedJob.of(job, edit);
		return EditedJob.same(job, edited) ? job : edited;
	}

	private Optional<String> tried(String text, Way way, JobCase wanted) {
		try {
			JobFileEditor file = new JobFileEditor(text, catalogue);
			List<String> comments = file.yaml().comments().stream().map(Comment::text).sorted().toList();
			way.in(file);
			JobText read = JobReader.read(wanted.path(), file.yaml().text(), catalogue);
			boolean kept = file.yaml().comments().stream().map(Comment::text).sorted().toList().equals(comments);
			return kept && read.sound() && EditedJob.same(read.job(), wanted) ? Optional.of(file.yaml().text()) : Optional.empty();
		} catch (YamlEditor.Unreadable spoilt) {
			return Optional.empty();
		}
	}

	/** The ways to make an edit, the one to be preferred first. */
	private static List<Way> ways(JobEdit edit) {
		List<Way> ways = new ArrayList<>();
		if (edit instanceof Answered answered) {
			Optional<Value> value = answered.answer().value();
			ways.add(file -> value.ifPresentOrElse(v -> file.answer(answered.at(), v), () -> file.takeBack(answered.at())));
		} else if (edit instanceof Fitted fitted) {
			fitted(fitted, ways);
		} else if (edit instanceof Added added) {
			ways.add(file -> file.addItem(added.kind(), JobKeys.UNKNOWN));
		} else if (edit instanceof Removed removed) {
			ways.add(file -> file.removeItem(removed.kind(), removed.item()));
		} else if (edit instanceof Named named) {
			ways.add(file -> file.put(JobKeys.JOB, YamlWords.of(named.name().strip(), file.yaml().root().flow())));
		} else if (edit instanceof Noted noted) {
			noted(noted.notes().stripTrailing(), ways);
		} else {
			expected(edit, ways);
		}
		return ways;
	}

	private static void expected(JobEdit edit, List<Way> ways) {
		if (edit instanceof Expected expected) {
			ways.add(file -> new ExpectEditor(file).expect(expected.setting(), expected.expectation()));
		} else if (edit instanceof NotExpected not) {
			ways.add(file -> new ExpectEditor(file).expectNothing(not.setting()));
		} else if (edit instanceof ItemExpected expected) {
			ways.add(file -> new ExpectEditor(file).expect(expected.item(), true));
			ways.add(file -> new ExpectEditor(file).expect(expected.item(), false));
		} else if (edit instanceof ItemNotExpected not) {
			ways.add(file -> new ExpectEditor(file).expectNothing(not.item()));
		} else if (edit instanceof Accepted accepted) {
			ways.add(file -> new ExpectEditor(file).accept(accepted.acceptance(), true));
			ways.add(file -> new ExpectEditor(file).accept(accepted.acceptance(), false));
		}
	}

	private static void fitted(Fitted fitted, List<Way> ways) {
		FactKind kind = fitted.kind();
		switch (fitted.presence()) {
			case NONE -> ways.add(file -> file.putKind(kind, JobKeys.NONE));
			case UNKNOWN -> {
				ways.add(file -> file.removeKind(kind));
				ways.add(file -> file.putKind(kind, JobKeys.UNKNOWN));
			}
			case PRESENT -> ways.add(file -> {
				if (kind.many()) {
					file.addItem(kind, JobKeys.UNKNOWN);
				} else {
					file.putKind(kind, JobKeys.FITTED);
				}
			});
		}
	}

	private static void noted(String notes, List<Way> ways) {
		if (notes.isEmpty()) {
			ways.add(file -> file.removeKey(JobKeys.NOTES));
		} else if (notes.indexOf('\n') >= 0) {
			ways.add(file -> file.put(JobKeys.NOTES, YamlWords.onLines(notes, NOTES_INDENT)));
		} else {
			ways.add(file -> file.put(JobKeys.NOTES, YamlWords.of(notes, file.yaml().root().flow())));
		}
		ways.add(file -> file.put(JobKeys.NOTES, YamlWords.doubleQuoted(notes)));
	}

	private static JobNotWritten refused(String path, String what, String remedy) {
		return new JobNotWritten(Problem.error(Position.whole(path), what, remedy));
	}
}
