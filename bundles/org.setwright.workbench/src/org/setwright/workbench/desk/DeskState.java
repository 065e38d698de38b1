package org.setwright.workbench.desk;

import java.nio.file.Path;
import java.util.Optional;
import org.setwright.book.JobCase;
import org.setwright.engine.Edition;
import org.setwright.engine.Inquiry;
import org.setwright.engine.outcome.Outcome;
import org.setwright.engine.outcome.SettingOutcome;
import org.setwright.trade.Trade;
import org.setwright.trade.catalogue.Catalogue;
import org.setwright.trade.catalogue.Setting;

/**
 * What is being looked at. Immutable.
 *
 * @param folder the open rule book; empty when none is open
 * @param latest the book with its results, as of the last key; empty while it is first being read
 * @param saved the same as of the last time nothing was being typed: what {@code latest} is compared with
 * @param job the path of the job being looked at, below the book folder
 * @param setting the setting being looked at
 * @param rule the name of the rule being looked at: the one under the cursor of an editor, or picked elsewhere
 */
public record DeskState(Optional<Path> folder, Optional<Evaluation> latest, Optional<Evaluation> saved,
		Optional<String> job, Optional<Setting> setting, Optional<String> rule) {
	/** Nothing is open. */
	public static final DeskState EMPTY = new DeskState(Optional.empty(), Optional.empty(), Optional.empty(),
			Optional.empty(), Optional.empty());

	/** No rule is being looked at. */
	public DeskState(Optional<Path> folder, Optional<Evaluation> latest, Optional<Evaluation> saved, Optional<String> job,
			Optional<Setting> setting) {
		this(folder, latest, saved, job, setting, Optional.empty());
	}

	/** @return every fact and setting the open book may speak of; those of the trade while none has been read */
	public Catalogue catalogue() {
		return latest.map(e -> e.book().catalogue()).orElse(Trade.catalogue());
	}

	/** @return the job being looked at, as it reads now */
	public Optional<JobCase> jobCase() {
		return latest.flatMap(e -> job.flatMap(e::job));
	}

	/** @return what the job being looked at comes to now */
	public Optional<Outcome> outcome() {
		return latest.flatMap(e -> job.flatMap(e::outcome));
	}

	/** @return what that job came to before anything was typed */
	public Optional<Outcome> savedOutcome() {
		return saved.flatMap(e -> job.flatMap(e::outcome));
	}

	/** @return what that job comes to now, or came to before anything was typed while the rules cannot run as they read now */
	public Optional<Outcome> lastOutcome() {
		return latest.filter(e -> !e.runs()).isPresent() ? savedOutcome() : outcome();
	}

	/** @return what the setting being looked at comes to now */
	public Optional<SettingOutcome> settingOutcome() {
		return outcome().flatMap(o -> setting.flatMap(o::setting));
	}

	/** @return the compiled rules, as they read now; empty when they cannot run */
	public Optional<Edition> edition() {
		return latest.flatMap(e -> e.rules().edition());
	}

	/** @return questions about the job being looked at; runs it once */
	public Optional<Inquiry> inquiry() {
		return outcome().flatMap(o -> jobCase()).flatMap(job -> edition().map(e -> e.about(job.job())));
	}

	DeskState reading(Path newFolder) {
		return new DeskState(Optional.of(newFolder), Optional.empty(), Optional.empty(), Optional.empty(),
				Optional.empty());
	}

	DeskState read(Evaluation evaluation, boolean nothingTyped) {
		return new DeskState(folder, Optional.of(evaluation), nothingTyped || saved.isEmpty() ? Optional.of(evaluation) : saved, job,
				setting, rule);
	}

	DeskState looking(Optional<String> newJob, Optional<Setting> newSetting) {
		return new DeskState(folder, latest, saved, newJob, newSetting, rule);
	}

	DeskState lookingAt(String newRule) {
		return new DeskState(folder, latest, saved, job, setting, Optional.of(newRule));
	}
}
