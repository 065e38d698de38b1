package org.setwright.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.setwright.bench.asking.Listing;
import org.setwright.bench.changes.Difference;
import org.setwright.bench.hand.AtHand;
import org.setwright.bench.hand.Ground;
import org.setwright.bench.rules.RuleLines;
import org.setwright.bench.told.Misread;
import org.setwright.bench.told.Row;
import org.setwright.bench.told.Rows;
import org.setwright.bench.told.Tone;
import org.setwright.bench.words.Span;
import org.setwright.engine.change.Watch;

/** The bench after some lines. Immutable: a line gives another session, so taking one back costs nothing. */
public final class Session {
	private static final Pattern RULE = Pattern.compile("rule\\s+\"[^\"]*\"");
	private final AtHand start;
	private final List<Step> steps;
	private final List<Step> undone;

	private Session(AtHand start, List<Step> steps, List<Step> undone) {
		this.start = start;
		this.steps = List.copyOf(steps);
		this.undone = List.copyOf(undone);
	}

	/** A line that was followed. @param after what lies on the bench afterwards; empty when it only asked */
	private record Step(String line, Optional<AtHand> after) {
	}

	/** @return a bench on which nothing has been tried; runs the job once */
	public static Session on(Ground ground) {
		return new Session(AtHand.of(ground), List.of(), List.of());
	}

	/** @return what lies on the bench */
	public AtHand hand() {
		return lastChange() < 0 ? start : steps.get(lastChange()).after().orElseThrow();
	}

	/** @return the lines in force, questions among them, without those taken back */
	public List<String> lines() {
		return steps.stream().map(Step::line).toList();
	}

	/** @return the lines in force that changed something */
	public List<String> changes() {
		return steps.stream().filter(s -> s.after().isPresent()).map(Step::line).toList();
	}

	/** @return the lines as a script that can be replayed */
	public String script() {
		return lines().stream().collect(Collectors.joining("\n", "", lines().isEmpty() ? "" : "\n"));
	}

	/** @return whether {@code typed} needs another line before it can be followed: a rule without its end */
	public static boolean unfinished(String typed) {
		return RuleLines.begins(typed) && typed.strip().length() > "rule".length() && !RuleLines.complete(typed);
	}

	/**
	 * Follows one line, or the lines of one rule.
	 *
	 * @param typed all of it
	 * @param watch follows a search and can end it
	 * @return what comes of it; never throws for what was typed
	 */
	public Turn say(String typed, Watch watch) {
		Span line = new Span(typed, 0).strip();
		if (line.isEmpty() || line.text().startsWith("#")) {
			return Turn.told(this, List.of());
		}
		try {
			return new Following(this, watch).follow(line);
		} catch (Misread why) {
			return Turn.misread(this, why);
		}
	}

	/** @return the same lines over another edition of the book or another job, and which of them could not be followed there */
	public Turn over(Ground ground, Watch watch) {
		Session session = on(ground);
		Rows lost = new Rows();
		for (Step step : steps) {
			if (step.after().isEmpty()) {
				session = session.asked(step.line());
				continue;
			}
			Turn turn = session.say(step.line(), watch);
			turn.misread().ifPresent(m -> lost.add(0, Tone.ATTENTION, "This line no longer fits the book and is left out: " + first(step.line()))
					.add(1, Tone.PLAIN, m.what() + " " + m.remedy()));
			session = turn.session();
		}
		return Turn.told(session, lost.all());
	}

	private static String first(String lines) {
		Matcher rule = RULE.matcher(lines);
		if (rule.lookingAt()) {
			return rule.group() + " ...";
		}
		return lines.lines().findFirst().orElse("") + (lines.indexOf('\n') < 0 ? "" : " ...");
	}

	/** @return the session after a question */
	Session asked(String line) {
		return with(new Step(line, Optional.empty()), undone);
	}

	/** @return the session after a line by which {@code after} lies on the bench */
	Session changed(String line, AtHand after) {
		return with(new Step(line, Optional.of(after)), List.of());
	}

	private Session with(Step step, List<Step> left) {
		List<Step> more = new ArrayList<>(steps);
		more.add(step);
		return new Session(start, more, left);
	}

	/** @return the session without the last line that changed something */
	Turn undo(Span line) throws Misread {
		int last = lastChange();
		if (last < 0) {
			throw line.misread("There is no line to take back.", "Only lines that changed something can be taken back.");
		}
		List<Step> fewer = new ArrayList<>(steps);
		List<Step> more = new ArrayList<>(undone);
		more.add(fewer.remove(last));
		Session before = new Session(start, fewer, more);
		return Turn.told(before, told("taken back: " + first(steps.get(last).line()), before));
	}

	/** @return the session with the line again that was taken back last */
	Turn redo(Span line) throws Misread {
		if (undone.isEmpty()) {
			throw line.misread("No line has been taken back that could be done again.", "A new line that changes something ends that.");
		}
		List<Step> fewer = new ArrayList<>(undone);
		Step again = fewer.remove(fewer.size() - 1);
		Session after = with(again, fewer);
		return Turn.told(after, told("done again: " + first(again.line()), after));
	}

	private List<Row> told(String what, Session other) {
		boolean sameJob = hand().job().path().equals(other.hand().job().path());
		List<Row> difference = sameJob ? Difference.between(hand(), other.hand()) : new Listing(other.hand()).job();
		return new Rows().add(0, Tone.QUIET, what).addAll(difference).all();
	}

	private int lastChange() {
		for (int i = steps.size() - 1; i >= 0; i--) {
			if (steps.get(i).after().isPresent()) {
				return i;
			}
		}
		return -1;
	}
}
