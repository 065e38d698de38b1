package org.setwright.workbench.fitness;

import java.io.IOException;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.ProgressBar;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.statushandlers.StatusManager;
import org.setwright.book.JobNotWritten;
import org.setwright.check.strength.Catching;
import org.setwright.check.strength.Mistake;
import org.setwright.check.strength.Strength;
import org.setwright.check.strength.Strength.Tried;
import org.setwright.engine.Edition;
import org.setwright.workbench.desk.Evaluation;
import org.setwright.workbench.look.Spoken;
import org.setwright.workbench.rows.RowTree;
import org.setwright.workbench.rows.RowTree.Manner;

/** Deliberate mistakes: made on demand, watched, stopped; jobs that would notice, looked for and saved. */
final class MistakesTab {
	private static final int LINES = 3;
	private final Composite pane;
	private final Button make;
	private final Button look;
	private final Button stop;
	private final Button save;
	private final Label doing;
	private final ProgressBar bar;
	private final RowTree tree;
	private final Text more;
	private final Runnable changed;
	private Optional<Evaluation> now = Optional.empty();
	private Optional<Evaluation> of = Optional.empty();
	private Optional<Strength> strength = Optional.empty();
	private Optional<StrengthJob> running = Optional.empty();
	private Set<Mistake> searched = new HashSet<>();
	private final Map<Mistake, String> saved = new HashMap<>();

	/** @param changed called when there are new figures */
	MistakesTab(Composite parent, Runnable changed) {
		this.changed = changed;
		pane = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().margins(4, 4).numColumns(4).applyTo(pane);
		make = button(Messages.MistakesTab_make, this::make);
		look = button(Messages.MistakesTab_look, this::look);
		save = button(Messages.MistakesTab_save, this::save);
		stop = button(Messages.MistakesTab_stop, () -> running.ifPresent(StrengthJob::cancel));
		doing = new Label(pane, SWT.NONE);
		GridDataFactory.fillDefaults().span(3, 1).grab(true, false).align(SWT.FILL, SWT.CENTER).applyTo(doing);
		bar = new ProgressBar(pane, SWT.SMOOTH);
		Spoken.as(bar, Messages.MistakesTab_bar);
		tree = new RowTree(pane, Messages.MistakesTab_list, MistakeLines.COLUMNS, Manner.COUNTED);
		GridDataFactory.fillDefaults().span(4, 1).grab(true, true).applyTo(tree.control());
		tree.viewer().addSelectionChangedListener(e -> enable());
		more = new Text(pane, SWT.MULTI | SWT.READ_ONLY | SWT.WRAP | SWT.V_SCROLL | SWT.BORDER);
		Spoken.as(more, Messages.MistakesTab_more);
		GridDataFactory.fillDefaults().span(4, 1).grab(true, false).hint(SWT.DEFAULT, more.getLineHeight() * LINES).applyTo(more);
		pane.addDisposeListener(e -> running.ifPresent(StrengthJob::cancel));
		say(Messages.MistakesTab_nothing);
	}

	private Button button(String label, Runnable does) {
		Button button = new Button(pane, SWT.PUSH);
		button.setText(label);
		button.addListener(SWT.Selection, e -> does.run());
		return button;
	}

	Composite control() {
		return pane;
	}

	RowTree tree() {
		return tree;
	}

	/** @return what came of the mistakes; empty when none were made since the book was opened */
	Optional<Strength> strength() {
		return strength;
	}

	/** Takes note of the book as it is now. */
	void show(Optional<Evaluation> evaluation) {
		boolean other = !evaluation.map(e -> e.book().folder()).equals(now.map(e -> e.book().folder()));
		now = evaluation;
		if (other) {
			running.ifPresent(StrengthJob::cancel);
			of = Optional.empty();
			strength = Optional.empty();
			searched.clear();
			saved.clear();
			tree.show(List.of());
			say(Messages.MistakesTab_nothing);
		} else if (running.isEmpty() && strength.isPresent()) {
			say(summary(strength.get()));
		}
		enable();
	}

	private void make() {
		now.ifPresent(e -> e.rules().edition().ifPresent(edition -> {
			searched = new HashSet<>();
			saved.clear();
			start(e, new StrengthJob(Messages.MistakesTab_making, progress -> Strength.of(edition, e.book().jobs(), progress), new Ending(e, Set.of())));
		}));
	}

	/** For the unnoticed mistakes that are picked; for all of them when none is. */
	private void look() {
		Strength made = strength.orElseThrow();
		Evaluation was = of.orElseThrow();
		Edition edition = was.rules().edition().orElseThrow();
		List<Tried> picked = picked().stream().filter(t -> t.noticedBy().isEmpty()).toList();
		Set<Mistake> wanted = new HashSet<>((picked.isEmpty() ? made.survivors() : picked).stream().map(Tried::mistake).toList());
		List<Tried> looked = made.tried().stream().filter(t -> wanted.contains(t.mistake())).toList();
		start(was, new StrengthJob(Messages.MistakesTab_looking,
				progress -> merged(made, new Strength(looked, made.left()).withTelltales(edition, was.book().jobs(), progress)), new Ending(was, wanted)));
	}

