package org.setwright.bench.keeping;

import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.setwright.bench.changes.Difference;
import org.setwright.bench.hand.AtHand;
import org.setwright.bench.told.Misread;
import org.setwright.bench.words.Named;
import org.setwright.bench.words.Span;
import org.setwright.book.ExpectedItem;
import org.setwright.book.JobCase;
import org.setwright.book.JobCase.Expectation;
import org.setwright.book.JobEdit;
import org.setwright.book.JobNotWritten;
import org.setwright.book.JobWriter;
import org.setwright.book.Misfit;
import org.setwright.book.Position;
import org.setwright.check.cases.CheckedJob;
import org.setwright.engine.outcome.SettingOutcome;
import org.setwright.trade.catalogue.Setting;

/** Keeps the job at hand: as a job case of its own, in its file, or what is expected of it. */
final class JobKeeping {
	private final AtHand hand;

	JobKeeping(AtHand hand) {
		this.hand = hand;
	}

	/** @param name of the new job */
	Keeping as(Span name) throws Misread {
		String called = name.bare().text().strip();
		if (called.isEmpty() || called.length() > 200) {
			throw name.misread("A job needs a name on one line.", "Write \"keep job as NAME\".");
		}
		String path = "jobs/" + fileName(called) + ".yaml";
		if (hand.ground().jobs().stream().anyMatch(j -> j.name().equalsIgnoreCase(called) || j.path().equals(path))) {
			throw name.misread("There is already a job called " + Misfit.quoted(called) + ".",
					"Give it another name, or write \"keep job\" to change that of the job at hand.");
		}
		JobCase job = hand.job();
		JobCase kept = new JobCase(path, called, job.notes(), job.job(), job.expected(), job.items(), List.of(), Map.of());
		return new Keeping(path, now -> {
			if (now.isPresent()) {
				throw new NotKept("There is already a file " + path + ". Give the job another name.");
			}
			return written(kept);
		}, "The job is kept in " + path + "." + besides());
	}

	private String written(JobCase kept) throws NotKept {
		try {
			return new JobWriter(hand.ground().catalogue()).write(kept);
		} catch (JobNotWritten refused) {
			throw new NotKept(refused.getMessage());
		}
	}

	/** @param words what was typed */
	Keeping inItsFile(Span words) throws Misread {
		JobCase saved = saved(words);
		if (hand.edits().isEmpty()) {
			throw words.misread("Nothing of the job has been changed here.", "State a fact first, or write \"keep job as NAME\" for a job of its own.");
		}
		refuseOtherExpectations(saved, hand.edits(), words);
		return edits(saved, hand.edits(), "What was changed is kept in " + saved.path() + "." + besides());
	}

	/** @param words what was typed */
	Keeping expectations(Span words) throws Misread {
		JobCase saved = saved(words);
		List<JobEdit> edits = hand.edits().stream().filter(JobKeeping::expects).toList();
		if (edits.isEmpty()) {
			throw words.misread("Nothing has been expected here.", "Write \"expect SETTING\" first.");
		}
		refuseOtherFacts(words);
		refuseOtherExpectations(saved, edits, words);
		return edits(saved, edits, "What is expected is kept in " + saved.path() + ".");
	}

	/** @param name of the setting that is to come to what it comes to now */
	Keeping expectation(Span name) throws Misread {
		Setting setting = Named.setting(name, hand.ground().catalogue());
		JobCase saved = saved(name);
		refuseOtherFacts(name);
		Expectation now = now(setting, hand);
		List<JobEdit> edits = List.of(new JobEdit.Expected(setting, now));
		refuseOtherExpectations(saved, edits, name);
		Optional<SettingOutcome> alone = hand.ground().edition().run(saved.job()).setting(setting);
		if (!Difference.same(alone, hand.outcome().setting(setting))) {
			throw name.misread("It comes to that only by a rule typed here, which is not in the book yet.", "Keep or drop the rule first.");
		}
		return edits(saved, edits, "That " + setting.label() + " comes to " + now.text() + " is expected in " + saved.path() + " from now on.");
	}

