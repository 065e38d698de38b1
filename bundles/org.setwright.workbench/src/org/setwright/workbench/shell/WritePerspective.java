package org.setwright.workbench.shell;

import org.eclipse.ui.IFolderLayout;
import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IPerspectiveFactory;
import org.setwright.workbench.aloud.ReadAloudView;
import org.setwright.workbench.bench.BenchView;
import org.setwright.workbench.contents.ContentsView;
import org.setwright.workbench.jobs.JobsView;
import org.setwright.workbench.landing.LandingView;
import org.setwright.workbench.reasons.ReasonsView;
import org.setwright.workbench.setup.SetupView;
import org.setwright.workbench.startup.StartUpView;

/** For the person who writes the rules: the editor in the middle, what it does to a job beside it. */
public final class WritePerspective implements IPerspectiveFactory {
	/** Its name in the registry. */
	public static final String ID = "org.setwright.workbench.write"; //$NON-NLS-1$

	@Override
	public void createInitialLayout(IPageLayout layout) {
		layout.setEditorAreaVisible(true);
		IFolderLayout book = layout.createFolder("book", IPageLayout.LEFT, 0.19f, layout.getEditorArea()); //$NON-NLS-1$
		book.addView(ContentsView.ID);
		book.addView(IPageLayout.ID_OUTLINE);
		layout.addView(JobsView.ID, IPageLayout.BOTTOM, 0.5f, "book"); //$NON-NLS-1$
		IFolderLayout answers = layout.createFolder("answers", IPageLayout.RIGHT, 0.49f, layout.getEditorArea()); //$NON-NLS-1$
		answers.addView(SetupView.ID);
		answers.addView(LandingView.ID);
		answers.addView(StartUpView.ID);
		IFolderLayout below = layout.createFolder("below", IPageLayout.BOTTOM, 0.66f, layout.getEditorArea()); //$NON-NLS-1$
		below.addView(ReasonsView.ID);
		below.addView(ReadAloudView.ID);
		below.addView(BenchView.ID);
		below.addView(IPageLayout.ID_PROBLEM_VIEW);
	}
}
