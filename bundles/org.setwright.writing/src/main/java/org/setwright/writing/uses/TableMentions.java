package org.setwright.writing.uses;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.setwright.book.Table;
import org.setwright.book.TableReader;
import org.setwright.trade.catalogue.Authority;
import org.setwright.trade.catalogue.Catalogue;
import org.setwright.trade.catalogue.FactKind;
import org.setwright.trade.catalogue.Field;
import org.setwright.writing.text.Lines;

/** Finds what the headings and cells of a table stand for. */
final class TableMentions {
	private static final String ARROW = "=>";
	private static final String AUTHORITY = "authority";
	private static final String OR = " or ";
	private static final String SIGN = "^(==|!=)\\s*";
	private final Table table;
	private final String text;
	private final Catalogue catalogue;
	private final List<Mention> found = new ArrayList<>();

	private TableMentions(Table table, String text, Catalogue catalogue) {
		this.table = table;
		this.text = text;
		this.catalogue = catalogue;
	}

	static List<Mention> of(Table table, String text, Catalogue catalogue) {
		TableMentions mentions = new TableMentions(table, text, catalogue);
		table.header().stream().findFirst().ifPresent(first -> mentions.rule("", first));
		table.rows().forEach(row -> row.cells().stream().findFirst().ifPresent(first -> mentions.rule(row(row), first)));
		for (int column = 0; column < table.header().size(); column++) {
			mentions.column(column);
		}
		return mentions.found;
	}

	/** @return what the word or cell at {@code offset} stands for: a value of its own, or else what its column is about */
	static Optional<Thing> at(String path, String text, int offset, Catalogue catalogue) {
		Table table = TableReader.read(path, text).table();
		Optional<Mention> exact = of(table, text, catalogue).stream().filter(m -> !(m.thing() instanceof Thing.OfRule))
				.filter(m -> m.start() <= offset && offset <= m.end()).findFirst();
		TableMentions mentions = new TableMentions(table, text, catalogue);
		return exact.map(Mention::thing).or(() -> mentions.columnAt(offset).flatMap(c -> mentions.about(table.header().get(c))));
	}

	/** @param row from 0; -1 for the headings @param column from 0 @return what the cell stands for, or else what its column is about */
	static Optional<Thing> in(String path, String text, int row, int column, Catalogue catalogue) {
		Table table = TableReader.read(path, text).table();
		if (column < 0 || column >= table.header().size() || row >= table.rows().size()) {
			return Optional.empty();
		}
		TableMentions mentions = new TableMentions(table, text, catalogue);
		Optional<Thing> about = mentions.about(table.header().get(column));
		if (row >= 0) {
			Table.Cell cell = table.rows().get(row).cells().get(column);
			about.ifPresentOrElse(thing -> mentions.values(thing, cell, ""), () -> mentions.authority(table.header().get(column), cell, ""));
		}
		return mentions.found.stream().findFirst().map(Mention::thing).or(() -> about);
	}

	/** @return the column of the cell that covers {@code offset}, or ends there */
	private Optional<Integer> columnAt(int offset) {
		List<List<Table.Cell>> lines = new ArrayList<>(List.of(table.header()));
		table.rows().forEach(row -> lines.add(row.cells()));
		for (List<Table.Cell> cells : lines) {
			for (int column = cells.size() - 1; column >= 0; column--) {
				Table.Cell cell = cells.get(column);
				int start = Offsets.of(text, cell.at());
				int end = column + 1 < cells.size() ? Offsets.of(text, cells.get(column + 1).at()) - 1 : Offsets.of(text, cell.at(), cell.text()) + cell.text().length() + 1;
				if (start <= offset && offset <= Math.max(start, end)) {
					return Optional.of(column);
				}
			}
		}
		return Optional.empty();
	}

	/** Jobs may name a table, or a row of it, as they name a rule. */
	private void rule(String row, Table.Cell first) {
		found.add(mention(new Thing.OfRule("table " + table.name() + row), Offsets.of(text, first.at(), first.text()), first.text(), true, row));
	}

	private static String row(Table.Row row) {
		return ", row " + row.number();
	}

	private void column(int column) {
		Table.Cell heading = table.header().get(column);
		Optional<Thing> about = about(heading);
		about.ifPresent(thing -> {
			int start = Offsets.of(text, heading.at(), heading.text());
			found.add(mention(thing, start, heading.text(), thing instanceof Thing.OfSetting, ""));
			table.rows().forEach(row -> values(thing, row.cells().get(column), row(row)));
		});
		table.rows().forEach(row -> authority(heading, row.cells().get(column), row(row)));
	}

	private void authority(Table.Cell heading, Table.Cell cell, String row) {
		if (heading.text().equalsIgnoreCase(AUTHORITY)) {
			Authority.named(cell.text())
					.ifPresent(a -> found.add(mention(new Thing.OfAuthority(a), Offsets.of(text, cell.at(), cell.text()), cell.text(), false, row)));
		}
	}

	private Optional<Thing> about(Table.Cell heading) {
		if (heading.text().startsWith(ARROW)) {
			return catalogue.settingLabelled(heading.text().substring(ARROW.length()).strip()).map(Thing.OfSetting::new);
		}
		for (FactKind kind : catalogue.kinds()) {
			for (Field field : kind.fields()) {
				if ((kind.label() + " " + field.label()).equalsIgnoreCase(heading.text())) {
					return Optional.of(new Thing.OfField(kind, field));
				}
			}
		}
		return Optional.empty();
	}

	/** A cell of a condition holds one value or several joined by or, perhaps behind a sign. */
	private void values(Thing about, Table.Cell cell, String row) {
		String values = cell.text().replaceFirst(SIGN, "");
		int from = Offsets.of(text, cell.at(), cell.text()) + cell.text().length() - values.length();
		for (String part : about instanceof Thing.OfSetting ? new String[] { values } : values.split(OR)) {
			String value = part.strip();
			int start = value.isEmpty() ? -1 : text.indexOf(value, from);
			if (start >= 0 && start <= Lines.end(text, from) && !value.equals("-") && !value.equalsIgnoreCase("unknown")) {
				Values.of(about, value).ifPresent(thing -> found.add(mention(thing, start, value, thing instanceof Thing.OfSettingChoice, row)));
				from = start + value.length();
			}
		}
	}

	private Mention mention(Thing thing, int start, String written, boolean defines, String row) {
		return new Mention(thing, table.path(), start, Math.min(text.length(), start + written.length()), defines, "table " + table.name() + row);
	}
}
