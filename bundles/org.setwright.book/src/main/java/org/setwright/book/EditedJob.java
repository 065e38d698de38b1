package org.setwright.book;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
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
import org.setwright.trade.catalogue.Answer;
import org.setwright.trade.catalogue.Fact;
import org.setwright.trade.catalogue.FactKind;
import org.setwright.trade.catalogue.Field;
import org.setwright.trade.catalogue.Job;
import org.setwright.trade.catalogue.JobField;
import org.setwright.trade.catalogue.Setting;
import org.setwright.trade.catalogue.Value;

/** What a job case says after an edit, independent of how its file is written. */
final class EditedJob {
	private EditedJob() {
	}

	/** @return {@code before} with {@code edit} made; its positions are those of {@code before} */
	static JobCase of(JobCase before, JobEdit edit) {
		if (edit instanceof Named named) {
			return copy(before, named.name().strip(), before.notes(), before.job(), before.expected());
		} else if (edit instanceof Noted noted) {
			return copy(before, before.name(), noted.notes().stripTrailing(), before.job(), before.expected());
		} else if (edit instanceof Expected || edit instanceof NotExpected) {
			return copy(before, before.name(), before.notes(), before.job(), expected(before, edit));
		} else if (edit instanceof ItemExpected || edit instanceof ItemNotExpected) {
			return copy(before, items(before.items(), edit), before.accepted());
		} else if (edit instanceof Accepted accepted) {
			return copy(before, before.items(), Stream.concat(before.accepted().stream(), Stream.of(accepted.acceptance())).toList());
		}
		return copy(before, before.name(), before.notes(), job(before.job(), edit), before.expected());
	}

	/** @return whether both say the same about the job, wherever it is written */
	static boolean same(JobCase a, JobCase b) {
		return a.name().equals(b.name()) && a.notes().equals(b.notes()) && known(a.job()).equals(known(b.job()))
				&& texts(a.expected()).equals(texts(b.expected())) && texts(a.items()).equals(texts(b.items()))
				&& a.accepted().equals(b.accepted());
	}

	/** @return the first thing that {@code read} does not say as {@code wanted} does, for a sentence */
	static String difference(JobCase wanted, JobCase read) {
		if (!wanted.name().equals(read.name())) {
			return "its name";
		} else if (!wanted.notes().stripTrailing().equals(read.notes())) {
			return "its notes";
		}
		return wanted.job().entries().entrySet().stream()
				.flatMap(e -> difference(e.getKey(), e.getValue().facts(), read.job().entry(e.getKey()).facts()).stream()).findFirst()
				.orElse("something");
	}

	private static Optional<String> difference(FactKind kind, List<Fact> wanted, List<Fact> read) {
		for (int i = 0; i < wanted.size() && i < read.size(); i++) {
			for (Field field : kind.fields()) {
				Answer<Value> answer = kind.answer(wanted.get(i), field);
				if (!answer.equals(kind.answer(read.get(i), field))) {
					return Optional.of("the " + kind.label() + "'s " + field.label() + " "
							+ Misfit.quoted(answer.value().map(Value::text).orElse(JobKeys.UNKNOWN)));
				}
			}
		}
		return Optional.empty();
	}

	private static Map<FactKind, Job.Entry> known(Job job) {
		Map<FactKind, Job.Entry> known = new LinkedHashMap<>(job.entries());
		known.values().removeIf(Job.Entry.UNKNOWN::equals);
		return known;
	}

	private static Map<Setting, String> texts(Map<Setting, JobCase.Expectation> expected) {
		Map<Setting, String> texts = new LinkedHashMap<>();
		expected.forEach((setting, expectation) -> texts.put(setting, expectation.text()));
		return texts;
	}

	/** List by list, as the lists may stand in any order. */
	private static List<String> texts(List<ExpectedItem> items) {
		return items.stream().sorted(Comparator.comparing(ExpectedItem::list)).map(i -> i.list() + " " + i.text()).toList();
	}

