package org.setwright.writing.uses;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.setwright.book.Table;
import org.setwright.trade.catalogue.Catalogue;
import org.setwright.trade.catalogue.Domain;
import org.setwright.trade.catalogue.FactKind;
import org.setwright.trade.catalogue.Field;

/** Finds what the headings and cells of a table stand for. */
final class TableMentions {
	private static final String ARROW = "=>";
	private static final String OR = " or ";

	private TableMentions() {
	}

	static List<Mention> of(Table table, String text, Catalogue catalogue) {
		List<Mention> found = new ArrayList<>();
		for (int column = 0; column < table.header().size(); column++) {
			Table.Cell heading = table.header().get(column);
			if (heading.text().startsWith(ARROW)) {
				catalogue.settingLabelled(heading.text().substring(ARROW.length()).strip())
						.ifPresent(s -> found.add(cell(new Thing.OfSetting(s), table, text, heading, heading.text(), true, "")));
			} else {
				Optional<Thing.OfField> field = field(heading.text(), catalogue);
				field.ifPresent(f -> found.add(cell(f, table, text, heading, heading.text(), false, "")));
				if (field.isPresent() && field.get().field().domain() instanceof Domain.Words) {
					values(field.get(), column, table, text, found);
				}
			}
		}
		return found;
	}

	private static Optional<Thing.OfField> field(String heading, Catalogue catalogue) {
		for (FactKind kind : catalogue.kinds()) {
			for (Field field : kind.fields()) {
				if ((kind.label() + " " + field.label()).equalsIgnoreCase(heading)) {
					return Optional.of(new Thing.OfField(kind, field));
				}
			}
		}
		return Optional.empty();
	}

	/** A cell of words holds one value or several joined by or, perhaps behind a sign. */
	private static void values(Thing.OfField field, int column, Table table, String text, List<Mention> found) {
		for (Table.Row row : table.rows()) {
			Table.Cell cell = row.cells().get(column);
			for (String part : cell.text().replaceFirst("^(==|!=)\\s*", "").split(OR)) {
				String value = part.strip();
				if (!value.isEmpty() && !value.equals("-") && !value.equalsIgnoreCase("unknown")) {
					found.add(cell(new Thing.OfValue(field.kind(), field.field(), value), table, text, cell, value, false, ", row " + row.number()));
				}
			}
		}
	}

	private static Mention cell(Thing thing, Table table, String text, Table.Cell cell, String written, boolean defines, String row) {
		int start = Offsets.of(text, cell.at(), written);
		return new Mention(thing, table.path(), start, Math.min(text.length(), start + written.length()), defines, "table " + table.name() + row);
	}
}
