package org.setwright.writing.completing;

import java.util.List;
import java.util.stream.Stream;
import org.setwright.book.Table;
import org.setwright.book.TableReader;
import org.setwright.engine.tables.Heading;
import org.setwright.trade.catalogue.Catalogue;
import org.setwright.writing.completing.Offer.Offered;
import org.setwright.writing.text.Lines;

/** Offers what may be written next in the text of a table. */
public final class TableCompletion {
	private final Catalogue catalogue;

	/** @param catalogue what the book may speak of */
	public TableCompletion(Catalogue catalogue) {
		this.catalogue = catalogue;
	}

	/** @return what may be written at {@code offset} of {@code text}, which may be half-written */
	public Offered at(String text, int offset) {
		int line = text.lastIndexOf('\n', offset - 1) + 1;
		String before = text.substring(line, offset);
		if (before.startsWith("#")) {
			return Offered.NOTHING;
		}
		int column = 0;
		int start = line;
		boolean quoted = false;
		for (int i = line; i < offset; i++) {
			char c = text.charAt(i);
			quoted ^= c == '"';
			if (c == ',' && !quoted) {
				column++;
				start = i + 1;
			}
		}
		while (start < offset && (text.charAt(start) == ' ' || text.charAt(start) == '"')) {
			start++;
		}
		Table table = TableReader.read("tables/typed.csv", text).table();
		boolean header = table.header().isEmpty() || Lines.number(text, line) <= table.header().get(0).at().line();
		return Offered.of(start, text.substring(start, offset), header ? headings() : cells(table, column));
	}

	private List<Offer> headings() {
		Stream<Offer> settings = catalogue.settings().stream()
				.map(s -> new Offer("=> " + s.label(), "", s.meaning() + " Each row says " + s.domain().allowed() + ", or nothing."));
		Stream<Offer> fields = catalogue.kinds().stream().flatMap(k -> k.fields().stream()
				.map(f -> new Offer(k.label() + " " + f.label(), "", f.meaning() + " Each row asks for " + f.domain().allowed() + ", or for nothing.")));
		return Stream.of(Stream.of(new Offer("authority", "", "How much weight the row carries."), new Offer("source", "", "Document, edition and place."),
				new Offer("because", "", "Why, in a sentence for the person in the van.")), settings, fields).flatMap(s -> s).toList();
	}

	private List<Offer> cells(Table table, int column) {
		List<Heading> headings = Heading.of(table, catalogue);
		return column >= headings.size() ? List.of()
				: headings.get(column).choices().stream().filter(c -> !c.isEmpty()).map(c -> new Offer(c, "", headings.get(column).meaning())).toList();
	}
}
