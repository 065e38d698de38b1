package org.setwright.engine.tables;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.setwright.book.Problem;
import org.setwright.book.Table;
import org.setwright.trade.catalogue.Authority;
import org.setwright.trade.catalogue.Catalogue;
import org.setwright.trade.catalogue.Domain;
import org.setwright.trade.catalogue.Value;

/**
 * What a column of a table is for, for whoever fills in its cells.
 *
 * @param text the heading as written
 * @param sort what its cells are
 * @param meaning the trade's meaning in one sentence, and what may be written
 * @param choices what to offer, the empty cell first where it may be empty; only the empty one where anything may be written
 * @param free whether more than the choices may be written
 */
public record Heading(String text, Sort sort, String meaning, List<String> choices, boolean free) {
	public Heading {
		choices = List.copyOf(choices);
	}

	/** What the cells of a column are. */
	public enum Sort {
		CONDITION, OUTCOME, AUTHORITY, SOURCE, REASON, NOT_UNDERSTOOD
	}

	/** @return one heading for each column of {@code table}, in its order */
	public static List<Heading> of(Table table, Catalogue catalogue) {
		return table.header().stream().map(cell -> Columns.column(cell, catalogue, new ArrayList<Problem>()).map(c -> of(cell.text(), c))
				.orElseGet(() -> new Heading(cell.text(), Sort.NOT_UNDERSTOOD, "This heading is neither a fact with its field nor => and a setting.",
						List.of(""), true)))
				.toList();
	}

	private static Heading of(String text, Column column) {
		if (column instanceof Column.Asks asks) {
			Domain domain = asks.field().domain();
			List<String> offered = Stream.concat(Stream.of("", "unknown"), labels(domain)).toList();
			return new Heading(text, Sort.CONDITION, asks.field().meaning() + " Empty: any answer. Write " + domain.allowed()
					+ conditions(domain) + ", or unknown.",
					offered, true);
		} else if (column instanceof Column.Proposes proposes) {
			Domain domain = proposes.setting().domain();
			return new Heading(text, Sort.OUTCOME, proposes.setting().meaning() + " Empty: this row says nothing about it. Write " + domain.allowed() + ".",
					Stream.concat(Stream.of(""), labels(domain)).toList(), domain.listed().isEmpty());
		} else if (column instanceof Column.CarriesAuthority) {
			return new Heading(text, Sort.AUTHORITY, "How much weight the row carries.",
					Arrays.stream(Authority.values()).map(Authority::label).toList(), false);
		}
		return column instanceof Column.NamesSource
				? new Heading(text, Sort.SOURCE, "The document, its edition and the place in it, or common practice.", List.of("common practice"), true)
				: new Heading(text, Sort.REASON, "Why, in a sentence for the person in the van.", List.of(""), true);
	}

	private static Stream<String> labels(Domain domain) {
		return domain.listed().stream().map(Value::text);
	}

	private static String conditions(Domain domain) {
		return domain instanceof Domain.Whole || domain instanceof Domain.Measure ? ", a range such as 1..2 with both ends included, or >= and the like"
				: domain instanceof Domain.YesNo ? "" : ", or several with or between them";
	}
}
