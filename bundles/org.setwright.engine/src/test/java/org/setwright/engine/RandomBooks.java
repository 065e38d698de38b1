package org.setwright.engine;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Collectors;
import org.setwright.trade.Trade;
import org.setwright.trade.accessories.Humidifier;
import org.setwright.trade.catalogue.Domain;
import org.setwright.trade.catalogue.Fact;
import org.setwright.trade.catalogue.FactKind;
import org.setwright.trade.catalogue.Field;
import org.setwright.trade.catalogue.Job;
import org.setwright.trade.catalogue.Quantity;
import org.setwright.trade.catalogue.Unit;
import org.setwright.trade.catalogue.Value;
import org.setwright.trade.equipment.OutdoorUnit;
import org.setwright.trade.house.Building;
import org.setwright.trade.wiring.Wire;

/** Makes random rules and jobs over a few kinds of fact, dense enough that conditions often meet. */
final class RandomBooks {
	private static final List<FactKind> KINDS = List.of(Trade.catalogue().kind(OutdoorUnit.class),
			Trade.catalogue().kind(Wire.class), Trade.catalogue().kind(Humidifier.class),
			Trade.catalogue().kind(Building.class));
	private static final List<String> WORDS = List.of("Norrvik", "Oskelund Air", "O'Dell \\\"quoted\\\"", "Ünal\\\\slash");

	private final Random random;
	private final List<String> bound = new ArrayList<>();
	private int names;
	private int lists;

	RandomBooks(long seed) {
		random = new Random(seed);
	}

	String rules(int count) {
		StringBuilder rules = new StringBuilder();
		for (int i = 0; i < count; i++) {
			bound.clear();
			lists = 0;
			StringBuilder when = new StringBuilder();
			int conditions = random.nextInt(4);
			for (int c = 0; c < conditions; c++) {
				when.append(condition(i, 0)).append("\n\t");
			}
			String then = i % 3 == 0 ? "find( F" + i + " );" : random.nextBoolean() ? "propose( COOL_STAGES, " + random.nextInt(3) + " );"
					: "propose( DAYLIGHT_SAVING, YES ); caution( NOTE, \"x\" );";
			then += random.nextBoolean() ? " " + check() : "";
			String authority = random.nextBoolean() ? "shop practice" : "code or safety";
			rules.append(Books.rule("r" + i, authority, when.toString(), then));
		}
		return rules.toString();
	}

	/** A start-up check that shows whatever the conditions have bound, known or not. */
	private String check() {
		String shown = bound.stream().map(b -> "{" + b.split("\\|")[0] + "}").collect(Collectors.joining(" and "));
		return "startUp( FAN, \"" + (random.nextBoolean() ? "call" : "{setting COOL_STAGES}") + "\", \"see " + shown + "\", \"stop\" );";
	}

	private String condition(int rule, int depth) {
		int pick = random.nextInt(depth > 1 ? 5 : 10);
		int finding = rule - rule % 3 - 3 * random.nextInt(2);
		if (pick < 4 || pick == 4 && (finding < 0 || finding >= rule)) {
			return pattern(depth == 0);
		} else if (pick == 4) {
			return "Finding( name == F" + finding + " )";
		} else if (pick < 7) {
			return "not " + inner(rule, depth);
		} else if (pick == 7) {
			return "exists " + inner(rule, depth);
		}
		String joint = pick == 8 ? " or " : " and ";
		return "( " + condition(rule, depth + 1) + joint + condition(rule, depth + 1) + " )";
	}

	private String inner(int rule, int depth) {
		return random.nextBoolean() ? pattern(false)
				: "( " + condition(rule, depth + 1) + " and " + condition(rule, depth + 1) + " )";
	}

