package org.setwright.check.report;

import java.util.ArrayList;
import java.util.List;
import org.setwright.check.fitness.Reached;
import org.setwright.check.strength.Mistake;
import org.setwright.check.strength.Strength;

/** In the report: which deliberate mistakes the jobs notice. */
public record StrengthSection(Strength strength) implements Section {

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
		Tables.begin(html, "sort of mistake", "noticed", "unnoticed");
		for (Mistake.Kind kind : Mistake.Kind.values()) {
			long all = strength.tried().stream().filter(t -> t.mistake().kind() == kind).count();
			long unnoticed = strength.survivors().stream().filter(t -> t.mistake().kind() == kind).count();
			Tables.row(html, kind.words(), Long.toString(all - unnoticed), Long.toString(unnoticed));
		}
		Tables.end(html);
		List<Strength.Tried> survivors = new ArrayList<>(strength.survivors());
		if (!survivors.isEmpty()) {
			html.element("h3", "Unnoticed").line();
			Tables.begin(html, "rule", "mistake", "where");
			survivors.forEach(t -> Tables.row(html, t.mistake().rule().name(), t.mistake().kind().words() + ": " + t.mistake().sentence(), t.mistake().at().toString()));
			Tables.end(html);
		}
	}
}
