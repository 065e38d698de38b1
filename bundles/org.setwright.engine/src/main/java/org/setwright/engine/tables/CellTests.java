package org.setwright.engine.tables;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.setwright.book.Misfit;
import org.setwright.book.Problem;
import org.setwright.book.Table;
import org.setwright.engine.language.Comparison;
import org.setwright.engine.language.Operand;
import org.setwright.engine.language.Test;
import org.setwright.trade.catalogue.Domain;
import org.setwright.trade.catalogue.Unit;
import org.setwright.trade.catalogue.Value;

/** Reads what a cell of a table wants of a field. */
final class CellTests {
	private static final String RANGE = "..";

	private final Table.Cell cell;
	private final Column.Asks column;
	private final List<Problem> problems;

	private CellTests(Table.Cell cell, Column.Asks column, List<Problem> problems) {
		this.cell = cell;
		this.column = column;
		this.problems = problems;
	}

	/** @return the test, or empty when the cell takes any answer or is faulty; {@code problems} gets the fault */
	static Optional<Test> read(Table.Cell cell, Column.Asks column, List<Problem> problems) {
		return cell.text().isEmpty() || cell.text().equals("-") ? Optional.empty()
				: new CellTests(cell, column, problems).test(cell.text());
	}

	private Optional<Test> test(String text) {
		if (text.equalsIgnoreCase("unknown")) {
			return Optional.of(new Test.IsUnknown(column.field(), true, cell.at()));
		}
		Optional<Comparison> comparison = Arrays.stream(Comparison.values())
				.sorted(Comparator.comparingInt(c -> -c.sign().length())).filter(c -> text.startsWith(c.sign())).findFirst();
		if (comparison.isPresent()) {
			return compare(comparison.get(), text.substring(comparison.get().sign().length()).strip());
		}
		if (ordered() && text.contains(RANGE)) {
			return range(text.substring(0, text.indexOf(RANGE)).strip(),
					text.substring(text.indexOf(RANGE) + RANGE.length()).strip());
		}
		Domain domain = column.field().domain();
		boolean whole = !(domain instanceof Domain.Words) && domain.read(text).isPresent();
		if (whole || !text.contains(" or ")) {
			return compare(Comparison.EQUAL, text);
		}
		List<Value> values = new ArrayList<>();
		for (String part : text.split(" or ")) {
			value(part.strip()).ifPresent(values::add);
		}
		return Optional.of(new Test.Among(column.field(), true, values, cell.at()));
	}

	private Optional<Test> compare(Comparison comparison, String text) {
		boolean equality = comparison == Comparison.EQUAL || comparison == Comparison.NOT_EQUAL;
		if (!equality && !ordered()) {
			return wrong(text, column.field().label() + " has no order, so " + comparison.sign() + " makes no sense.");
		}
		return value(text).map(v -> new Test.Compare(column.field(), comparison, new Operand.Literal(v), cell.at()));
	}

	private Optional<Test> range(String from, String to) {
		Optional<Value> most = value(to);
		Optional<Value> least = value(needsUnit(from) && most.isPresent() ? from + " " + unit(most.get()) : from);
		if (least.isEmpty() || most.isEmpty()) {
			return Optional.empty();
		}
		if (Comparison.MORE.holds(least.get().plain(), most.get().plain())) {
			return wrong(cell.text(), "The range " + cell.text() + " runs backwards, so it can never hold.");
		}
		return Optional.of(new Test.AllOf(List.of(
				new Test.Compare(column.field(), Comparison.AT_LEAST, new Operand.Literal(least.get()), cell.at()),
				new Test.Compare(column.field(), Comparison.AT_MOST, new Operand.Literal(most.get()), cell.at()))));
	}

	private boolean needsUnit(String text) {
		return column.field().domain() instanceof Domain.Measure m && m.unit() != Unit.NONE
				&& text.chars().allMatch(c -> Character.isDigit(c) || c == '.' || c == ',' || c == '-' || c == '+');
	}

	private static String unit(Value value) {
		return value instanceof Value.Amount amount ? amount.quantity().unit().symbol() : "";
	}

	private boolean ordered() {
		return column.field().domain() instanceof Domain.Whole || column.field().domain() instanceof Domain.Measure;
	}

	private Optional<Value> value(String text) {
		Optional<Value> value = column.field().domain().read(text);
		if (value.isEmpty()) {
			wrong(text, "\"" + text + "\" is not a value of " + column.field().label() + " of the " + column.kind().label() + ".");
		}
		return value;
	}

	private Optional<Test> wrong(String text, String what) {
		problems.add(Problem.error(cell.at(), what, "Write " + column.field().domain().allowed() + ", or leave the cell empty.")
				.instead(text, Misfit.near(text, column.field().domain())));
		return Optional.empty();
	}
}
