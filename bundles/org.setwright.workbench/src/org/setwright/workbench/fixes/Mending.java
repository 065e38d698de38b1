package org.setwright.workbench.fixes;

import java.util.List;
import java.util.Optional;
import org.eclipse.core.resources.IMarker;
import org.eclipse.core.resources.IResource;
import org.eclipse.ui.IMarkerResolution;
import org.eclipse.ui.IMarkerResolutionGenerator2;
import org.eclipse.ui.PlatformUI;
import org.setwright.book.Problem;
import org.setwright.workbench.desk.Desk;
import org.setwright.workbench.folder.BookProject;
import org.setwright.workbench.folder.BookTexts;
import org.setwright.workbench.folder.ProblemMarkers;
import org.setwright.writing.fix.Fix;
import org.setwright.writing.fix.Fixes;

/** Finds what would mend a marked problem, for the list of problems, the key and the pointer alike. */
public final class Mending implements IMarkerResolutionGenerator2 {

	@Override
	public boolean hasResolutions(IMarker marker) {
		return problem(marker).filter(p -> !fixes(p).isEmpty()).isPresent();
	}

	@Override
	public IMarkerResolution[] getResolutions(IMarker marker) {
		List<Fix> fixes = problem(marker).map(Mending::fixes).orElse(List.of());
		return java.util.stream.IntStream.range(0, fixes.size()).mapToObj(i -> new MendingStep(fixes.get(i), fixes.size() - i))
				.toArray(IMarkerResolution[]::new);
	}

	/** @return the problem that {@code marker} shows, as it stands in the book now */
	static Optional<Problem> problem(IMarker marker) {
		Optional<String> path = Optional.ofNullable(marker.getResource()).map(IResource::getFullPath).flatMap(BookProject::path);
		Desk desk = PlatformUI.getWorkbench().getService(Desk.class);
		return path.flatMap(file -> desk.state().latest().flatMap(e -> e.problemsIn(file).stream()
				.filter(p -> p.at().line() == marker.getAttribute(IMarker.LINE_NUMBER, 0)
						&& ProblemMarkers.words(p).equals(marker.getAttribute(IMarker.MESSAGE, ""))) //$NON-NLS-1$
				.findFirst()));
	}

	static List<Fix> fixes(Problem problem) {
		return BookTexts.manuscript(PlatformUI.getWorkbench().getService(Desk.class).state())
				.flatMap(m -> BookTexts.text(problem.at().file()).map(text -> new Fixes(m).of(problem, text))).orElse(List.of());
	}
}
