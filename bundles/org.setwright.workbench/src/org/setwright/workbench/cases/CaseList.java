package org.setwright.workbench.cases;

import java.util.Arrays;
import java.util.List;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.viewers.TreeViewer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.setwright.check.cases.CaseCheck;
import org.setwright.workbench.look.ColumnWidths;
import org.setwright.workbench.look.Spoken;
import org.setwright.workbench.rows.Branches;
import org.setwright.workbench.rows.SameBy;

/** The list of jobs with their points. What is unfolded and picked stays so when results are new. */
final class CaseList {
	private final TreeViewer viewer;
	private CaseCheck check = new CaseCheck(List.of());
	private CaseFilter filter = CaseFilter.AT_FIRST;

	CaseList(Composite parent) {
		Composite frame = new Composite(parent, SWT.NONE);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(frame);
		viewer = new TreeViewer(frame, SWT.MULTI | SWT.FULL_SELECTION | SWT.V_SCROLL | SWT.H_SCROLL | SWT.BORDER);
		viewer.setUseHashlookup(true);
		viewer.setComparer(new SameBy<>(CaseLine.class, CaseLine::key));
		viewer.setContentProvider(new Branches<>(CaseLine.OfJob.class, job -> filter.points(job.checked())) {
			@Override
			public Object getParent(Object line) {
				return line instanceof CaseLine.OfPoint point ? new CaseLine.OfJob(point.checked()) : null;
			}
		});
		frame.setLayout(CaseColumns.add(viewer));
		Spoken.as(viewer.getControl(), Messages.CaseList_name);
	}

	TreeViewer viewer() {
		return viewer;
	}

	/** Shows {@code now}. What is not met is unfolded the first time it is seen. */
	void show(CaseCheck now) {
		boolean first = check.jobs().isEmpty();
		check = now;
		refresh(first);
	}

	void filter(CaseFilter wanted) {
		filter = wanted;
		refresh(!wanted.search().isBlank());
	}

	CaseFilter filter() {
		return filter;
	}

	private void refresh(boolean unfold) {
		viewer.getControl().setRedraw(false);
		try {
			Object[] unfolded = viewer.getExpandedElements();
			StructuredSelection picked = (StructuredSelection) viewer.getStructuredSelection();
			List<CaseLine.OfJob> jobs = filter.jobs(check.jobs());
			viewer.setInput(jobs);
			viewer.setExpandedElements(unfold ? jobs.stream().filter(j -> !filter.search().isBlank() || !j.checked().notMet().isEmpty()).toArray() : unfolded);
			ColumnWidths.fit(viewer.getTree());
			viewer.setSelection(picked);
		} finally {
			viewer.getControl().setRedraw(true);
		}
	}

	/** @return the lines picked */
	List<CaseLine> picked() {
		return Arrays.stream(viewer.getStructuredSelection().toArray()).map(CaseLine.class::cast).toList();
	}
}
