package org.setwright.workbench.folder;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IFolder;
import org.eclipse.core.resources.IMarker;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.resources.WorkspaceJob;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.osgi.util.NLS;
import org.setwright.book.Problem;

/** Keeps the marks in editors and in the list of problems the same as the problems of the book. */
public final class ProblemMarkers extends WorkspaceJob {
	/** The kind of mark used. */
	public static final String TYPE = "org.setwright.workbench.problem"; //$NON-NLS-1$

	/** What a mark says and where; two marks that say the same in the same place are one. */
	private record Mark(IResource on, Map<String, Object> says) {
	}

	private volatile List<Problem> wanted = List.of();

	/** Makes the keeper; it does nothing until told what to show. */
	public ProblemMarkers() {
		super(Messages.ProblemMarkers_name);
		setSystem(true);
		setRule(ResourcesPlugin.getWorkspace().getRuleFactory().markerRule(ResourcesPlugin.getWorkspace().getRoot()));
	}

	/** Shows {@code problems} and no others, soon. */
	public void show(List<Problem> problems) {
		wanted = problems;
		schedule();
	}

	@Override
	public IStatus runInWorkspace(IProgressMonitor monitor) throws CoreException {
		Set<Mark> missing = new HashSet<>();
		wanted.forEach(p -> BookProject.linked().ifPresent(folder -> missing.add(mark(p, folder))));
		for (IMarker present : ResourcesPlugin.getWorkspace().getRoot().findMarkers(TYPE, false, IResource.DEPTH_INFINITE)) {
			if (!missing.remove(new Mark(present.getResource(), present.getAttributes()))) {
				present.delete();
			}
		}
		for (Mark mark : missing) {
			if (mark.on().exists()) {
				mark.on().createMarker(TYPE, mark.says());
			}
		}
		return Status.OK_STATUS;
	}

	/** @return what the mark of {@code problem} says */
	public static String words(Problem problem) {
		return NLS.bind(Messages.ProblemMarkers_message, problem.what(), problem.remedy());
	}

	private static Mark mark(Problem problem, IFolder folder) {
		Map<String, Object> says = new HashMap<>();
		says.put(IMarker.MESSAGE, words(problem));
		says.put(IMarker.SEVERITY,
				problem.severity() == Problem.Severity.ERROR ? IMarker.SEVERITY_ERROR : IMarker.SEVERITY_WARNING);
		IFile file = problem.at().file().isEmpty() ? null : BookProject.file(problem.at().file()).orElse(null);
		if (file == null) {
			return new Mark(folder, says);
		}
		if (problem.at().line() > 0) {
			says.put(IMarker.LINE_NUMBER, problem.at().line());
			String text = BookTexts.text(problem.at().file()).orElse(""); //$NON-NLS-1$
			TextSpan.of(text, problem.at().line(), problem.at().column()).ifPresent(span -> {
				says.put(IMarker.CHAR_START, span.start());
				says.put(IMarker.CHAR_END, span.end());
			});
		}
		return new Mark(file, says);
	}
}
