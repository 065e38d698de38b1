package org.setwright.workbench.shell;

import java.util.List;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.preferences.DefaultScope;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.application.IWorkbenchConfigurer;
import org.eclipse.ui.application.IWorkbenchWindowConfigurer;
import org.eclipse.ui.application.WorkbenchAdvisor;
import org.eclipse.ui.application.WorkbenchWindowAdvisor;
import org.eclipse.ui.ide.IDE;
import org.setwright.workbench.desk.Desk;
import org.setwright.workbench.drafts.DraftKeeper;
import org.setwright.workbench.folder.FolderChanges;
import org.setwright.workbench.folder.ProblemMarkers;
import org.setwright.workbench.folder.TypedTexts;
import org.setwright.workbench.look.Icon;

/** Tells the platform how this workbench begins. */
final class ShellAdvisor extends WorkbenchAdvisor {

	@Override
	public void initialize(IWorkbenchConfigurer configurer) {
		super.initialize(configurer);
		configurer.setSaveAndRestore(true);
		DefaultScope.INSTANCE.getNode(ResourcesPlugin.PI_RESOURCES).putBoolean(ResourcesPlugin.PREF_AUTO_REFRESH, true);
		IDE.registerAdapters();
		configurer.declareImage("IMG_OBJS_ERROR_PATH", Icon.PROBLEM.descriptor(), true); //$NON-NLS-1$
		configurer.declareImage("IMG_OBJS_WARNING_PATH", Icon.DANGER.descriptor(), true); //$NON-NLS-1$
		configurer.declareImage("IMG_OBJS_INFO_PATH", Icon.NOTE.descriptor(), true); //$NON-NLS-1$
	}

	@Override
	public void preStartup() {
		Desk desk = PlatformUI.getWorkbench().getService(Desk.class);
		new TypedTexts(desk).start();
		new FolderChanges(desk).start();
		DraftKeeper.start(desk);
		ProblemMarkers markers = new ProblemMarkers();
		desk.addListener((before, now) -> {
			if (before.latest() != now.latest()) {
				markers.show(now.latest().map(e -> e.problems()).orElse(List.of()));
			}
		});
	}

	@Override
	public void postShutdown() {
		DraftKeeper.end();
	}

	@Override
	public String getInitialWindowPerspectiveId() {
		return WritePerspective.ID;
	}

	@Override
	public WorkbenchWindowAdvisor createWorkbenchWindowAdvisor(IWorkbenchWindowConfigurer configurer) {
		return new WindowAdvisor(configurer);
	}
}
