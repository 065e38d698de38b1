package org.setwright.workbench.desk;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;
import org.setwright.trade.catalogue.Setting;
import org.setwright.writing.live.Tally;

/**
 * Holds what is being looked at and tells everybody who shows it. There is one for the window; use it in the window's
 * thread only. Views get it by {@code getSite().getService(Desk.class)}.
 */
public final class Desk {
	private final List<DeskListener> listeners = new CopyOnWriteArrayList<>();
	private final EvaluationJob evaluationJob = new EvaluationJob(new Answers());
	private final List<Consumer<Drafts>> draftListeners = new CopyOnWriteArrayList<>();
	private final List<Consumer<Tally>> tallyListeners = new CopyOnWriteArrayList<>();
	private final TallyJob tallyJob = new TallyJob(this::counted);
	private volatile Tally tally = Tally.NONE;
	private DeskState state = DeskState.EMPTY;
	private Drafts drafts = Drafts.NONE;
	private long stamp;

	/** @return what is being looked at now */
	public DeskState state() {
		return state;
	}

	/** @return the texts being typed now */
	public Drafts drafts() {
		return drafts;
	}

	/** @return what becomes of each rule on the saved jobs, as last counted; the counts follow what is typed, saved or not */
	public Tally tally() {
		return tally;
	}

	/** Starts to tell {@code listener} of the texts being typed, after every key, in the window's thread. */
	public void addDraftListener(Consumer<Drafts> listener) {
		draftListeners.add(listener);
	}

	/** Starts to tell {@code listener} of every new count, in the window's thread. */
	public void addTallyListener(Consumer<Tally> listener) {
		tallyListeners.add(listener);
	}

	/** Stops telling {@code listener}. */
	public void removeTallyListener(Consumer<Tally> listener) {
		tallyListeners.remove(listener);
	}

	/** Starts to tell {@code listener}. */
	public void addListener(DeskListener listener) {
		listeners.add(listener);
	}

	/** Stops telling {@code listener}. */
	public void removeListener(DeskListener listener) {
		listeners.remove(listener);
	}

	/** Puts the rule book in {@code folder} on the desk, in place of the present one, and reads it. */
	public void open(Path folder) {
		drafts = Drafts.NONE;
		counted(Tally.NONE);
		tallyJob.forget();
		become(DeskState.EMPTY.reading(folder));
		refresh();
	}

	/** Takes the rule book off the desk. */
	public void close() {
		stamp++;
		evaluationJob.cancel();
		drafts = Drafts.NONE;
		counted(Tally.NONE);
		tallyJob.forget();
		become(DeskState.EMPTY);
	}

	/** Reads the book again and works everything out afresh, in the background. */
	public void refresh() {
		state.folder().ifPresent(folder -> evaluationJob
				.ask(new EvaluationJob.Request(++stamp, folder, drafts, state.latest())));
	}

	/** Takes note of what is being typed into the file at {@code path} below the book folder. */
	public void type(String path, String text) {
		drafts = drafts.with(path, text);
		draftListeners.forEach(l -> l.accept(drafts));
		refresh();
		count();
	}

	/** Takes note that what was typed into the file at {@code path} has been saved or thrown away. */
	public void typed(String path) {
		if (drafts.texts().containsKey(path)) {
			drafts = drafts.without(path);
			draftListeners.forEach(l -> l.accept(drafts));
			refresh();
		}
	}

	/** Looks at the job at {@code path}; the setting being looked at stays. */
	public void pickJob(String path) {
		if (!state.job().equals(Optional.of(path))) {
			become(state.looking(Optional.of(path), state.setting()));
		}
	}

	/** Looks at {@code setting} of the present job. */
	public void pickSetting(Setting setting) {
		if (!state.setting().equals(Optional.of(setting))) {
			become(state.looking(state.job(), Optional.of(setting)));
		}
	}

	/** Looks at the rule called {@code name}. */
	public void pickRule(String name) {
		if (!state.rule().equals(Optional.of(name))) {
			become(state.lookingAt(name));
		}
	}

	/** @return whether an answer to the last change is still awaited */
	public boolean busy() {
		return evaluationJob.awaited() || tallyJob.awaited();
	}

	private void count() {
		state.latest().ifPresent(e -> tallyJob.ask(e.book(), drafts));
	}

	private void counted(Tally now) {
		tally = now;
		tallyListeners.forEach(l -> l.accept(now));
	}

	/** Ends the work that an answer is awaited of; what is shown stays, until something changes or {@link #refresh} is called. */
	public void stop() {
		evaluationJob.stop();
	}

	private final class Answers implements EvaluationJob.Told {
		@Override
		public void evaluated(EvaluationJob.Request request, Evaluation evaluation) {
			Desk.this.evaluated(request, evaluation);
		}

		@Override
		public void far(int done, int all) {
			listeners.forEach(l -> l.jobsRun(done, all));
		}

		@Override
		public void stopped() {
			listeners.forEach(DeskListener::workStopped);
		}
	}

	private void evaluated(EvaluationJob.Request request, Evaluation evaluation) {
		if (request.stamp() == stamp) {
			become(withSomeJob(state.read(evaluation, request.drafts().isEmpty())));
			count();
		}
	}

	/** A book that has just been opened shows its first job rather than nothing. */
	private static DeskState withSomeJob(DeskState read) {
		return read.job().isPresent() ? read
				: read.looking(read.latest().flatMap(e -> e.book().jobs().stream().findFirst()).map(j -> j.path()),
						read.setting());
	}

	private void become(DeskState now) {
		DeskState before = state;
		state = now;
		listeners.forEach(l -> l.deskChanged(before, now));
	}
}