	/** @return what {@code setting} comes to now, as an expectation */
	static Expectation now(Setting setting, AtHand hand) {
		Position at = Position.whole(hand.job().path());
		return hand.outcome().setting(setting).<Expectation>map(outcome -> switch (outcome.state()) {
			case SETTLED -> new JobCase.Settled(outcome.value().orElseThrow(), at);
			case DISPUTED -> new JobCase.Dispute(at);
			case GAP -> new JobCase.Gap(at);
			case PERHAPS -> new JobCase.NotSet(at);
		}).orElseGet(() -> new JobCase.NotNeeded(at));
	}

	private JobCase saved(Span words) throws Misread {
		return hand.saved().orElseThrow(() -> words.misread("The job on the bench is in no file yet.", "Write \"keep job as NAME\"."));
	}

	private static boolean expects(JobEdit edit) {
		return edit instanceof JobEdit.Expected || edit instanceof JobEdit.NotExpected || edit instanceof JobEdit.ItemExpected
				|| edit instanceof JobEdit.ItemNotExpected;
	}

	private void refuseOtherFacts(Span words) throws Misread {
		if (!hand.edits().stream().allMatch(JobKeeping::expects)) {
			throw words.misread("The facts here differ from those in the job's file, so what it comes to may not be expected there.",
					"Write \"keep job\" to keep the facts too, \"keep job as NAME\", or undo them first.");
		}
	}

	/** Taking another outcome for right is accepting it, which needs a name and a reason. */
	private static void refuseOtherExpectations(JobCase saved, List<JobEdit> edits, Span words) throws Misread {
		for (JobEdit edit : edits) {
			refuseOtherItems(saved, edit, words);
			Setting setting = edit instanceof JobEdit.Expected expected ? expected.setting() : edit instanceof JobEdit.NotExpected not ? not.setting() : null;
			String before = setting == null || !saved.expected().containsKey(setting) ? null : saved.expected().get(setting).text();
			String after = edit instanceof JobEdit.Expected expected ? expected.expectation().text() : "nothing";
			if (before != null && !before.equals(after)) {
				throw words.misread("The job's file expects " + before + " of " + setting.label() + ", not " + after + ".",
						"To take another outcome for right, accept it with your name and the reason (the word accept, or Case Check).");
			}
		}
	}

	private static void refuseOtherItems(JobCase saved, JobEdit edit, Span words) throws Misread {
		boolean gone = edit instanceof JobEdit.ItemNotExpected not && saved.items().stream().anyMatch(not.item()::same);
		Optional<ExpectedItem> other = edit instanceof JobEdit.ItemExpected expected
				? saved.items().stream().filter(i -> i.list() != expected.item().list() && i.list().topic() == expected.item().list().topic()
						&& i.in(expected.item().list()).same(expected.item())).findFirst() : Optional.empty();
		if (gone || other.isPresent()) {
			throw words.misread("The job's file expects " + other.map(i -> i.list().one() + " " + i.text()).orElse("what is no longer to be expected") + ".",
					"To take another outcome for right, accept it with your name and the reason (the word accept, or Case Check).");
		}
	}

	private Keeping edits(JobCase saved, List<JobEdit> edits, String done) {
		return new Keeping(saved.path(), now -> {
			if (now.isEmpty()) {
				throw new NotKept("There is no file " + saved.path() + " any more. Write \"keep job as NAME\".");
			}
			try {
				return new JobWriter(hand.ground().catalogue()).editAll(saved.path(), now.get(), edits);
			} catch (JobNotWritten refused) {
				throw new NotKept(refused.getMessage());
			}
		}, done);
	}

	private String besides() {
		long notMet = CheckedJob.of(hand.job(), hand.outcome()).notMet().size();
		return (notMet == 0 ? "" : notMet == 1 ? " One thing it expects is not met." : " " + notMet + " things it expects are not met.")
				+ (hand.typed().isEmpty() && hand.dropped().isEmpty() ? "" : " The rules tried here are not kept with it.");
	}

	private static String fileName(String name) {
		String plain = Normalizer.normalize(name.toLowerCase(Locale.ROOT), Normalizer.Form.NFD).replaceAll("\\p{M}+", "").replaceAll("[^a-z0-9]+", "-")
				.replaceAll("^-+|-+$", "");
		return plain.isEmpty() ? "job" : plain.substring(0, Math.min(60, plain.length())).replaceAll("-+$", "");
	}
}
