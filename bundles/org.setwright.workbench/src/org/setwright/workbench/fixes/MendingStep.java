package org.setwright.workbench.fixes;

import org.eclipse.core.resources.IMarker;
import org.eclipse.swt.graphics.Image;
import org.eclipse.ui.IMarkerResolution2;
import org.eclipse.ui.IMarkerResolutionRelevance;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;
import org.setwright.workbench.look.Icon;
import org.setwright.writing.fix.Fix;

/** One way to mend a problem. It is worked out once more before it is done, in case somebody has typed meanwhile. */
final class MendingStep implements IMarkerResolution2, IMarkerResolutionRelevance {
	private final Fix fix;
	private final int relevance;

	MendingStep(Fix fix, int relevance) {
		this.fix = fix;
		this.relevance = relevance;
	}

	@Override
	public String getLabel() {
		return fix.title();
	}

	@Override
	public String getDescription() {
		return fix.detail();
	}

	@Override
	public Image getImage() {
		return Icon.WRITE.image();
	}

	@Override
	public int getRelevanceForResolution() {
		return relevance;
	}

	@Override
	public void run(IMarker marker) {
		IWorkbenchWindow window = PlatformUI.getWorkbench().getActiveWorkbenchWindow();
		Mending.problem(marker).ifPresent(problem -> Mending.fixes(problem).stream().filter(f -> f.title().equals(fix.title())).findFirst()
				.ifPresent(now -> FixDone.on((window == null ? PlatformUI.getWorkbench().getWorkbenchWindows()[0] : window).getActivePage(),
						problem.at().file(), now)));
	}
}
