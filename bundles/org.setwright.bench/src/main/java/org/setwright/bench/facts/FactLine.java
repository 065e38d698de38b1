package org.setwright.bench.facts;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.setwright.bench.told.Misread;
import org.setwright.bench.words.Facts;
import org.setwright.bench.words.Facts.Meant;
import org.setwright.bench.words.Span;
import org.setwright.book.JobEdit;
import org.setwright.book.JobEdit.Added;
import org.setwright.book.JobEdit.Answered;
import org.setwright.book.JobEdit.Fitted;
import org.setwright.book.JobEdit.Removed;
import org.setwright.book.Misfit;
import org.setwright.trade.catalogue.Answer;
import org.setwright.trade.catalogue.Catalogue;
import org.setwright.trade.catalogue.FactKind;
import org.setwright.trade.catalogue.Field;
import org.setwright.trade.catalogue.Job;
import org.setwright.trade.catalogue.JobField;
import org.setwright.trade.catalogue.Value;

/** Reads lines such as "outdoor unit stages: 2", "wires: add red" and "not fitted: humidifier". */
public final class FactLine {
	/** Before what is to be added to a list. */
	public static final String ADD = "add";
	/** Before the number of what is to go out of a list. */
	public static final String TAKE_OUT = "take out";
	/** Before the kinds of which there are none. */
	public static final String NOT_FITTED = "not fitted";
	/** What can be said of a kind as a whole. */
	public static final Map<String, Job.Presence> PRESENCE = Map.of("none", Job.Presence.NONE, "unknown", Job.Presence.UNKNOWN, "fitted",
			Job.Presence.PRESENT);
	private static final String UNKNOWN = "unknown";
	private final Facts facts;
	private final Job job;

	/** @param job as it is now */
	public FactLine(Catalogue catalogue, Job job) {
		facts = new Facts(catalogue);
		this.job = job;
	}

	/** @return whether {@code line} states something: it has a colon outside quotes and brackets */
	public static boolean is(Span line) {
		return colon(line.text()) > 0;
	}

	/** @return the edits that make the job say what {@code line} says */
	public List<JobEdit> read(Span line) throws Misread {
		int colon = colon(line.text());
		Span name = line.upTo(colon);
		Span said = line.from(colon + 1);
		if (said.isEmpty()) {
			throw new Misread(line.end(), line.end(), "Nothing is said after the colon.", "Write a value, or \"unknown\".");
		} else if (name.is(NOT_FITTED)) {
			List<JobEdit> edits = new ArrayList<>();
			for (Span each : Group.parts(said, '[', ']')) {
				edits.add(fitted(facts.meant(each).kind(), Job.Presence.NONE, each));
			}
			return edits;
		}
		Meant meant = facts.meant(name);
		refuseCalculated(meant, name);
		if (meant.field().isPresent()) {
			return List.of(answered(meant.kind(), item(meant, name), meant.field().get(), said.bare()));
		}
		return ofKind(meant, name, said);
	}

	private static int colon(String line) {
		boolean quoted = false;
		for (int i = 0; i < line.length(); i++) {
			char c = line.charAt(i);
			quoted ^= c == '"';
			if (!quoted && "({[".indexOf(c) >= 0) {
				return -1;
			} else if (!quoted && c == ':') {
				return i;
			}
		}
		return -1;
	}

	private List<JobEdit> ofKind(Meant meant, Span name, Span said) throws Misread {
		FactKind kind = meant.kind();
		Job.Presence presence = PRESENCE.get(said.normal());
		if (presence != null && meant.number() == 0) {
			return List.of(fitted(kind, presence, said));
		} else if (kind.many() && meant.number() == 0 && said.begins(ADD)) {
			return added(kind, job.entry(kind).facts().size(), said.after(ADD));
		} else if (kind.many() && meant.number() == 0 && said.begins(TAKE_OUT)) {
			return List.of(removed(kind, said.after(TAKE_OUT)));
		} else if (kind.many() && meant.number() == 0 && said.text().startsWith("[")) {
			return listed(kind, said);
		} else if (said.text().indexOf(':') < 0) {
			throw said.misread(Misfit.quoted(said.text()) + " does not say which answer about the " + kind.label() + " it is.", remedy(kind, said));
		}
		return answers(kind, item(meant, name), said);
	}

	private static String remedy(FactKind kind, Span said) {
		if (kind.many()) {
			return "Write \"" + kind.key() + ": add " + said.text() + "\" for one more, or say which, such as \"" + kind.label() + " 1 "
					+ kind.fields().get(0).label() + ": ...\".";
		}
		String field = kind.fields().stream().filter(f -> f.domain().read(said.text()).isPresent()).findFirst().orElse(kind.fields().get(0)).label();
		return "Write the name of the answer too, for example \"" + kind.label() + " " + field + ": " + said.text() + "\".";
	}

