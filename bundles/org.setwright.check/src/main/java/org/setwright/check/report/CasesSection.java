package org.setwright.check.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.setwright.book.JobCase;
import org.setwright.check.cases.CaseCheck;
import org.setwright.check.cases.CheckedJob;
import org.setwright.check.cases.ItemPoint;
import org.setwright.check.cases.Point;
import org.setwright.check.cases.SettingPoint;
import org.setwright.check.cases.Standing;
import org.setwright.check.reasons.ReasonOutline.Step;

/** The job cases in the report: how they stand, what is not met and why, and every job with its points. */
public record CasesSection(CaseCheck check) implements Section {

	@Override
	public String title() {
		return "Job cases";
	}

	@Override
	public List<Figure> figures() {
		long notRun = check.jobs().stream().filter(j -> j.outcome().isEmpty()).count();
		List<Figure> figures = new ArrayList<>(List.of(new Figure(Integer.toString(check.jobs().size()), check.jobs().size() == 1 ? "job" : "jobs", false),
				figure(Standing.MET, false), figure(Standing.NOT_MET, check.count(Standing.NOT_MET) > 0), figure(Standing.NOT_ASKED, false)));
		if (notRun > 0) {
			figures.add(new Figure(Long.toString(notRun), "not run", true));
		}
		return figures;
	}

	private Figure figure(Standing standing, boolean alarming) {
		return new Figure(Long.toString(check.count(standing)), standing.word(), alarming);
	}

	@Override
	public void write(Markup html) {
		Bars.write(html, "Points met, not met and not asked, by group of settings", Bars.Key.STANDINGS, groups());
		if (check.allMet()) {
			html.element("p", "Every job comes to what it expects.", "class", "good").line();
		} else {
			html.element("h3", "Not as expected").line();
			check.amiss().forEach(job -> amiss(html, job));
		}
		html.element("h3", "Every job").line();
		check.jobs().forEach(job -> job(html, job));
		accepted(html);
	}

	private List<Bars.Row> groups() {
		Map<String, long[]> counts = new LinkedHashMap<>();
		check.jobs().stream().flatMap(j -> j.points().stream())
				.forEach(p -> counts.computeIfAbsent(group(p), g -> new long[Standing.values().length])[p.standing().ordinal()]++);
		return counts.entrySet().stream().sorted(Map.Entry.comparingByKey())
				.map(e -> new Bars.Row(e.getKey(), e.getValue()[0], e.getValue()[1], e.getValue()[2])).toList();
	}

	private static String group(Point point) {
		return point instanceof SettingPoint setting ? setting.setting().group() : ((ItemPoint) point).wanted().list().topic().label();
	}

	private static void amiss(Markup html, CheckedJob job) {
		html.open("article").line().element("h4", job.job().name()).element("p", job.job().path(), "class", "quiet").line();
		if (job.outcome().isEmpty()) {
			html.element("p", "Not run: " + job.fault(), "class", "bad").line();
		}
		for (Point point : job.notMet()) {
			html.element("h5", point.what()).line();
			html.open("dl").element("dt", "expected").element("dd", point.expected()).element("dt", "came to")
					.element("dd", point.came(), "class", "bad").close().line();
			html.element("p", point.at().toString(), "class", "quiet").line();
			reasons(html, Telling.reasons(point, job.job()));
		}
		html.close().line();
	}

	private static void reasons(Markup html, List<Step> steps) {
		if (!steps.isEmpty()) {
			html.open("ul", "class", "reasons").line();
			steps.forEach(s -> html.open("li", "style", "margin-left: " + 1.4 * s.depth() + "em", "class", s.kind().equals("source") ? "quiet" : null)
					.text(s.words()).element("span", s.place(), "class", "quiet").close().line());
			html.close().line();
		}
	}

	private static void job(Markup html, CheckedJob job) {
		html.open("details").open("summary").element("span", job.allMet() ? "\u2713" : "\u2717", "class", job.allMet() ? "good" : "bad")
				.element("b", " " + job.job().name()).element("span", " " + summary(job), "class", "quiet").close().line();
		html.open("table").line().open("thead").open("tr");
		List.of("", "point", "expected", "came to").forEach(h -> html.element("th", h, "scope", "col"));
		html.close().close().line().open("tbody").line();
		job.points().forEach(p -> row(html, p));
		html.close().close().close().line();
	}

	private static String summary(CheckedJob job) {
		return job.outcome().isEmpty() ? "not run" : job.count(Standing.MET) + " met, " + job.count(Standing.NOT_MET) + " not met, "
				+ job.count(Standing.NOT_ASKED) + " not asked";
	}

	private static void row(Markup html, Point point) {
		String[] sign = switch (point.standing()) {
			case MET -> new String[] { "\u2713", "good" };
			case NOT_MET -> new String[] { "\u2717", "bad" };
			case NOT_ASKED -> new String[] { "\u00b7", "quiet" };
		};
		html.open("tr", "class", point.standing() == Standing.NOT_ASKED ? "quiet" : null)
				.element("td", sign[0], "class", sign[1], "title", point.standing().word(), "aria-label", point.standing().word())
				.element("th", point.what(), "scope", "row").element("td", point.expected())
				.element("td", point.came()).close().line();
	}

	private void accepted(Markup html) {
		List<JobCase> jobs = check.jobs().stream().map(CheckedJob::job).filter(j -> !j.accepted().isEmpty()).toList();
		if (jobs.isEmpty()) {
			return;
		}
		html.element("h3", "Accepted").line().open("table").line().open("thead").open("tr");
		List.of("day", "job", "what", "was", "now", "by", "because").forEach(h -> html.element("th", h, "scope", "col"));
		html.close().close().line().open("tbody").line();
		jobs.forEach(job -> job.accepted().forEach(a -> {
			html.open("tr");
			List.of(a.on().toString(), job.name(), a.what(), a.was(), a.now(), a.by(), a.because()).forEach(cell -> html.element("td", cell));
			html.close().line();
		}));
		html.close().close().line();
	}
}
