package org.setwright.workbench.drafts;

import java.io.IOException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.core.runtime.ICoreRunnable;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Platform;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.statushandlers.StatusManager;
import org.osgi.framework.FrameworkUtil;
import org.setwright.workbench.desk.Desk;
import org.setwright.workbench.desk.DeskState;
import org.setwright.workbench.desk.Drafts;
import org.setwright.workbench.folder.BookTexts;
import org.setwright.writing.drafts.Draft;
import org.setwright.writing.drafts.DraftStore;

/** Keeps what is being typed, moments after each pause, and offers what is left of a crash when its book is opened. */
public final class DraftKeeper {
	/** At most this much of typing is lost. */
	private static final int PAUSE_MILLIS = 400;
	private static DraftKeeper only;

	private final Desk desk;
	private final DraftStore store;
	private final Job keeping = Job.createSystem(Messages.DraftKeeper_name, (ICoreRunnable) monitor -> keep());
	private volatile Optional<Path> book = Optional.empty();
	private volatile Map<String, String> typed = Map.of();
	private Map<String, String> kept = Map.of();
	private Optional<Path> asked = Optional.empty();
	private boolean told;

	DraftKeeper(Desk desk, DraftStore store) {
		this.desk = desk;
		this.store = store;
	}

	/** Begins to keep drafts; for as long as the program runs. */
	public static void start(Desk desk) {
		Path notes = Path.of(Platform.getStateLocation(FrameworkUtil.getBundle(DraftKeeper.class)).toOSString());
		only = new DraftKeeper(desk, new DraftStore(notes.resolve("drafts"))); //$NON-NLS-1$
		desk.addDraftListener(only::drafted);
		desk.addListener(only::deskChanged);
	}

	/** Takes note that the program ends in order: whatever was not saved has been given up by the person. */
	public static void end() {
		if (only != null) {
			only.typed = Map.of();
			only.keep();
		}
	}

	private void drafted(Drafts drafts) {
		if (desk.state().folder().equals(book)) {
			typed = drafts.texts();
			keeping.schedule(PAUSE_MILLIS);
		}
	}

	/** Another book has drafts of its own; those of the last one stay as they are. */
	private void deskChanged(DeskState before, DeskState now) {
		if (!now.folder().equals(book)) {
			keep();
			forgetNothing(now.folder());
		}
		if (now.latest().isPresent() && !now.folder().equals(asked)) {
			asked = now.folder();
			PlatformUI.getWorkbench().getDisplay().asyncExec(this::offer);
		}
	}

	private synchronized void forgetNothing(Optional<Path> folder) {
		book = folder;
		typed = Map.of();
		kept = Map.of();
		asked = Optional.empty();
	}

	private synchronized void keep() {
		Map<String, String> now = typed;
		if (book.isEmpty() || now.equals(kept)) {
			return;
		}
		try {
			store.keepOnly(book.get(), now, kept);
			kept = now;
		} catch (IOException full) {
			tell(full);
		}
	}

	private void tell(IOException why) {
		if (!told) {
			told = true;
			StatusManager.getManager().handle(new Status(IStatus.WARNING, DraftKeeper.class, Messages.DraftKeeper_notKept, why), StatusManager.SHOW);
		}
	}

	/** @return the drafts of the open book that say something else than its files do */
	List<Draft> left() {
		try {
			List<Draft> all = book.isPresent() ? store.of(book.get()) : List.of();
			return all.stream().filter(d -> !typed.containsKey(d.path())).filter(d -> !BookTexts.text(d.path()).equals(Optional.of(d.text()))).toList();
		} catch (IOException unreadable) {
			tell(unreadable);
			return List.of();
		}
	}

	private void offer() {
		List<Draft> left = left();
		IWorkbenchWindow[] windows = PlatformUI.getWorkbench().getWorkbenchWindows();
		if (left.isEmpty() || windows.length == 0) {
			return;
		}
		IWorkbenchPage page = windows[0].getActivePage();
		switch (DraftOffer.ask(page.getWorkbenchWindow().getShell(), left)) {
			case PUT_BACK -> putBack(page, left);
			case THROW_AWAY -> throwAway(left);
			case LATER -> {
				// they stay where they are
			}
		}
	}

	private void putBack(IWorkbenchPage page, List<Draft> drafts) {
		Map<String, String> held = new HashMap<>(kept);
		for (Draft draft : drafts) {
			if (DraftOffer.putBack(page, draft)) {
				held.put(draft.path(), draft.text());
			}
		}
		synchronized (this) {
			kept = Map.copyOf(held);
		}
	}

	private void throwAway(List<Draft> drafts) {
		for (Draft draft : drafts) {
			try {
				store.forget(book.orElseThrow(), draft.path());
			} catch (IOException stays) {
				tell(stays);
			}
		}
	}
}
