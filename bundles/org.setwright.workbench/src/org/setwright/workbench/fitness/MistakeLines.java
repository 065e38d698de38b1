package org.setwright.workbench.fitness;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.eclipse.osgi.util.NLS;
import org.setwright.book.JobCase;
import org.setwright.check.strength.Catching;
import org.setwright.check.strength.Mistake;
import org.setwright.check.strength.Strength;
import org.setwright.check.strength.Strength.Tried;
import org.setwright.workbench.look.Icon;
import org.setwright.workbench.rows.Row;
import org.setwright.workbench.rows.RowTree;

/** Every deliberate mistake, below its rule: who notices it, or which job would. */
final class MistakeLines {
	/** The columns. */
	static final List<RowTree.Column> COLUMNS = List.of(new RowTree.Column(Messages.MistakeLines_mistake, 38, 200), new RowTree.Column(Messages.MistakeLines_sort, 16, 110),
			new RowTree.Column(Messages.MistakeLines_noticed, 34, 200), new RowTree.Column(Messages.MistakeLines_where, 12, 90));

	private MistakeLines() {
	}

	/** @param jobs of the book @param searched the unnoticed mistakes a job was looked for @param saved what was saved, by mistake */
	static List<Row> of(Strength strength, List<JobCase> jobs, java.util.Set<Mistake> searched, Map<Mistake, String> saved) {
		Map<String, List<Tried>> byRule = new LinkedHashMap<>();
		strength.tried().forEach(t -> byRule.computeIfAbsent(t.mistake().rule().name(), n -> new ArrayList<>()).add(t));
		Function<Tried, Row> line = t -> line(t, jobs, searched.contains(t.mistake()), Optional.ofNullable(saved.get(t.mistake())));
		return byRule.entrySet().stream().map(e -> rule(e.getKey(), e.getValue(), e.getValue().stream().map(line).toList())).toList();
	}

	private static Row rule(String name, List<Tried> tried, List<Row> below) {
		long unnoticed = below.stream().filter(Row::lacking).count();
		return new Row(unnoticed == 0 ? Icon.AS_EXPECTED : Icon.DIFFERS, List.of(name, "", //$NON-NLS-1$
				unnoticed == 0 ? NLS.bind(Messages.MistakeLines_all, tried.size()) : NLS.bind(Messages.MistakeLines_some, unnoticed, tried.size()),
				tried.get(0).mistake().rule().at().toString()), unnoticed > 0, Optional.of(tried.get(0).mistake().rule()), below);
	}

	private static Row line(Tried tried, List<JobCase> jobs, boolean searched, Optional<String> saved) {
		Mistake mistake = tried.mistake();
		Optional<String> by = tried.noticedBy().map(j -> NLS.bind(Messages.MistakeLines_by, j.name())).or(() -> saved.map(s -> NLS.bind(Messages.MistakeLines_saved, s)));
		String noticed = by.or(() -> Catching.of(tried, jobs).map(Catching::sentence)).orElse(searched ? Messages.MistakeLines_notFound : Messages.MistakeLines_nobody);
		Icon sign = by.isPresent() ? Icon.AS_EXPECTED : tried.telltale().isPresent() ? Icon.JOB : Icon.DIFFERS;
		return new Row(sign, List.of(mistake.sentence(), mistake.kind().words(), noticed, mistake.at().toString()), by.isEmpty(), Optional.of(tried), List.of());
	}
}
