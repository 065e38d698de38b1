package org.setwright.workbench.shell;

import org.eclipse.ui.IFolderLayout;
import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IPerspectiveFactory;
import org.setwright.workbench.cases.CasesView;
import org.setwright.workbench.fitness.FitnessView;
import org.setwright.workbench.jobs.JobsView;
import org.setwright.workbench.reasons.ReasonsView;
import org.setwright.workbench.setup.SetupView;

/** For checking every job against what is expected of it: the case check first, the rest follows what is picked. */
public final class VerifyPerspective implements IPerspectiveFactory {

	@Override
	public void createInitialLayout(IPageLayout layout) {
		layout.setEditorAreaVisible(false);
		IFolderLayout left = layout.createFolder("left", IPageLayout.LEFT, 0.5f, layout.getEditorArea()); //$NON-NLS-1$
		left.addView(CasesView.ID);
		left.addView(FitnessView.ID);
		left.addView(JobsView.ID);
		layout.addView(IPageLayout.ID_PROBLEM_VIEW, IPageLayout.BOTTOM, 0.78f, "left"); //$NON-NLS-1$
		layout.addView(SetupView.ID, IPageLayout.TOP, 0.6f, layout.getEditorArea());
		layout.addView(ReasonsView.ID, IPageLayout.BOTTOM, 0.6f, SetupView.ID);
	}
}
