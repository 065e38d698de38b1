package org.setwright.workbench.folder;

import java.util.Optional;
import org.eclipse.core.resources.IFolder;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.resources.IResourceChangeEvent;
import org.eclipse.core.resources.IResourceChangeListener;
import org.eclipse.core.resources.IResourceDelta;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.ICoreRunnable;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.widgets.Display;
import org.setwright.workbench.desk.Desk;

/** Has the desk read the book again when its files change, whether in this window or elsewhere. */
public final class FolderChanges implements IResourceChangeListener {
	private static final int OF_INTEREST = IResourceDelta.CONTENT | IResourceDelta.REPLACED | IResourceDelta.LOCAL_CHANGED;
	private final Desk desk;

	/** @param desk to be told */
	public FolderChanges(Desk desk) {
		this.desk = desk;
	}

	/** Begins to listen; for as long as the window lives. */
	public void start() {
		ResourcesPlugin.getWorkspace().addResourceChangeListener(this, IResourceChangeEvent.POST_CHANGE);
	}

	/** Looks for changes made elsewhere, in the background. */
	public static void look() {
		BookProject.linked().ifPresent(folder -> {
			ICoreRunnable refresh = monitor -> folder.refreshLocal(IResource.DEPTH_INFINITE, monitor);
			Job job = Job.createSystem(Messages.FolderChanges_name, refresh);
			job.setRule(ResourcesPlugin.getWorkspace().getRuleFactory().refreshRule(folder));
			job.schedule();
		});
	}

	@Override
	public void resourceChanged(IResourceChangeEvent event) {
		Optional<IResourceDelta> inBook = BookProject.linked().map(IFolder::getFullPath)
				.map(path -> event.getDelta().findMember(path));
		if (inBook.filter(FolderChanges::changesContent).isPresent()) {
			Display.getDefault().asyncExec(desk::refresh);
		}
	}

	private static boolean changesContent(IResourceDelta delta) {
		boolean[] found = new boolean[1];
		try {
			delta.accept(d -> {
				found[0] |= d.getKind() != IResourceDelta.CHANGED || (d.getFlags() & OF_INTEREST) != 0;
				return !found[0];
			});
		} catch (CoreException cannotTell) {
			return true;
		}
		return found[0];
	}
}
