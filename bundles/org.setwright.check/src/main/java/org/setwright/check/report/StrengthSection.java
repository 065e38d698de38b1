package org.setwright.check.report;

import java.util.Arrays;
import java.util.List;
import org.setwright.book.JobCase;
import org.setwright.check.fitness.Reached;
import org.setwright.check.strength.Catching;
import org.setwright.check.strength.Mistake;
import org.setwright.check.strength.Strength;

/**
 * In the report: which deliberate mistakes the jobs notice.
 *
 * @param jobs those of the book
 * @param searched whether a job was looked for that would notice each mistake nobody noticed
 */
public record StrengthSection(Strength strength, List<JobCase> jobs, boolean searched) implements Section {
	private static final Bars.Key KEY = new Bars.Key("noticed", "unnoticed", "");

	public StrengthSection {
		jobs = List.copyOf(jobs);
	}

	@Override
	public String title() {
		return "Deliberate mistakes";
	}

	@Override
	public List<Figure> figures() {
		return List.of(new Figure(Integer.toString(strength.tried().size()), "deliberate mistakes", false),
				new Figure(Integer.toString(strength.survivors().size()), "unnoticed", false));
	}

	@Override
	public void write(Markup html) {
		html.element("p", Reached.percent(strength.share()) + " of the deliberate mistakes are noticed by some job.").line();
		Bars.write(html, "Deliberate mistakes noticed and unnoticed, by sort of mistake", KEY,
				Arrays.stream(Mistake.Kind.values()).map(this::bar).filter(r -> r.met() + r.notMet() > 0).toList());
		if (!strength.survivors().isEmpty()) {
			html.element("h3", "Unnoticed").line();
			if (searched) {
				Tables.begin(html, "rule", "mistake", "where", "a job that would notice");
			} else {
				Tables.begin(html, "rule", "mistake", "where");
			}
			strength.survivors().forEach(t -> survivor(html, t));
			Tables.end(html);
		}
	}

	private Bars.Row bar(Mistake.Kind kind) {
		long all = strength.tried().stream().filter(t -> t.mistake().kind() == kind).count();
		long unnoticed = strength.survivors().stream().filter(t -> t.mistake().kind() == kind).count();
		return new Bars.Row(kind.words(), all - unnoticed, unnoticed, 0);
	}

	private void survivor(Markup html, Strength.Tried tried) {
		Mistake mistake = tried.mistake();
		String said = mistake.kind().words() + ": " + mistake.sentence();
		if (searched) {
			String job = Catching.of(tried, jobs).map(Catching::sentence).orElse("None was found, which proves nothing.");
			Tables.row(html, mistake.rule().name(), said, mistake.at().toString(), job);
		} else {
			Tables.row(html, mistake.rule().name(), said, mistake.at().toString());
		}
	}
}
