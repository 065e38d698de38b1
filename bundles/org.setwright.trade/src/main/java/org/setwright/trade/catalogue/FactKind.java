package org.setwright.trade.catalogue;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The catalogue entry of one kind of fact, read from its record. This is the only place that reflects on records: all
 * general code reads and builds facts through it.
 */
public final class FactKind {
	private final Class<? extends Fact> type;
	private final About about;
	private final List<Field> fields;
	private final RecordComponent[] components;
	private final Constructor<?> constructor;

	/** @param type a record whose components are all {@code Answer}s, described by {@link About} and {@link Asked} */
	public FactKind(Class<? extends Fact> type) {
		this.type = type;
		about = type.getAnnotation(About.class);
		components = type.getRecordComponents();
		if (about == null || components == null) {
			throw new IllegalArgumentException(type.getName() + " must be a record described by @About");
		}
		fields = Arrays.stream(components).map(FactKind::field).toList();
		try {
			constructor = type.getDeclaredConstructor(
					Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new));
		} catch (NoSuchMethodException impossible) {
			throw new IllegalArgumentException(type.getName() + " has no canonical constructor", impossible);
		}
	}

	/** @return its word in rules, for example {@code OutdoorUnit} */
	public String name() {
		return type.getSimpleName();
	}

	/** @return what people call one of them */
	public String label() {
		return about.label();
	}

	/** @return its label as the object of "whether there is": "a humidifier", "auxiliary heat" */
	public String one() {
		return about.uncountable() ? label() : article(label()) + label();
	}

	/** @return what job files call it: the plural when a job may have several */
	public String key() {
		return many() ? about.plural() : about.label();
	}

	/** @return the trade's meaning in one sentence */
	public String meaning() {
		return about.meaning();
	}

	/** @return whether a job may have several */
	public boolean many() {
		return !about.plural().isEmpty();
	}

	/** @return whether nobody can say that there is none: every job has one, or it is computed */
	public boolean always() {
		return about.always() || calculated();
	}

	/** @return whether every job has exactly one, so that it is there even if nobody has said anything about it */
	public boolean exactlyOne() {
		return about.always() && !many();
	}

	/** @return whether somebody on site can add or take one away */
	public boolean changesOnSite() {
		return about.changesOnSite();
	}

	/** @return whether it is computed and never written in a file; a job that it does not apply to has none */
	public boolean calculated() {
		return fields.stream().allMatch(f -> f.calculation().isPresent());
	}

	/** @return the record class */
	public Class<? extends Fact> type() {
		return type;
	}

	/** @return its fields in the order they are asked */
	public List<Field> fields() {
		return fields;
	}

	/** @return the field whose word in rules is {@code name}, or empty */
	public Optional<Field> field(String name) {
		return fields.stream().filter(f -> f.name().equals(name)).findFirst();
	}

	/** @return the field people call {@code label} (any case), or empty */
	public Optional<Field> fieldLabelled(String label) {
		return fields.stream().filter(f -> f.label().equalsIgnoreCase(label.strip())).findFirst();
	}

	/** @return the answer {@code fact} (of this kind) gives for {@code field} (of this kind) */
	public Answer<Value> answer(Fact fact, Field field) {
		try {
			Answer<?> answer = (Answer<?>) components[index(field)].getAccessor().invoke(fact);
			return answer.map(value -> general(value, field.domain()));
		} catch (IllegalAccessException | InvocationTargetException e) {
			throw new IllegalStateException("cannot read " + name() + "." + field.name(), e);
		}
	}

	/** @return the place of {@code field}, of this kind, among its fields, from 0 */
	public int index(Field field) {
		for (int i = 0; i < fields.size(); i++) {
			if (fields.get(i) == field) {
				return i;
			}
		}
		throw new IllegalArgumentException(label() + " has no field " + field.label());
	}

	/**
	 * Makes a fact of this kind.
	 *
	 * @param known the known answers; a field not in the map is unknown
	 */
	public Fact create(Map<Field, Value> known) {
		List<Answer<?>> answers = new ArrayList<>();
		for (int i = 0; i < components.length; i++) {
			Value value = known.get(fields.get(i));
			answers.add(value == null ? Answer.unknown() : Answer.of(particular(value, components[i])));
		}
		try {
			return (Fact) constructor.newInstance(answers.toArray());
		} catch (ReflectiveOperationException e) {
			throw new IllegalStateException("cannot make " + name(), e);
		}
	}

	/** @return a copy of {@code fact} that gives {@code answer} for {@code field} */
	public Fact with(Fact fact, Field field, Answer<Value> answer) {
		Map<Field, Value> known = new java.util.HashMap<>();
		for (Field f : fields) {
			(f.equals(field) ? answer : answer(fact, f)).value().ifPresent(v -> known.put(f, v));
		}
		return create(known);
	}

	@Override
	public String toString() {
		return label();
	}

	private static Field field(RecordComponent component) {
		Asked asked = component.getAnnotation(Asked.class);
		if (asked == null || component.getType() != Answer.class) {
			throw new IllegalArgumentException(component + " must be an Answer described by @Asked");
		}
		Calculated calculated = component.getAnnotation(Calculated.class);
		Domain domain = domain(answered(component), asked);
		return new Field(component.getName(), asked.label(), asked.meaning(),
				asked.says().isEmpty() ? says(asked.label(), domain) : asked.says(), domain,
				asked.changesOnSite(), asked.naming(), Optional.ofNullable(calculated)
						.map(c -> new Field.Calculation(List.of(c.from()), List.of(c.through()), c.formula(), c.source())));
	}

	/** What is usual for an answer of this sort. */
	private static String says(String label, Domain domain) {
		if (domain instanceof Domain.Whole) {
			return "has {} " + label;
		} else if (domain instanceof Domain.Measure) {
			return "has " + article(label) + label + " of {}";
		} else if (domain instanceof Domain.YesNo) {
			return "says yes to " + label + "|says no to " + label;
		}
		return label.equals("kind") ? "is of the kind {}" : "its " + label + " is {}";
	}

	private static String article(String words) {
		return "aeiou".indexOf(words.charAt(0)) >= 0 ? "an " : "a ";
	}

	private static Class<?> answered(RecordComponent component) {
		return (Class<?>) ((ParameterizedType) component.getGenericType()).getActualTypeArguments()[0];
	}

	private static Domain domain(Class<?> answered, Asked asked) {
		if (answered.isEnum()) {
			return Domain.Choices.of(answered);
		} else if (answered == Integer.class) {
			return new Domain.Whole((int) asked.least(), (int) asked.most());
		} else if (answered == Quantity.class) {
			return new Domain.Measure(asked.unit(), asked.least(), asked.most());
		} else if (answered == Boolean.class) {
			return new Domain.YesNo();
		} else if (answered == String.class) {
			return new Domain.Words();
		}
		throw new IllegalArgumentException("no domain for answers of type " + answered.getName());
	}

	private static Value general(Object value, Domain domain) {
		if (value instanceof Choice choice) {
			return domain.read(choice.name()).orElseThrow();
		} else if (value instanceof Integer number) {
			return new Value.Count(number);
		} else if (value instanceof Quantity quantity) {
			return new Value.Amount(quantity);
		} else if (value instanceof Boolean yes) {
			return new Value.Flag(yes);
		}
		return new Value.Words((String) value);
	}

	@SuppressWarnings({ "unchecked", "rawtypes" })
	private static Object particular(Value value, RecordComponent component) {
		if (value instanceof Value.OneOf one) {
			return Enum.valueOf((Class<Enum>) answered(component), one.option().id());
		} else if (value instanceof Value.Amount amount) {
			return amount.quantity();
		}
		return value.plain();
	}
}
