package org.setwright.workbench.shell;

import org.eclipse.ui.IFolderLayout;
import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IPerspectiveFactory;
import org.setwright.workbench.aloud.ReadAloudView;
import org.setwright.workbench.editions.EditionsView;
import org.setwright.workbench.jobs.JobsView;
import org.setwright.workbench.landing.LandingView;
import org.setwright.workbench.reasons.ReasonsView;
import org.setwright.workbench.setup.SetupView;
import org.setwright.workbench.startup.StartUpView;

/** For going through a job with others: the set-up large, its reasons beside it, the job below. */
public final class ReviewPerspective implements IPerspectiveFactory {

	@Override
	public void createInitialLayout(IPageLayout layout) {
		layout.setEditorAreaVisible(true);
		IFolderLayout answers = layout.createFolder("answers", IPageLayout.TOP, 0.64f, layout.getEditorArea()); //$NON-NLS-1$
		answers.addView(SetupView.ID);
		answers.addView(LandingView.ID);
		answers.addView(StartUpView.ID);
		answers.addView(EditionsView.ID);
		layout.addView(JobsView.ID, IPageLayout.LEFT, 0.26f, "answers"); //$NON-NLS-1$
		IFolderLayout why = layout.createFolder("why", IPageLayout.RIGHT, 0.45f, layout.getEditorArea()); //$NON-NLS-1$
		why.addView(ReasonsView.ID);
		why.addView(ReadAloudView.ID);
	}
}
