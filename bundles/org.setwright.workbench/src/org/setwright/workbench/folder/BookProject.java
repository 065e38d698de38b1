package org.setwright.workbench.folder;

import java.net.URI;
import java.nio.file.Path;
import java.util.Optional;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IFolder;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IPath;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.SubMonitor;

/**
 * The one project of the workspace. The folder of the open book is linked into it, so that the platform's editors and
 * markers work on the book's own files while none of the platform's files lands in the book.
 */
public final class BookProject {
	private static final String PROJECT = "Rule books"; //$NON-NLS-1$

	private BookProject() {
	}

	/** Links {@code folder} in place of whatever was linked. Takes the workspace lock; call outside the window's thread. */
	public static void link(Path folder, IProgressMonitor monitor) throws CoreException {
		ResourcesPlugin.getWorkspace().run(m -> {
			SubMonitor steps = SubMonitor.convert(m, 4);
			IProject project = opened(steps.split(1));
			IFolder link = project.getFolder(name(folder));
			for (IResource old : project.members()) {
				if (old.isLinked() && !(old.equals(link) && folder.toUri().equals(old.getLocationURI()))) {
					old.delete(true, steps.split(1));
				}
			}
			if (!link.exists()) {
				URI place = folder.toUri();
				link.createLink(place, IResource.REPLACE | IResource.ALLOW_MISSING_LOCAL, steps.split(1));
			}
			link.refreshLocal(IResource.DEPTH_INFINITE, steps.split(1));
		}, ResourcesPlugin.getWorkspace().getRoot(), 0, monitor);
	}

	/** @return the linked folder of the open book, or empty when none is open */
	public static Optional<IFolder> linked() {
		IProject project = project();
		try {
			if (project.isAccessible()) {
				for (IResource member : project.members()) {
					if (member.isLinked() && member instanceof IFolder folder) {
						return Optional.of(folder);
					}
				}
			}
		} catch (CoreException gone) {
			// a project that cannot be listed has nothing linked
		}
		return Optional.empty();
	}

	/** @param path below the book folder @return the file of the open book, or empty when there is no such file */
	public static Optional<IFile> file(String path) {
		return place(path).filter(IFile::exists);
	}

	/** @param path below the book folder @return where that file is, or would be; empty when no book is open */
	public static Optional<IFile> place(String path) {
		return linked().map(f -> f.getFile(IPath.fromPortableString(path)));
	}

	/** @return where {@code resource} is below the book folder, with forward slashes; empty when it is not in it */
	public static Optional<String> path(IPath resource) {
		return linked().map(IResource::getFullPath).filter(f -> f.isPrefixOf(resource) && !f.equals(resource))
				.map(f -> resource.makeRelativeTo(f).toPortableString());
	}

	private static IProject project() {
		return ResourcesPlugin.getWorkspace().getRoot().getProject(PROJECT);
	}

	private static IProject opened(IProgressMonitor monitor) throws CoreException {
		IProject project = project();
		if (!project.exists()) {
			project.create(monitor);
		}
		project.open(monitor);
		return project;
	}

	private static String name(Path folder) {
		return folder.getFileName() == null ? "book" : folder.getFileName().toString(); //$NON-NLS-1$
	}
}
