package org.setwright.book.history;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.setwright.book.ItemList;
import org.setwright.book.Nearest;
import org.setwright.book.Position;
import org.setwright.trade.catalogue.Catalogue;
import org.setwright.trade.catalogue.Domain;
import org.setwright.trade.catalogue.FactKind;
import org.setwright.trade.catalogue.Unit;

/**
 * What the cells of a column may say about a job, in the words of the trade.
 *
 * @param name as a mapping names it, for example "outdoor unit maker"
 * @param says the trade's meaning, one sentence
 * @param allowed what a cell may hold, as the end of a sentence "write ..."
 * @param domain which values it may take; empty when it is no single value
 */
public record Meaning(String name, String says, String allowed, Optional<Domain> domain) {
	private static final int MOST_OF_A_KIND = 12;

	/** @return what a column called {@code name} means; empty when that means nothing */
	public static Optional<Meaning> of(String name, Catalogue catalogue) {
		return Target.of(name, catalogue).map(Meaning::of);
	}

	/** @return the name nearest to {@code name}, which means nothing itself */
	public static Optional<String> near(String name, Catalogue catalogue) {
		return Nearest.to(name, Target.names(catalogue));
	}

	/** @return all there are, "ignore" first; of a kind a job may have several of, the first dozen */
	public static List<Meaning> all(Catalogue catalogue) {
		List<Meaning> all = new ArrayList<>(List.of(of(new Target.Ignored()), of(new Target.Name()), of(new Target.Notes())));
		catalogue.kinds().stream().filter(k -> !k.calculated()).forEach(k -> kind(k, all));
		catalogue.settings().forEach(s -> all.addAll(List.of(of(new Target.Expected(s, false)), of(new Target.Expected(s, true)))));
		List.of(ItemList.values()).forEach(list -> all.add(of(new Target.Items(list))));
		return all;
	}

	private static void kind(FactKind kind, List<Meaning> into) {
		into.add(of(new Target.Presence(kind)));
		for (int i = 0; i < (kind.many() ? MOST_OF_A_KIND : 1); i++) {
			int item = i;
			kind.fields().stream().filter(f -> f.calculation().isEmpty()).forEach(f -> into.add(of(new Target.Answer(kind, item, f))));
		}
	}

	private static Meaning of(Target target) {
		if (target instanceof Target.Answer answer) {
			return new Meaning(target.name(), answer.field().meaning(), answer.field().domain().allowed(), Optional.of(answer.field().domain()));
		} else if (target instanceof Target.Presence presence) {
			return new Meaning(target.name(), presence.kind().meaning(), presence.kind().many() ? "none, or how many there are"
					: presence.kind().always() ? "nothing: every job has one" : "none or fitted", Optional.empty());
		} else if (target instanceof Target.Expected expected) {
			return expected.rule() ? new Meaning(target.name(), "The rule that has to decide it: " + expected.setting().meaning(), "the name of a rule", Optional.empty())
					: new Meaning(target.name(), "What it has to come to: " + expected.setting().meaning(), expected.setting().domain().allowed(),
							Optional.of(expected.setting().domain()));
		} else if (target instanceof Target.Items items) {
			return new Meaning(target.name(), "The " + items.list().topic().label() + " that have to be " + items.list().state() + ".",
					items.list().topic() == ItemList.Topic.CAUTIONS ? "a kind of caution on each line, for example \"stop\" or \"stop: a part of the sentence\""
							: "one on each line", Optional.empty());
		}
		String says = target instanceof Target.Name ? "The name of the job; every row needs one of its own."
				: target instanceof Target.Notes ? "Anything worth noting." : "The column is left out.";
		return new Meaning(target.name(), says, target instanceof Target.Ignored ? "anything" : "some words", Optional.empty());
	}

	/** @return the units a number may be in, as they are written; empty when it needs none */
	public List<String> units() {
		return domain.filter(Domain.Measure.class::isInstance).map(d -> ((Domain.Measure) d).unit()).filter(u -> u != Unit.NONE)
				.map(u -> Unit.measuring(u.dimension()).stream().map(Unit::symbol).toList()).orElse(List.of());
	}

	/**
	 * @param column what is said of the column that means this
	 * @param cell what stands in it
	 * @return what is wrong with the cell and what to do; empty when it can be read
	 */
	public Optional<Fault> fault(String heading, Mapping.Column column, String cell, Catalogue catalogue) {
		RowReader reader = new RowReader(new Position("", 0, 0), 0);
		Target.of(name, catalogue).ifPresent(t -> reader.cell(heading, t, cell, t instanceof Target.Notes ? cell : column.read(cell)));
		return reader.faults().stream().findFirst();
	}
}