	private String pattern(boolean mayBind) {
		FactKind kind = KINDS.get(random.nextInt(KINDS.size()));
		while (kind.many() && lists == 3) {
			kind = KINDS.get(random.nextInt(KINDS.size()));
		}
		lists += kind.many() ? 1 : 0;
		List<String> tests = new ArrayList<>();
		List<String> names = new ArrayList<>();
		int count = random.nextInt(3);
		for (int i = 0; i < count; i++) {
			tests.add(random.nextInt(4) == 0 ? test(kind) + " || " + test(kind)
					: random.nextInt(6) == 0 ? "( " + test(kind) + " && " + test(kind) + " )" : test(kind));
		}
		Field some = kind.fields().get(random.nextInt(kind.fields().size()));
		if (mayBind && random.nextInt(3) == 0) {
			String name = "$v" + this.names++;
			tests.add(name + " : " + some.name());
			names.add(name + "|" + kind.name() + "|" + some.name());
		}
		String fact = "";
		if (mayBind && random.nextInt(3) == 0) {
			String name = "$x" + this.names++;
			fact = name + " : ";
			names.add(name + "." + some.name() + "|" + kind.name() + "|" + some.name());
		}
		bound.addAll(names);
		return fact + kind.name() + "( " + String.join(", ", tests) + " )";
	}

	private String test(FactKind kind) {
		Field field = kind.fields().get(random.nextInt(kind.fields().size()));
		if (random.nextInt(6) == 0) {
			return field.name() + (random.nextBoolean() ? " == UNKNOWN" : " != UNKNOWN");
		}
		boolean ordered = field.domain() instanceof Domain.Whole || field.domain() instanceof Domain.Measure;
		List<String> signs = ordered ? List.of("==", "!=", "<", "<=", ">", ">=") : List.of("==", "!=");
		String sign = signs.get(random.nextInt(signs.size()));
		if (random.nextInt(2) == 0) {
			for (String other : bound) {
				String[] parts = other.split("\\|");
				if (parts[1].equals(kind.name()) && parts[2].equals(field.name())) {
					return field.name() + " " + sign + " " + parts[0];
				}
			}
		}
		if (field.domain() instanceof Domain.Words && random.nextInt(3) == 0) {
			return field.name() + " matches \"N.*k|[A-Z]\\\\w+ Air\"";
		}
		return random.nextInt(3) == 0
				? field.name() + (random.nextBoolean() ? " in ( " : " not in ( ") + literal(field) + ", " + literal(field) + " )"
				: field.name() + " " + sign + " " + literal(field);
	}

	private String literal(Field field) {
		if (field.domain() instanceof Domain.Words) {
			return "\"" + WORDS.get(random.nextInt(WORDS.size())) + "\"";
		}
		Value value = value(field);
		return value instanceof Value.Amount amount
				? amount.quantity().unit() == Unit.NONE ? amount.text() : "\"" + amount.text() + "\""
				: value instanceof Value.Flag flag ? flag.yes() ? "YES" : "NO" : value.plain().toString();
	}

	private Value value(Field field) {
		if (field.domain() instanceof Domain.Measure m) {
			double step = (m.most() - m.least()) / 4;
			return new Value.Amount(new Quantity(m.least() + step * random.nextInt(5), m.unit()));
		} else if (field.domain() instanceof Domain.Words) {
			return new Value.Words(WORDS.get(random.nextInt(WORDS.size())).replace("\\\"", "\"").replace("\\\\", "\\"));
		} else if (field.domain() instanceof Domain.Whole w) {
			return new Value.Count(w.least() + random.nextInt(Math.min(3, w.most() - w.least() + 1)));
		}
		List<Value> listed = field.domain().listed();
		return listed.get(random.nextInt(Math.min(3, listed.size())));
	}

	Job job() {
		Job job = Job.blank();
		for (FactKind kind : KINDS) {
			int presence = random.nextInt(4);
			if (presence == 0) {
				continue;
			}
			List<Fact> facts = new ArrayList<>();
			int count = presence == 1 && !kind.exactlyOne() ? 0 : kind.many() ? random.nextInt(4) : 1;
			for (int i = 0; i < count; i++) {
				Map<Field, Value> known = new HashMap<>();
				kind.fields().stream().filter(f -> random.nextInt(3) > 0).forEach(f -> known.put(f, value(f)));
				facts.add(kind.create(known));
			}
			job = job.with(kind, Job.Entry.of(facts));
		}
		return job;
	}
}
