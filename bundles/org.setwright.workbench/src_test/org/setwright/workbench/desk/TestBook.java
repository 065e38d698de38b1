package org.setwright.workbench.desk;

import java.nio.file.Path;
import java.util.Optional;
import org.setwright.book.JobCase;
import org.setwright.engine.outcome.Outcome;
import org.setwright.engine.outcome.SettingOutcome;
import org.setwright.trade.Trade;
import org.setwright.trade.catalogue.Setting;

/** The small rule book that the window tests open too, worked out once. */
public final class TestBook {
	/** Its folder. */
	public static final Path FOLDER = Path.of("..", "org.setwright.workbench.tests", "book").toAbsolutePath().normalize();
	/** A heat pump with a known maker and no auxiliary heat. */
	public static final String LARCH_LANE = "jobs/larch-lane-14.yaml";
	/** A dual-fuel job. */
	public static final String MILL_ROAD = "jobs/mill-road-3.yaml";
	/** A heat pump of which little is known, and which does not come to what is expected. */
	public static final String QUARRY_HILL = "jobs/quarry-hill-8.yaml";
	private static final Evaluation SAVED = evaluate(Drafts.NONE, Optional.empty());

	private TestBook() {
	}

	/** @return the book as it is saved */
	public static Evaluation saved() {
		return SAVED;
	}

	/** @return the book with {@code text} being typed into {@code path} */
	public static Evaluation typing(String path, String text) {
		return evaluate(Drafts.NONE.with(path, text), Optional.of(SAVED));
	}

	/** @return one of its jobs */
	public static JobCase job(String path) {
		return SAVED.job(path).orElseThrow();
	}

	/** @return what one of its jobs comes to */
	public static Outcome outcome(String path) {
		return SAVED.outcome(path).orElseThrow();
	}

	/** @return what a setting comes to on one of its jobs */
	public static SettingOutcome outcome(String path, String setting) {
		return outcome(path).setting(setting(setting)).orElseThrow();
	}

	/** @return the setting people call {@code label} */
	public static Setting setting(String label) {
		return Trade.catalogue().settingLabelled(label).orElseThrow();
	}

	private static Evaluation evaluate(Drafts drafts, Optional<Evaluation> previous) {
		// no lambda of this class: other threads would wait for it to be initialised, and it for them
		return new Evaluator(Trade.catalogue()).evaluate(FOLDER, drafts, previous, Boolean.FALSE::booleanValue).orElseThrow();
	}
}