	private JobEdit fitted(FactKind kind, Job.Presence presence, Span at) throws Misread {
		if (kind.calculated()) {
			throw at.misread("The " + kind.label() + " is worked out from other answers, never stated.", "State what it is worked out from.");
		} else if (presence == Job.Presence.NONE && kind.always()) {
			throw at.misread("Every job has " + (kind.many() ? kind.key() : kind.one()) + ", so there cannot be none.",
					"Write \"unknown\", or what is known.");
		}
		return new Fitted(kind, presence);
	}

	private List<JobEdit> listed(FactKind kind, Span said) throws Misread {
		List<JobEdit> edits = new ArrayList<>();
		edits.add(new Fitted(kind, Job.Presence.UNKNOWN));
		int item = 0;
		for (Span each : Group.parts(said, '[', ']')) {
			edits.addAll(added(kind, item++, each));
		}
		return edits;
	}

	private List<JobEdit> added(FactKind kind, int item, Span said) throws Misread {
		List<JobEdit> edits = new ArrayList<>();
		edits.add(new Added(kind));
		Optional<Field> naming = kind.fields().stream().filter(Field::naming).findFirst();
		if (said.text().indexOf(':') >= 0) {
			edits.addAll(answers(kind, item, said));
		} else if (!said.isEmpty() && naming.isPresent()) {
			edits.add(answered(kind, item, naming.get(), said.bare()));
		}
		return edits;
	}

	private JobEdit removed(FactKind kind, Span said) throws Misread {
		int count = job.entry(kind).facts().size();
		if (!said.text().matches("\\d{1,3}") || Integer.parseInt(said.text()) < 1 || Integer.parseInt(said.text()) > count) {
			throw said.misread("There is no " + kind.label() + " " + said.text() + ".", count == 0 ? "The job has none of which anything is known."
					: "Write a number from 1 to " + count + ".");
		} else if (count == 1) {
			throw said.misread("It is the only one, so taking it out would not say whether there are any.",
					"Write \"" + kind.key() + ": " + (kind.always() ? UNKNOWN : "none") + "\".");
		}
		return new Removed(kind, Integer.parseInt(said.text()) - 1);
	}

	private List<JobEdit> answers(FactKind kind, int item, Span said) throws Misread {
		List<JobEdit> edits = new ArrayList<>();
		for (Group.Pair pair : Group.pairs(said)) {
			Field field = kind.fieldLabelled(pair.name().text()).orElse(null);
			if (field == null) {
				throw facts.unknownField(kind, pair.name());
			}
			edits.add(answered(kind, item, field, pair.value()));
		}
		return edits;
	}

	private static JobEdit answered(FactKind kind, int item, Field field, Span said) throws Misread {
		JobField at = JobField.of(kind, item, field);
		if (said.is(UNKNOWN)) {
			return new Answered(at, Answer.unknown());
		}
		Optional<Value> value = said.text().length() > 500 ? Optional.empty() : field.domain().read(said.text());
		if (value.isEmpty()) {
			Misfit misfit = Misfit.of(field.label(), said.text(), field.domain());
			throw said.misread(misfit.what(), misfit.remedy());
		}
		return new Answered(at, Answer.of(value.get()));
	}

	/** @return which of several is meant, from 0; one past the last adds one */
	private int item(Meant meant, Span name) throws Misread {
		FactKind kind = meant.kind();
		int count = job.entry(kind).facts().size();
		if (!kind.many() || meant.number() == 0 && count < 2) {
			return 0;
		} else if (meant.number() == 0) {
			throw name.misread("The job has " + count + " " + kind.key() + ", and it is not said which is meant.",
					"Write its number, for example \"" + kind.label() + " 1\".");
		} else if (meant.number() > count + 1) {
			throw name.misread("There is no " + kind.label() + " " + meant.number() + ".", count == 0 ? "Begin with \"" + kind.label() + " 1\"."
					: "The last is " + count + "; write " + (count + 1) + " for one more.");
		}
		return meant.number() - 1;
	}

	private static void refuseCalculated(Meant meant, Span name) throws Misread {
		Optional<Field.Calculation> worked = meant.field().or(() -> meant.kind().calculated() ? meant.kind().fields().stream().findFirst()
				: Optional.empty())
				.flatMap(Field::calculation);
		if (worked.isPresent()) {
			throw name.misread("This is worked out (" + worked.get().formula() + "), never stated.",
					"State what it is worked out from, or ask for it without a colon.");
		}
	}
}
