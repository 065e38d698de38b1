package org.setwright.check.report;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.setwright.engine.explaining.ReadAloud;
import org.setwright.engine.language.Rule;

/** In the report: every rule and row of a table as it is read aloud, by file, for those who review the book. @param rules in book order */
public record RulesSection(Collection<Rule> rules) implements Section {
	public RulesSection {
		rules = List.copyOf(rules);
	}

	@Override
	public String title() {
		return "Rules read aloud";
	}

	@Override
	public List<Figure> figures() {
		return List.of();
	}

	@Override
	public void write(Markup html) {
		Map<String, List<Rule>> files = new LinkedHashMap<>();
		rules.forEach(r -> files.computeIfAbsent(r.at().file(), x -> new java.util.ArrayList<>()).add(r));
		files.forEach((file, inFile) -> {
			html.open("details").element("summary", file + ", " + (inFile.size() == 1 ? "1 rule" : inFile.size() + " rules")).line();
			inFile.forEach(rule -> html.element("h5", rule.name()).element("p", ReadAloud.of(rule).text()).line());
			html.close().line();
		});
	}
}
