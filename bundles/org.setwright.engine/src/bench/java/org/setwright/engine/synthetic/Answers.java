package org.setwright.engine.synthetic;

import java.util.List;
import java.util.Random;
import org.setwright.trade.catalogue.Domain;
import org.setwright.trade.catalogue.Quantity;
import org.setwright.trade.catalogue.Unit;
import org.setwright.trade.catalogue.Value;

/** Picks values of a domain, and writes them as rules do. */
final class Answers {
	private static final List<String> WORDS = List.of("Norrvik", "Tamarack Air", "Oskelund", "Birch and Daughters");
	private static final int STEPS = 20;

	private Answers() {
	}

	/** @return some value of {@code domain}; of a quantity one of {@value #STEPS} even steps from least to most */
	static Value any(Domain domain, Random random) {
		if (domain instanceof Domain.Measure m) {
			double step = (m.most() - m.least()) / STEPS;
			return new Value.Amount(new Quantity(round(m.least() + step * random.nextInt(STEPS + 1)), m.unit()));
		} else if (domain instanceof Domain.Whole w) {
			return new Value.Count(w.least() + random.nextInt(w.most() - w.least() + 1));
		} else if (domain instanceof Domain.Words) {
			return new Value.Words(WORDS.get(random.nextInt(WORDS.size())));
		}
		List<Value> listed = domain.listed();
		return listed.get(random.nextInt(listed.size()));
	}

	/** @return {@code value} as it stands in a rule */
	static String written(Value value) {
		if (value instanceof Value.Amount amount) {
			return amount.quantity().unit() == Unit.NONE ? amount.text() : "\"" + amount.text() + "\"";
		} else if (value instanceof Value.Flag flag) {
			return flag.yes() ? "YES" : "NO";
		} else if (value instanceof Value.Words words) {
			return "\"" + words.words() + "\"";
		}
		return value.plain().toString();
	}

	/** Rules and jobs are written with four decimals, and a test of equality has to find what is written. */
	private static double round(double number) {
		return Math.rint(number * 1e4) / 1e4;
	}
}