	private static List<ExpectedItem> items(List<ExpectedItem> before, JobEdit edit) {
		List<ExpectedItem> items = new ArrayList<>(before);
		if (edit instanceof ItemNotExpected not) {
			items.removeIf(not.item()::same);
		} else if (edit instanceof ItemExpected added && before.stream().noneMatch(added.item()::same)) {
			items.add(added.item());
		}
		return items;
	}

	private static Map<Setting, JobCase.Expectation> expected(JobCase before, JobEdit edit) {
		Map<Setting, JobCase.Expectation> expected = new LinkedHashMap<>(before.expected());
		if (edit instanceof Expected added) {
			expected.put(added.setting(), added.expectation());
		} else {
			expected.remove(((NotExpected) edit).setting());
		}
		return expected;
	}

	private static Job job(Job before, JobEdit edit) {
		if (edit instanceof Answered answered) {
			return answered(before, answered);
		} else if (edit instanceof Fitted fitted) {
			return fitted(before, fitted);
		}
		FactKind kind = edit instanceof Added added ? added.kind() : ((Removed) edit).kind();
		List<Fact> facts = new ArrayList<>(before.entry(kind).facts());
		if (edit instanceof Removed removed) {
			facts.remove(removed.item());
		} else {
			facts.add(kind.create(Map.of()));
		}
		return before.with(kind, Job.Entry.of(facts));
	}

	private static Job answered(Job before, Answered answered) {
		JobField at = answered.at();
		List<Fact> facts = before.entry(at.kind()).facts();
		if (!answered.answer().isKnown() && at.item() >= facts.size()) {
			return before;
		}
		Job with = at.item() < facts.size() ? before : job(before, new Added(at.kind()));
		return with.with(at.kind(), at.item(), at.field().orElseThrow(), answered.answer());
	}

	private static Job fitted(Job before, Fitted fitted) {
		return switch (fitted.presence()) {
			case NONE -> before.with(fitted.kind(), Job.Entry.NONE);
			case UNKNOWN -> before.with(fitted.kind(), Job.Entry.UNKNOWN);
			case PRESENT -> before.entry(fitted.kind()).facts().isEmpty() ? job(before, new Added(fitted.kind())) : before;
		};
	}

	private static JobCase copy(JobCase of, String name, String notes, Job job, Map<Setting, JobCase.Expectation> expected) {
		return new JobCase(of.path(), name, notes, job, expected, of.items(), of.accepted(), of.positions());
	}

	private static JobCase copy(JobCase of, List<ExpectedItem> items, List<Acceptance> accepted) {
		return new JobCase(of.path(), of.name(), of.notes(), of.job(), of.expected(), items, accepted, of.positions());
	}

	/** @return why {@code edit} cannot be made to {@code before}, or empty */
	static Optional<String> refusal(JobCase before, JobEdit edit) {
		if (edit instanceof Removed removed && before.job().entry(removed.kind()).facts().size() < 2) {
			return Optional.of("The last of the " + removed.kind().key() + " cannot just be taken out: say whether there are none, or nobody knows.");
		} else if (edit instanceof Removed removed && removed.item() >= before.job().entry(removed.kind()).facts().size()) {
			return Optional.of("There is no " + removed.kind().label() + " " + (removed.item() + 1) + ".");
		} else if (edit instanceof Fitted fitted && fitted.presence() == Job.Presence.NONE && fitted.kind().always()) {
			return Optional.of("Every job has a " + fitted.kind().label() + ".");
		} else if (edit instanceof Answered answered && tooFar(before, answered.at())) {
			return Optional.of("There is no " + answered.at().kind().label() + " " + (answered.at().item() + 1) + ".");
		} else if (edit instanceof Named named && (named.name().isBlank() || !JobKeys.fitsOnALine(named.name()))) {
			return Optional.of("A job needs a name on one line, at most " + JobKeys.LONGEST_NAME + " characters.");
		}
		return Optional.empty();
	}

	private static boolean tooFar(JobCase before, JobField at) {
		return at.item() > before.job().entry(at.kind()).facts().size();
	}
}
