package org.setwright.workbench.setup;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.layout.TableColumnLayout;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.ColumnViewerToolTipSupport;
import org.eclipse.jface.viewers.ColumnWeightData;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.jface.viewers.TableViewerColumn;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.setwright.engine.outcome.ToFindOut;
import org.setwright.trade.catalogue.FactKind;
import org.setwright.trade.catalogue.JobField;
import org.setwright.workbench.look.ColumnWidths;
import org.setwright.workbench.look.Icon;
import org.setwright.workbench.look.Lines;
import org.setwright.workbench.look.Palette;
import org.setwright.workbench.look.Spoken;
import org.setwright.workbench.look.Type;
import org.setwright.workbench.uses.UseWords;
import org.setwright.writing.uses.Thing;

/** What to find out next: the unknowns, the one that holds most settings open first. */
final class FindOutList {
	private static final ColumnWeightData UNKNOWN = new ColumnWeightData(42, 150);
	private static final ColumnWeightData SETTINGS = new ColumnWeightData(58, 150);
	private final TableColumnLayout layout = new TableColumnLayout();
	private final Label heading;
	private final TableViewer viewer;

	/** @param opened told which unknown a person wants to fill in */
	FindOutList(Composite parent, Consumer<JobField> opened) {
		Composite block = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().spacing(0, 4).applyTo(block);
		heading = new Label(block, SWT.NONE);
		Type.heading(heading, 0);
		Type.ink(heading, Palette.Ink.HEADING);
		GridDataFactory.fillDefaults().grab(true, false).indent(2, 4).applyTo(heading);
		Composite frame = new Composite(block, SWT.NONE);
		frame.setLayout(layout);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(frame);
		viewer = new TableViewer(frame, SWT.FULL_SELECTION | SWT.V_SCROLL | SWT.H_SCROLL | SWT.BORDER);
		viewer.setContentProvider(ArrayContentProvider.getInstance());
		ColumnViewerToolTipSupport.enableFor(viewer);
		column(UNKNOWN, Messages.FindOutList_unknown, true);
		column(SETTINGS, Messages.FindOutList_settings, false);
		viewer.getTable().setHeaderVisible(true);
		viewer.addOpenListener(
				e -> opened.accept(((ToFindOut) viewer.getStructuredSelection().getFirstElement()).unknown()));
		Spoken.as(viewer.getControl(), Messages.FindOutList_name);
	}

	TableViewer viewer() {
		return viewer;
	}

	/** @return the field or kind of fact a person looks at */
	Optional<Thing> pointed() {
		return Optional.ofNullable((ToFindOut) viewer.getStructuredSelection().getFirstElement()).map(FindOutList::thing);
	}

	private static Thing thing(ToFindOut unknown) {
		FactKind kind = unknown.unknown().kind();
		return unknown.unknown().field().<Thing>map(f -> new Thing.OfField(kind, f)).orElseGet(() -> new Thing.OfKind(kind));
	}

	/** @param unknowns empty when there is no set-up to ask for */
	void show(Optional<List<ToFindOut>> unknowns) {
		heading.setText(unknowns.map(FindOutList::heading).orElse(Messages.FindOutList_name));
		viewer.setInput(unknowns.orElse(List.of()));
		ColumnWidths.fit(viewer.getTable());
	}

	private static String heading(List<ToFindOut> unknowns) {
		return unknowns.isEmpty() ? Messages.FindOutList_none : NLS.bind(Messages.FindOutList_heading, unknowns.size());
	}

	/** @return the settings that an unknown could still change, and the warnings it could still raise */
	static String couldChange(ToFindOut unknown) {
		Stream<String> settings = unknown.holdsOpen().stream().map(s -> s.label());
		Stream<String> warnings = unknown.couldWarn().stream().map(r -> NLS.bind(Messages.FindOutList_warning, r.name()));
		return Stream.concat(settings, warnings).collect(Collectors.joining(", ")); //$NON-NLS-1$
	}

	private void column(ColumnWeightData width, String title, boolean first) {
		TableViewerColumn column = new TableViewerColumn(viewer, SWT.LEFT);
		layout.setColumnData(column.getColumn(), width);
		column.getColumn().setText(title);
		column.setLabelProvider(new ColumnLabelProvider() {
			@Override
			public String getText(Object element) {
				ToFindOut unknown = (ToFindOut) element;
				return first ? unknown.unknown().label() : couldChange(unknown);
			}

			@Override
			public Image getImage(Object element) {
				return first ? Icon.UNKNOWN.image() : null;
			}

			@Override
			public String getToolTipText(Object element) {
				return Lines.broken(UseWords.about(thing((ToFindOut) element)));
			}
		});
	}
}
