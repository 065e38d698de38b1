package org.setwright.engine.tables;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.setwright.book.Misfit;
import org.setwright.book.Nearest;
import org.setwright.book.Problem;
import org.setwright.book.Table;
import org.setwright.engine.language.Action;
import org.setwright.engine.language.Condition;
import org.setwright.engine.language.Operand;
import org.setwright.engine.language.Rule;
import org.setwright.engine.language.Test;
import org.setwright.trade.catalogue.Authority;
import org.setwright.trade.catalogue.Catalogue;
import org.setwright.trade.catalogue.FactKind;
import org.setwright.trade.catalogue.Value;

/** Makes a rule of every row of a look-up table. */
public final class TableRules {
	private final Table table;
	private final List<Column> columns;
	private final List<Problem> problems;

	private TableRules(Table table, Catalogue catalogue, List<Problem> problems) {
		this.table = table;
		this.problems = problems;
		columns = Columns.of(table, catalogue, problems);
	}

	/**
	 * @param problems gets what is wrong with the table
	 * @return one rule for each row without faults; none when the header is faulty
	 */
	public static List<Rule> of(Table table, Catalogue catalogue, List<Problem> problems) {
		int before = problems.size();
		TableRules rules = new TableRules(table, catalogue, problems);
		return problems.size() > before ? List.of()
				: table.rows().stream().map(rules::rule).flatMap(Optional::stream).toList();
	}

	private Optional<Rule> rule(Table.Row row) {
		int before = problems.size();
		Map<FactKind, List<Test>> tests = new LinkedHashMap<>();
		List<Action> proposals = new ArrayList<>();
		Authority authority = Authority.FACTORY_DEFAULT;
		String because = "Looked up in the table " + table.name() + ".";
		String source = "";
		for (int i = 0; i < columns.size(); i++) {
			Table.Cell cell = row.cells().get(i);
			Column column = columns.get(i);
			if (column instanceof Column.Asks asks) {
				CellTests.read(cell, asks, problems)
						.ifPresent(t -> tests.computeIfAbsent(asks.kind(), x -> new ArrayList<>()).add(t));
			} else if (column instanceof Column.Proposes proposes) {
				proposal(cell, proposes).ifPresent(proposals::add);
			} else if (column instanceof Column.CarriesAuthority) {
				authority = authority(cell);
			} else if (column instanceof Column.GivesReason) {
				because = cell.text().isEmpty() ? because : cell.text();
			} else {
				source = cell.text();
			}
		}
		if (source.isEmpty()) {
			problems.add(Problem.error(row.cells().get(0).at(), "This row names no source.",
					"Write the document and place, or common practice, in the column source."));
		}
		if (proposals.isEmpty() && problems.size() == before) {
			problems.add(Problem.error(row.cells().get(0).at(), "This row proposes nothing.",
					"Fill in a column that begins with =>, or delete the row."));
		}
		List<Condition> when = tests.entrySet().stream().<Condition>map(
				e -> new Condition.Pattern(Optional.empty(), e.getKey(), new Test.AllOf(e.getValue()), row.cells().get(0).at()))
				.toList();
		return problems.size() > before ? Optional.empty()
				: Optional.of(new Rule("table " + table.name() + ", row " + row.number(), authority, because, source, when,
						proposals, row.cells().get(0).at(), text(row)));
	}

	private Optional<Action> proposal(Table.Cell cell, Column.Proposes column) {
		if (cell.text().isEmpty()) {
			return Optional.empty();
		}
		Optional<Value> value = column.setting().domain().read(cell.text());
		if (value.isEmpty()) {
			problems.add(Problem.error(cell.at(), "\"" + cell.text() + "\" is not a value of " + column.setting().label() + ".",
					"Write " + column.setting().domain().allowed() + ".")
					.instead(cell.text(), Misfit.near(cell.text(), column.setting().domain())));
		}
		return value.map(v -> new Action.Propose(column.setting(), new Operand.Literal(v), cell.at()));
	}

	private Authority authority(Table.Cell cell) {
		Optional<Authority> authority = Authority.named(cell.text());
		if (authority.isEmpty()) {
			problems.add(Problem.error(cell.at(), "\"" + cell.text() + "\" is not an authority.", "Write one of: "
					+ String.join(", ", java.util.Arrays.stream(Authority.values()).map(Authority::label).toList()) + ".")
					.instead(cell.text(), Nearest.several(cell.text(), java.util.Arrays.stream(Authority.values()).map(Authority::label).toList(), 3)));
		}
		return authority.orElse(Authority.FACTORY_DEFAULT);
	}

	private String text(Table.Row row) {
		List<String> parts = new ArrayList<>();
		for (int i = 0; i < columns.size(); i++) {
			if (!row.cells().get(i).text().isEmpty()) {
				parts.add(table.header().get(i).text() + ": " + row.cells().get(i).text());
			}
		}
		return String.join("; ", parts);
	}
}
