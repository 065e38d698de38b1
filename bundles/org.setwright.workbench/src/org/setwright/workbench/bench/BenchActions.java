package org.setwright.workbench.bench;

import java.util.function.Consumer;
import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.IAction;
import org.eclipse.jface.action.IMenuCreator;
import org.eclipse.jface.action.IToolBarManager;
import org.eclipse.jface.action.Separator;
import org.eclipse.jface.action.ActionContributionItem;
import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.ui.ISharedImages;
import org.eclipse.ui.PlatformUI;
import org.setwright.workbench.look.Icon;

/** The buttons of the bench. Each does what a line would do, so that everything can be learned from what is said there. */
final class BenchActions {
	private static final String KEEP_RULE = "keep rule in "; //$NON-NLS-1$
	private static final String KEEP_JOB_AS = "keep job as "; //$NON-NLS-1$
	private final Action undo;
	private final Action redo;
	private final Action keep;
	private final Action stop;
	private final Action save;
	private final Action replay;
	private final Action clear;

	/** What the buttons do. */
	interface Doing {
		/** Follows {@code line} at once. */
		void say(String line);

		/** Puts the beginning of a line into the input. */
		void begin(String line);

		/** Ends what takes long. */
		void stop();

		/** Asks for a file and writes the lines into it. */
		void save();

		/** Asks for a file and follows its lines. */
		void replay();

		/** Clears what was said; what was tried stays. */
		void clear();
	}

	BenchActions(IToolBarManager bar, Doing doing) {
		undo = action(Messages.BenchActions_undo, Messages.BenchActions_undoHelp, shared(ISharedImages.IMG_TOOL_UNDO),
				a -> doing.say("undo")); //$NON-NLS-1$
		redo = action(Messages.BenchActions_redo, Messages.BenchActions_redoHelp, shared(ISharedImages.IMG_TOOL_REDO),
				a -> doing.say("redo")); //$NON-NLS-1$
		keep = new KeepMenu(doing);
		stop = action(Messages.BenchActions_stop, Messages.BenchActions_stopHelp, shared(ISharedImages.IMG_ELCL_STOP), a -> doing.stop());
		save = action(Messages.BenchActions_save, Messages.BenchActions_saveHelp, shared(ISharedImages.IMG_ETOOL_SAVEAS_EDIT), a -> doing.save());
		replay = action(Messages.BenchActions_replay, Messages.BenchActions_replayHelp, shared(ISharedImages.IMG_TOOL_FORWARD), a -> doing.replay());
		clear = action(Messages.BenchActions_clear, Messages.BenchActions_clearHelp, shared(ISharedImages.IMG_ETOOL_CLEAR), a -> doing.clear());
		bar.add(undo);
		bar.add(redo);
		bar.add(keep);
		bar.add(new Separator());
		bar.add(save);
		bar.add(replay);
		bar.add(clear);
		bar.add(stop);
		busy(false);
	}

	/** Shows whether something takes long. */
	void busy(boolean busy) {
		stop.setEnabled(busy);
	}

	/** @return takes the last line back */
	IAction undo() {
		return undo;
	}

	/** @return does it again */
	IAction redo() {
		return redo;
	}

	/** Opens the menu of what can be kept. */
	void keep(Control beside) {
		Menu menu = keep.getMenuCreator().getMenu(beside);
		menu.setLocation(beside.toDisplay(0, 0));
		menu.setVisible(true);
	}

	private static ImageDescriptor shared(String image) {
		return PlatformUI.getWorkbench().getSharedImages().getImageDescriptor(image);
	}

	private static Action action(String text, String help, ImageDescriptor image, Consumer<Action> does) {
		Action action = new Action(text) {
			@Override
			public void run() {
				does.accept(this);
			}
		};
		action.setToolTipText(help);
		action.setImageDescriptor(image);
		return action;
	}

	/** What can be kept. */
	private static final class KeepMenu extends Action implements IMenuCreator {
		private final Doing doing;
		private Menu menu;

		KeepMenu(Doing doing) {
			super(Messages.BenchActions_keep, IAction.AS_DROP_DOWN_MENU);
			this.doing = doing;
			setToolTipText(Messages.BenchActions_keepHelp);
			setImageDescriptor(Icon.BOOK.descriptor());
			setMenuCreator(this);
		}

		@Override
		public void runWithEvent(Event event) {
			doing.begin("keep "); //$NON-NLS-1$
		}

		@Override
		public Menu getMenu(Control parent) {
			dispose();
			menu = new Menu(parent);
			add(Messages.BenchActions_keepRule, () -> doing.begin(KEEP_RULE));
			add(Messages.BenchActions_keepJobAs, () -> doing.begin(KEEP_JOB_AS));
			add(Messages.BenchActions_keepJob, () -> doing.say("keep job")); //$NON-NLS-1$
			add(Messages.BenchActions_keepExpectation, () -> doing.begin("keep expectation ")); //$NON-NLS-1$
			add(Messages.BenchActions_keepExpectations, () -> doing.say("keep expectations")); //$NON-NLS-1$
			return menu;
		}

		private void add(String text, Runnable does) {
			new ActionContributionItem(new Action(text) {
				@Override
				public void run() {
					does.run();
				}
			}).fill(menu, -1);
		}

		@Override
		public Menu getMenu(Menu parent) {
			return null;
		}

		@Override
		public void dispose() {
			if (menu != null) {
				menu.dispose();
			}
		}
	}
}
