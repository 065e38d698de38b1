package org.setwright.engine.tables;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.setwright.book.Position;
import org.setwright.book.Problem;
import org.setwright.book.Table;
import org.setwright.book.Nearest;
import org.setwright.trade.catalogue.Catalogue;
import org.setwright.trade.catalogue.FactKind;
import org.setwright.trade.catalogue.Setting;

/** Reads the header of a table. */
final class Columns {
	private static final String ARROW = "=>";

	private Columns() {
	}

	/** @return the meaning of each header cell; when any is faulty, fewer, and {@code problems} says why */
	static List<Column> of(Table table, Catalogue catalogue, List<Problem> problems) {
		List<Column> columns = new ArrayList<>();
		int before = problems.size();
		for (Table.Cell cell : table.header()) {
			column(cell, catalogue, problems).ifPresent(c -> {
				if (columns.contains(c)) {
					problems.add(Problem.error(cell.at(), "The column \"" + cell.text() + "\" stands here twice.", "Delete one."));
				}
				columns.add(c);
			});
		}
		if (problems.size() > before) {
			return columns;
		}
		Position head = table.header().isEmpty() ? Position.whole(table.path()) : table.header().get(0).at();
		demand(columns, Column.Proposes.class, head, "=> and a setting, for example => changeover valve", problems);
		demand(columns, Column.CarriesAuthority.class, head, "authority", problems);
		demand(columns, Column.NamesSource.class, head, "source", problems);
		return columns;
	}

	private static void demand(List<Column> columns, Class<? extends Column> kind, Position at, String name,
			List<Problem> problems) {
		if (columns.stream().noneMatch(kind::isInstance)) {
			problems.add(Problem.error(at, "This table has no column " + name + ".", "Add it to the first row."));
		}
	}

	static Optional<Column> column(Table.Cell cell, Catalogue catalogue, List<Problem> problems) {
		String text = cell.text();
		if (text.startsWith(ARROW)) {
			String label = text.substring(ARROW.length()).strip();
			Optional<Setting> setting = catalogue.settingLabelled(label);
			if (setting.isEmpty()) {
				problems.add(unknown(cell, "There is no setting \"" + label + "\".", label,
						catalogue.settings().stream().map(Setting::label).toList()));
			}
			return setting.map(Column.Proposes::new);
		}
		switch (text.toLowerCase(java.util.Locale.ROOT)) {
			case "authority":
				return Optional.of(new Column.CarriesAuthority());
			case "because":
				return Optional.of(new Column.GivesReason());
			case "source":
				return Optional.of(new Column.NamesSource());
			default:
				return asks(cell, catalogue, problems);
		}
	}

	private static Optional<Column> asks(Table.Cell cell, Catalogue catalogue, List<Problem> problems) {
		List<String> known = new ArrayList<>();
		for (FactKind kind : catalogue.kinds()) {
			for (var field : kind.fields()) {
				String name = kind.label() + " " + field.label();
				if (name.equalsIgnoreCase(cell.text())) {
					return Optional.of(new Column.Asks(kind, field));
				}
				known.add(name);
			}
		}
		problems.add(unknown(cell, "There is no fact \"" + cell.text() + "\".", cell.text(), known));
		return Optional.empty();
	}

	private static Problem unknown(Table.Cell cell, String what, String word, List<String> known) {
		return Problem.error(cell.at(), what, Nearest.to(word, known).map(n -> "Did you mean \"" + n + "\"?")
				.orElse("Name a fact and its field, such as outdoor unit maker, or => and a setting; the shop's own are described in settings.yaml."))
				.instead(word, Nearest.several(word, known, 3));
	}
}
