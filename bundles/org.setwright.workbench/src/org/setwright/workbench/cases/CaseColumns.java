package org.setwright.workbench.cases;

import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.eclipse.jface.layout.TreeColumnLayout;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.ColumnWeightData;
import org.eclipse.jface.viewers.TreeViewer;
import org.eclipse.jface.viewers.TreeViewerColumn;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.Image;
import org.setwright.check.cases.CheckedJob;
import org.setwright.check.cases.ItemPoint;
import org.setwright.check.cases.Point;
import org.setwright.check.cases.SettingPoint;
import org.setwright.check.cases.Standing;
import org.setwright.workbench.look.Icon;
import org.setwright.workbench.look.Letters;
import org.setwright.workbench.look.Palette;
import org.setwright.workbench.rows.HeadingSort;

/** The columns of the list; a click on a heading sorts by it, another one the other way, a third as in the files. */
final class CaseColumns {
	private CaseColumns() {
	}

	/** One column. */
	private record Column(String heading, ColumnWeightData width, Function<CaseLine, String> text) {
	}

	private static final List<Column> ALL = List.of(new Column(Messages.CaseColumns_what, new ColumnWeightData(38, 220), CaseColumns::what),
			new Column(Messages.CaseColumns_standing, new ColumnWeightData(20, 112), CaseColumns::standing),
			new Column(Messages.CaseColumns_expected, new ColumnWeightData(24, 130), line -> ofPoint(line, Point::expected)),
			new Column(Messages.CaseColumns_came, new ColumnWeightData(24, 130), line -> ofPoint(line, Point::came)),
			new Column(Messages.CaseColumns_rule, new ColumnWeightData(26, 120), line -> ofPoint(line, CaseColumns::rule)));

	/** @return the layout that shares the width among the columns */
	static TreeColumnLayout add(TreeViewer viewer) {
		TreeColumnLayout layout = new TreeColumnLayout();
		viewer.getTree().setHeaderVisible(true);
		ALL.forEach(column -> add(viewer, layout, column));
		return layout;
	}

	private static void add(TreeViewer viewer, TreeColumnLayout layout, Column column) {
		TreeViewerColumn added = new TreeViewerColumn(viewer, SWT.LEFT);
		added.getColumn().setText(column.heading());
		layout.setColumnData(added.getColumn(), column.width());
		boolean first = viewer.getTree().getColumnCount() == 1;
		added.setLabelProvider(new ColumnLabelProvider() {
			@Override
			public String getText(Object line) {
				return column.text().apply((CaseLine) line);
			}

			@Override
			public Image getImage(Object line) {
				return first ? sign((CaseLine) line).image() : null;
			}

			@Override
			public Color getForeground(Object line) {
				return line instanceof CaseLine.OfPoint p && p.point().standing() == Standing.NOT_ASKED ? Palette.now().colour(Palette.Ink.QUIET) : null;
			}
		});
		HeadingSort.on(viewer, added.getColumn(), (a, b) -> order(column, (CaseLine) a, (CaseLine) b));
	}

	/** By standing: what is not met first, and more of it before less; else by letters, and numbers by their size. */
	private static int order(Column column, CaseLine a, CaseLine b) {
		if (column == ALL.get(1)) {
			return Comparator.comparing((CaseLine l) -> l.checked().outcome().isPresent()).thenComparing(l -> rank(l)).compare(a, b);
		}
		return Letters.compare(column.text().apply(a), column.text().apply(b));
	}

	private static int rank(CaseLine line) {
		return line instanceof CaseLine.OfPoint of ? List.of(Standing.NOT_MET, Standing.MET, Standing.NOT_ASKED).indexOf(of.point().standing())
				: line.checked().notMet().isEmpty() ? 1 : -line.checked().notMet().size();
	}

	static Icon sign(CaseLine line) {
		if (line instanceof CaseLine.OfPoint of) {
			return switch (of.point().standing()) {
				case MET -> Icon.AS_EXPECTED;
				case NOT_MET -> Icon.DIFFERS;
				case NOT_ASKED -> Icon.NOTHING_EXPECTED;
			};
		}
		CheckedJob job = line.checked();
		return job.outcome().isEmpty() ? Icon.DOES_NOT_RUN : !job.notMet().isEmpty() ? Icon.DIFFERS : job.asked().isEmpty() ? Icon.NOTHING_EXPECTED : Icon.AS_EXPECTED;
	}

	private static String what(CaseLine line) {
		return line instanceof CaseLine.OfPoint of ? of.point().what() : line.checked().job().name();
	}

	static String standing(CaseLine line) {
		if (line instanceof CaseLine.OfPoint of) {
			return word(of.point().standing());
		}
		CheckedJob job = line.checked();
		return job.outcome().isEmpty() ? job.fault() : job.notMet().isEmpty() ? NLS.bind(Messages.CaseColumns_allMet, job.count(Standing.MET))
				: NLS.bind(Messages.CaseColumns_someNotMet, job.notMet().size(), job.asked().size());
	}

	static String word(Standing standing) {
		return switch (standing) {
			case MET -> Messages.CaseColumns_met;
			case NOT_MET -> Messages.CaseColumns_notMet;
			case NOT_ASKED -> Messages.CaseColumns_notAsked;
		};
	}

	private static String ofPoint(CaseLine line, Function<Point, String> text) {
		return line instanceof CaseLine.OfPoint of ? text.apply(of.point()) : ""; //$NON-NLS-1$
	}

	private static String rule(Point point) {
		if (point instanceof ItemPoint item) {
			return item.there().stream().flatMap(t -> t.firings().stream()).map(f -> f.rule().name()).distinct().collect(Collectors.joining("; ")); //$NON-NLS-1$
		}
		return ((SettingPoint) point).outcome().filter(o -> !o.proposals().isEmpty())
				.map(o -> o.deciding().stream().map(p -> p.rule().name()).distinct().collect(Collectors.joining("; "))).orElse(""); //$NON-NLS-1$ //$NON-NLS-2$
	}
}
