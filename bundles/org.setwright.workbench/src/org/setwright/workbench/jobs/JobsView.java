package org.setwright.workbench.jobs;

import java.util.List;
import java.util.Optional;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.jface.viewers.Viewer;
import org.eclipse.jface.viewers.ViewerFilter;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.part.ViewPart;
import org.setwright.workbench.desk.Desk;
import org.setwright.workbench.desk.DeskListener;
import org.setwright.workbench.desk.DeskState;
import org.setwright.workbench.folder.Places;
import org.setwright.workbench.jobs.JobRow.Standing;
import org.setwright.workbench.look.ColumnWidths;
import org.setwright.workbench.look.Spoken;
import org.setwright.workbench.rows.SameBy;

/** Which jobs do we have, and how do they stand? */
public final class JobsView extends ViewPart {
	/** Its name in the registry. */
	public static final String ID = "org.setwright.workbench.jobs"; //$NON-NLS-1$
	private final DeskListener listener = this::deskChanged;
	private Desk desk;
	private Label counts;
	private Text search;
	private TableViewer list;

	@Override
	public void createPartControl(Composite parent) {
		desk = getSite().getService(Desk.class);
		GridLayoutFactory.fillDefaults().margins(4, 4).spacing(0, 4).applyTo(parent);
		counts = new Label(parent, SWT.WRAP);
		GridDataFactory.fillDefaults().grab(true, false).hint(60, SWT.DEFAULT).applyTo(counts);
		search = new Text(parent, SWT.SEARCH | SWT.ICON_SEARCH | SWT.ICON_CANCEL);
		search.setMessage(Messages.JobsView_search);
		Spoken.as(search, Messages.JobsView_search);
		search.addListener(SWT.Modify, e -> list.refresh());
		search.addListener(SWT.KeyDown, this::leaveSearch);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(search);
		list = table(parent);
		desk.addListener(listener);
		deskChanged(DeskState.EMPTY, desk.state());
	}

	private TableViewer table(Composite parent) {
		Composite frame = new Composite(parent, SWT.NONE);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(frame);
		TableViewer viewer = new TableViewer(frame, SWT.FULL_SELECTION | SWT.V_SCROLL | SWT.H_SCROLL | SWT.BORDER);
		frame.setLayout(JobColumns.add(viewer));
		viewer.setContentProvider(ArrayContentProvider.getInstance());
		viewer.setComparer(new SameBy<>(JobRow.class, JobRow::path));
		viewer.addFilter(new ViewerFilter() {
			@Override
			public boolean select(Viewer shown, Object parentElement, Object element) {
				return ((JobRow) element).matches(search.getText());
			}
		});
		viewer.addPostSelectionChangedListener(e -> picked().ifPresent(row -> desk.pickJob(row.path())));
		viewer.addOpenListener(e -> picked().ifPresent(row -> Places.openJob(getSite().getPage(), row.path())));
		Spoken.as(viewer.getControl(), Messages.JobsView_list);
		getSite().setSelectionProvider(viewer);
		return viewer;
	}

	private Optional<JobRow> picked() {
		return Optional.ofNullable((JobRow) list.getStructuredSelection().getFirstElement());
	}

	private void leaveSearch(Event key) {
		if (key.keyCode == SWT.ARROW_DOWN) {
			list.getControl().setFocus();
		} else if (key.keyCode == SWT.ESC) {
			search.setText(""); //$NON-NLS-1$
		}
	}

	private void deskChanged(DeskState before, DeskState now) {
		if (before.latest() != now.latest() || list.getInput() == null) {
			List<JobRow> rows = now.latest().map(JobRows::of).orElse(List.of());
			list.setInput(rows);
			ColumnWidths.fit(list.getTable());
			counts.setText(summary(now, rows));
			counts.requestLayout();
		}
		select(now);
	}

	private void select(DeskState now) {
		if (!now.job().equals(picked().map(JobRow::path))) {
			@SuppressWarnings("unchecked")
			List<JobRow> rows = (List<JobRow>) list.getInput();
			Optional<JobRow> row = rows.stream().filter(r -> now.job().equals(Optional.of(r.path()))).findFirst();
			list.setSelection(row.map(StructuredSelection::new).orElse(StructuredSelection.EMPTY), true);
		}
	}

	private static String summary(DeskState now, List<JobRow> rows) {
		if (now.folder().isEmpty()) {
			return Messages.JobsView_noBook;
		} else if (now.latest().isEmpty()) {
			return Messages.JobsView_reading;
		}
		long differing = rows.stream().filter(r -> r.standing() == Standing.DIFFERS).count();
		long failing = rows.stream().filter(r -> r.standing() == Standing.DOES_NOT_RUN).count();
		return NLS.bind(Messages.JobsView_summary, new Object[] { rows.size(), differing, failing });
	}

	@Override
	public void setFocus() {
		list.getControl().setFocus();
	}

	@Override
	public void dispose() {
		desk.removeListener(listener);
		super.dispose();
	}
}
