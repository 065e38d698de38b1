package org.setwright.workbench.bench;

import java.util.List;
import java.util.Optional;
import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.IAction;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.text.ITextOperationTarget;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.actions.ActionFactory;
import org.eclipse.ui.handlers.IHandlerService;
import org.eclipse.ui.part.ViewPart;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.setwright.bench.Session;
import org.setwright.bench.Wish;
import org.setwright.bench.hand.Ground;
import org.setwright.bench.told.Row;
import org.setwright.bench.told.Tone;
import org.setwright.workbench.desk.Desk;
import org.setwright.workbench.desk.DeskListener;
import org.setwright.workbench.desk.DeskState;
import org.setwright.workbench.folder.Places;

/** What if? Lines over the job and the book in hand; after each only what changed. */
public final class BenchView extends ViewPart {
	/** Its name in the registry. */
	public static final String ID = "org.setwright.workbench.bench"; //$NON-NLS-1$
	private static final String COMPLETE = "org.eclipse.ui.edit.text.contentAssist.proposals"; //$NON-NLS-1$
	private final DeskListener listener = this::deskChanged;
	private final Remembered remembered = TypedBefore.load();
	private Desk desk;
	private BenchWork work;
	private SaidPane said;
	private LineInput input;
	private Label standing;
	private BenchActions actions;
	private Scripts scripts;
	private boolean toCome;

	@Override
	public void createPartControl(Composite parent) {
		desk = getSite().getService(Desk.class);
		work = new BenchWork(this::done);
		GridLayoutFactory.fillDefaults().margins(4, 4).spacing(0, 4).applyTo(parent);
		said = new SaidPane(parent, at -> Places.open(getSite().getPage(), at));
		GridDataFactory.fillDefaults().grab(true, true).applyTo(said.control());
		standing = new Label(parent, SWT.WRAP);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(standing);
		input = new LineInput(parent, remembered, () -> work.session().map(Session::hand), this::say);
		scripts = new Scripts(getSite().getShell());
		actions = new BenchActions(getViewSite().getActionBars().getToolBarManager(), new Buttons());
		keys();
		said.add(Told.unasked(List.of(new Row(0, Tone.QUIET, Messages.BenchView_hint, "")))); //$NON-NLS-1$
		desk.addListener(listener);
		follow(desk.state(), true);
	}

	/** While nothing is typed, undo and redo concern lines; else what is being typed. */
	private void keys() {
		global(ActionFactory.UNDO, () -> lineOrText(actions.undo(), ITextOperationTarget.UNDO));
		global(ActionFactory.REDO, () -> lineOrText(actions.redo(), ITextOperationTarget.REDO));
		global(ActionFactory.CUT, () -> text().cut());
		global(ActionFactory.COPY, () -> text().copy());
		global(ActionFactory.PASTE, () -> input.control().paste());
		global(ActionFactory.SELECT_ALL, () -> text().selectAll());
		getSite().getService(IHandlerService.class).activateHandler(COMPLETE, new AbstractHandler() {
			@Override
			public Object execute(ExecutionEvent event) {
				input.complete();
				return null;
			}
		});
		input.control().addListener(SWT.KeyDown, e -> {
			if (e.keyCode == 'k' && e.stateMask == SWT.MOD1) {
				actions.keep(input.control());
			}
		});
	}

	private StyledText text() {
		return said.control().isFocusControl() ? said.control() : input.control();
	}

	private void lineOrText(IAction line, int operation) {
		if (input.text().isEmpty()) {
			line.run();
		} else {
			input.operate(operation);
		}
	}

	private void global(ActionFactory which, Runnable does) {
		getViewSite().getActionBars().setGlobalActionHandler(which.getId(), new Action() {
			@Override
			public void run() {
				does.run();
			}
		});
	}

	private void deskChanged(DeskState before, DeskState now) {
		if (before.latest() != now.latest() || !before.job().equals(now.job())) {
			follow(now, !before.job().equals(now.job()));
		}
	}

	/** A job picked while nothing runs comes to the bench as soon as something does. */
	private void follow(DeskState now, boolean picked) {
		toCome |= picked;
		boolean runs = now.edition().isPresent();
		now.edition().ifPresent(edition -> {
			work.goOn(new Ground(now.latest().orElseThrow().book(), edition, Optional.empty()).with(now.job().orElse("")), toCome); //$NON-NLS-1$
			toCome = false;
		});
		stand(runs || now.latest().isEmpty() ? "" : work.session().isPresent() ? Messages.BenchView_mistakesSince
				: Messages.BenchView_mistakes); //$NON-NLS-1$
	}

	private void stand(String words) {
		standing.setText(words);
		((GridData) standing.getLayoutData()).exclude = words.isEmpty();
		standing.setVisible(!words.isEmpty());
		standing.getParent().layout();
	}

	private void say(String line) {
		TypedBefore.save(remembered);
		work.say(line);
		actions.busy(true);
	}

	private void done(BenchWork.Done done) {
		if (said.control().isDisposed()) {
			return;
		}
		done.told().stream().filter(t -> !(t.rows().isEmpty() && done.wish().isPresent())).forEach(said::add);
		actions.busy(work.busy());
		done.wish().ifPresent(wish -> grant(done.told().get(0).line(), wish));
		done.session().map(s -> s.hand().job().path()).filter(p -> !p.isEmpty() && !work.busy()).ifPresent(desk::pickJob);
	}

	private void grant(String line, Wish wish) {
		if (wish instanceof Wish.Keep keep) {
			said.add(new Kept(work.session().orElseThrow().hand().ground().book().folder()).keep(line, keep.keeping()));
			desk.refresh();
		} else if (wish instanceof Wish.Save save) {
			said.add(scripts.write(line, scripts.named(save.file()), save.text(), false));
		} else if (wish instanceof Wish.Replay replay) {
			replay(line, scripts.named(replay.file()));
		} else {
			getSite().getPage().hideView(this);
		}
	}

	private void replay(String line, Optional<java.nio.file.Path> file) {
		Scripts.Read read = scripts.read(line, file);
		said.add(read.told());
		work.say(read.lines());
	}

	/** @return whether a line is still being followed */
	public boolean busy() {
		return work.busy();
	}

	@Override
	public void setFocus() {
		input.control().setFocus();
	}

	@Override
	public void dispose() {
		desk.removeListener(listener);
		work.end();
		super.dispose();
	}

	/** What the buttons do. */
	private final class Buttons implements BenchActions.Doing {
		@Override
		public void say(String line) {
			BenchView.this.say(line);
		}

		@Override
		public void begin(String line) {
			input.put(line);
			input.complete();
		}

		@Override
		public void stop() {
			work.stop();
		}

		@Override
		public void save() {
			String text = work.session().map(Session::script).orElse(""); //$NON-NLS-1$
			scripts.askWhere().ifPresent(file -> said.add(scripts.write("", Optional.of(file), text, true))); //$NON-NLS-1$
		}

		@Override
		public void replay() {
			scripts.askWhich().ifPresent(file -> BenchView.this.replay("replay " + file, Optional.of(file))); //$NON-NLS-1$
		}

		@Override
		public void clear() {
			said.clear();
		}
	}
}
