package org.setwright.check.strength;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.setwright.book.ExpectedItem;
import org.setwright.book.JobCase;
import org.setwright.book.JobNotWritten;
import org.setwright.book.JobWriter;
import org.setwright.book.Position;
import org.setwright.check.cases.ItemsThere;
import org.setwright.engine.change.Telltale;
import org.setwright.engine.outcome.SettingOutcome;
import org.setwright.engine.outcome.SettingOutcome.State;
import org.setwright.trade.catalogue.Catalogue;
import org.setwright.trade.catalogue.Setting;

/**
 * A job that would notice a mistake which no saved job notices.
 *
 * @param like the saved job it was made from
 */
public record Catching(Mistake mistake, Telltale telltale, JobCase like) {
	private static final int LONGEST_NAME = 60;

	/** @return one for each mistake nobody noticed that a job was found for */
	public static List<Catching> of(Strength strength, List<JobCase> jobs) {
		return strength.survivors().stream().flatMap(t -> of(t, jobs).stream()).toList();
	}

	/** @return empty when the mistake was noticed, or no job was found */
	public static Optional<Catching> of(Strength.Tried tried, List<JobCase> jobs) {
		return tried.telltale().flatMap(t -> jobs.stream().filter(j -> j.job().equals(t.start())).findFirst()
				.map(like -> new Catching(tried.mistake(), t, like)));
	}

	/** @return for people: which job would notice, and what it would have to expect */
	public String sentence() {
		String but = telltale.changes().stream().map(c -> c.sentence(telltale.start())).collect(Collectors.joining("; "));
		return (but.isEmpty() ? "would be noticed if " + like.name() : "would be noticed by a job like " + like.name() + " but where " + but + ", if it")
				+ " expects " + String.join(", ", expects()).replaceFirst("\\.$", "") + ".";
	}

	private List<String> expects() {
		List<String> expects = new ArrayList<>();
		telltale.settings().forEach(s -> expects.add(s.label() + ": " + expectation(s).text()));
		items().forEach(i -> expects.add((i.list().appears() ? "the " : "") + i.list().one() + " " + i.text()));
		return expects;
	}

	/** @return a name for the file, without folder */
	public String file() {
		String plain = (mistake.rule().name() + " " + Integer.toHexString(mistake.sentence().hashCode())).toLowerCase(Locale.ROOT)
				.replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
		return plain + ".yaml";
	}

	/** @return the job file; what it expects is what the book says today, and wants to be read before it is kept */
	public String text(Catalogue catalogue) throws JobNotWritten {
		return text(catalogue, "What it expects is what the rules say today: check it before keeping the job.");
	}

	/** @return the same for a job that is kept at once: its notes say that it was recorded on {@code on}, and not reasoned */
	String recorded(Catalogue catalogue, LocalDate on) throws JobNotWritten {
		return text(catalogue, "Recorded on " + on + " from what the rules said, not reasoned: read what it expects before relying on it.");
	}

	private String text(Catalogue catalogue, String remark) throws JobNotWritten {
		Map<Setting, JobCase.Expectation> expected = new LinkedHashMap<>();
		telltale.settings().forEach(s -> expected.put(s, expectation(s)));
		String name = mistake.rule().name();
		String notes = "Would notice this mistake in \"" + name + "\": " + mistake.sentence() + ". " + remark;
		return new JobWriter(catalogue).write(new JobCase("jobs/" + file(), "Tells apart: " + name.substring(0, Math.min(LONGEST_NAME, name.length()))
				+ " " + Integer.toHexString(mistake.sentence().hashCode()), notes, telltale.job(), expected, items(), List.of(), Map.of()));
	}

	private JobCase.Expectation expectation(Setting setting) {
		Position nowhere = Position.whole("");
		Optional<SettingOutcome> came = telltale.before().setting(setting);
		if (came.isEmpty()) {
			return new JobCase.NotNeeded(nowhere);
		}
		return came.get().value().<JobCase.Expectation>map(v -> new JobCase.Settled(v, nowhere)).orElseGet(() -> came.get().state() == State.DISPUTED
				? new JobCase.Dispute(nowhere) : came.get().state() == State.GAP ? new JobCase.Gap(nowhere) : new JobCase.NotSet(nowhere));
	}

	/** Nothing is expected besides settings as long as one differs; then the first topic that differs. */
	private List<ExpectedItem> items() {
		List<List<ExpectedItem>> before = ItemsThere.all(telltale.before());
		List<List<ExpectedItem>> after = ItemsThere.all(telltale.after());
		for (int i = 0; telltale.settings().isEmpty() && i < before.size(); i++) {
			List<ExpectedItem> expected = new ArrayList<>(only(before.get(i), after.get(i)));
			Set<String> named = before.get(i).stream().map(ExpectedItem::text).collect(Collectors.toSet());
			only(after.get(i), before.get(i)).stream().filter(a -> !named.contains(a.text())).forEach(a -> expected.add(a.in(a.list().absent())));
			if (!expected.isEmpty()) {
				return expected;
			}
		}
		return List.of();
	}

	private static List<ExpectedItem> only(List<ExpectedItem> these, List<ExpectedItem> others) {
		return these.stream().filter(t -> others.stream().noneMatch(t::same)).toList();
	}
}