	private static Strength merged(Strength made, Strength looked) {
		Map<Mistake, Tried> found = new HashMap<>();
		looked.tried().stream().filter(t -> t.telltale().isPresent()).forEach(t -> found.put(t.mistake(), t));
		return new Strength(made.tried().stream().map(t -> found.getOrDefault(t.mistake(), t)).toList(), made.left());
	}

	private void start(Evaluation about, StrengthJob job) {
		running.ifPresent(StrengthJob::cancel);
		running = Optional.of(job);
		of = Optional.of(about);
		bar.setSelection(0);
		say(job.getName());
		enable();
		job.schedule();
	}

	private void save() {
		Optional<Edition> edition = now.flatMap(e -> e.rules().edition());
		List<Catching> found = picked().stream().filter(t -> !saved.containsKey(t.mistake())).flatMap(t -> Catching.of(t, of.orElseThrow().book().jobs()).stream()).toList();
		try {
			for (Catching catching : found) {
				Optional<String> path = edition.isEmpty() ? Optional.empty()
						: new FoundJobs(now.orElseThrow().book().folder()).save(catching, edition.get());
				path.ifPresent(p -> saved.put(catching.mistake(), p));
				say(path.map(p -> NLS.bind(Messages.MistakesTab_saved, p)).orElse(Messages.MistakesTab_outdated));
			}
			FoundJobs.refresh();
		} catch (IOException | JobNotWritten | CoreException e) {
			StatusManager.getManager().handle(new Status(IStatus.ERROR, MistakesTab.class, Messages.MistakesTab_notSaved, e), StatusManager.SHOW | StatusManager.LOG);
		}
		lines();
		enable();
	}

	private List<Tried> picked() {
		return tree.pickedRows().stream().flatMap(l -> l.about().filter(Tried.class::isInstance).map(Tried.class::cast).stream()).toList();
	}

	private void lines() {
		strength.ifPresent(s -> tree.show(MistakeLines.of(s, of.orElseThrow().book().jobs(), searched, saved)));
	}

	private String summary(Strength made) {
		String figures = NLS.bind(Messages.MistakesTab_summary, made.tried().size(), made.survivors().size());
		String left = made.left().isEmpty() ? "" : " " + NLS.bind(Messages.MistakesTab_left, made.left().size()); //$NON-NLS-1$ //$NON-NLS-2$
		return figures + left + (of.equals(now) ? "" : " " + Messages.MistakesTab_changed); //$NON-NLS-1$ //$NON-NLS-2$
	}

	private void say(String words) {
		doing.setText(words);
		doing.setToolTipText(words);
	}

	private void enable() {
		boolean busy = running.isPresent();
		boolean runs = now.filter(Evaluation::runs).isPresent();
		make.setEnabled(!busy && runs);
		look.setEnabled(!busy && strength.filter(s -> !s.survivors().isEmpty()).isPresent());
		stop.setEnabled(busy);
		bar.setVisible(busy);
		more.setText(tree.pickedRows().stream().findFirst().map(l -> l.cell(0) + "\n" + l.cell(2)).orElse("")); //$NON-NLS-1$ //$NON-NLS-2$
		save.setEnabled(!busy && runs && picked().stream().anyMatch(t -> t.telltale().isPresent() && !saved.containsKey(t.mistake())));
	}

	/** What happens when work ends. @param about the state of the book it is about @param wanted the mistakes a job was looked for */
	private final class Ending implements StrengthJob.Told {
		private final Evaluation about;
		private final Set<Mistake> wanted;

		Ending(Evaluation about, Set<Mistake> wanted) {
			this.about = about;
			this.wanted = wanted;
		}

		private boolean awaited() {
			return !pane.isDisposed() && of.filter(o -> o == about).isPresent();
		}

		@Override
		public void far(int done, int all) {
			if (awaited() && running.isPresent()) {
				bar.setMaximum(all);
				bar.setSelection(done);
				say(NLS.bind(Messages.MistakesTab_far, new Object[] { running.get().getName(), done, all }));
			}
		}

		@Override
		public void ended(Strength came, boolean stopped) {
			if (awaited()) {
				running = Optional.empty();
				strength = Optional.of(came);
				if (!stopped) {
					searched.addAll(wanted);
				}
				lines();
				say((stopped ? Messages.MistakesTab_stopped + " " : "") + summary(came)); //$NON-NLS-1$ //$NON-NLS-2$
				enable();
				changed.run();
			}
		}

		@Override
		public void failed() {
			if (awaited()) {
				running = Optional.empty();
				say(Messages.StrengthJob_fault);
				enable();
			}
		}
	}
}
