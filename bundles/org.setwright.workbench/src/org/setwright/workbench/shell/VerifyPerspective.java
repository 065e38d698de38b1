package org.setwright.workbench.shell;

import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IPerspectiveFactory;
import org.setwright.workbench.jobs.JobsView;
import org.setwright.workbench.reasons.ReasonsView;
import org.setwright.workbench.setup.SetupView;

/** For checking every job against what is expected of it: jobs and problems first, the rest follows what is picked. */
public final class VerifyPerspective implements IPerspectiveFactory {

	@Override
	public void createInitialLayout(IPageLayout layout) {
		layout.setEditorAreaVisible(false);
		layout.addView(JobsView.ID, IPageLayout.LEFT, 0.36f, layout.getEditorArea());
		layout.addView(IPageLayout.ID_PROBLEM_VIEW, IPageLayout.BOTTOM, 0.7f, JobsView.ID);
		layout.addView(SetupView.ID, IPageLayout.TOP, 0.6f, layout.getEditorArea());
		layout.addView(ReasonsView.ID, IPageLayout.BOTTOM, 0.6f, SetupView.ID);
	}
}
