package org.setwright.workbench.cases;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.preferences.IEclipsePreferences;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.jface.action.Action;
import org.eclipse.ui.IViewSite;
import org.eclipse.ui.statushandlers.StatusManager;
import org.setwright.book.JobEdit;
import org.setwright.book.Problem;
import org.setwright.check.cases.Accepting;
import org.setwright.check.cases.SettingPoint;
import org.setwright.check.cases.Standing;
import org.setwright.workbench.folder.Places;
import org.setwright.workbench.look.Icon;

/**
 * Takes what was picked for right. The jobs are changed in their editors, so that it can be looked at, undone and saved like
 * any other change.
 */
final class AcceptAction extends Action {
	private static final String NODE = "org.setwright.workbench"; //$NON-NLS-1$
	private static final String NAME = "acceptedBy"; //$NON-NLS-1$
	private final IViewSite site;
	private List<CaseLine.OfPoint> points = List.of();

	AcceptAction(IViewSite site) {
		super(Messages.AcceptAction_text);
		this.site = site;
		setToolTipText(Messages.AcceptAction_help);
		setImageDescriptor(Icon.SETTLED.descriptor());
		setEnabled(false);
	}

	/** A job stands for all of it that is not met. */
	void picked(List<CaseLine> lines) {
		Map<String, CaseLine.OfPoint> wanted = new LinkedHashMap<>();
		for (CaseLine line : lines) {
			List<CaseLine.OfPoint> of = line instanceof CaseLine.OfPoint point ? List.of(point)
					: line.checked().notMet().stream().map(p -> new CaseLine.OfPoint(line.checked(), p)).toList();
			of.stream().filter(AcceptAction::acceptable).forEach(p -> wanted.put(p.key(), p));
		}
		points = List.copyOf(wanted.values());
		setEnabled(!points.isEmpty());
	}

	private static boolean acceptable(CaseLine.OfPoint of) {
		return of.point().standing() == Standing.NOT_MET || of.point().standing() == Standing.NOT_ASKED && of.point() instanceof SettingPoint;
	}

	@Override
	public void run() {
		IEclipsePreferences notes = InstanceScope.INSTANCE.getNode(NODE);
		List<CaseLine.OfPoint> wanted = points;
		new AcceptDialog(site.getShell(), wanted, notes.get(NAME, System.getProperty("user.name", ""))).ask() //$NON-NLS-1$ //$NON-NLS-2$
				.ifPresent(accepting -> {
					notes.put(NAME, accepting.by());
					accept(wanted, accepting);
				});
	}

	/** Changes every job once. */
	void accept(List<CaseLine.OfPoint> wanted, Accepting accepting) {
		Map<String, List<JobEdit>> edits = new LinkedHashMap<>();
		wanted.forEach(p -> edits.merge(p.checked().job().path(), accepting.edits(p.point()),
				(a, b) -> java.util.stream.Stream.concat(a.stream(), b.stream()).toList()));
		edits.forEach((path, changes) -> {
			Optional<Problem> refused = Places.editJob(site.getPage(), path, changes);
			refused.ifPresent(p -> StatusManager.getManager().handle(new Status(IStatus.WARNING, AcceptAction.class, p.toString()), StatusManager.SHOW));
		});
	}
}
