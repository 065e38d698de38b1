package org.setwright.book;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.setwright.trade.catalogue.Catalogue;
import org.setwright.trade.catalogue.Domain;
import org.setwright.trade.catalogue.FactKind;
import org.setwright.trade.catalogue.Field;
import org.setwright.trade.catalogue.Setting;
import org.setwright.trade.catalogue.Unit;

/**
 * Describes job files as a JSON Schema (draft 2020-12), for editors that complete and check YAML by one. It knows the
 * words in small letters only, and not the bounds of quantities; {@link JobReader} knows all.
 */
public final class JobSchema {
	private static final String NUMBER = "^[+-]?[0-9][0-9,]*(\\.[0-9]+)? *";

	private static final Map<ItemList, String> ITEMS = Map.of(ItemList.CAUTIONS, "Cautions that must be raised.",
			ItemList.NO_CAUTIONS, "Cautions that must not be raised.", ItemList.START_UP, "Start-up checks that the job needs.",
			ItemList.PERHAPS_START_UP, "Start-up checks of which nobody knows yet whether the job needs them.",
			ItemList.NO_START_UP, "Start-up checks that the job does not need.", ItemList.FINDINGS, "What the rules must find on the way.",
			ItemList.NO_FINDINGS, "What the rules must not find.");

	private JobSchema() {
	}

	/** @return the schema of the job files that can be written with {@code catalogue} */
	public static String of(Catalogue catalogue) {
		Map<String, Object> properties = new LinkedHashMap<>();
		properties.put(JobKeys.JOB, described("What the shop calls the job; unique in the book.",
				Map.of("type", "string", "minLength", 1, "maxLength", JobKeys.LONGEST_NAME)));
		properties.put(JobKeys.NOTES, described("Anything worth knowing.", Map.of("type", List.of("string", "null"))));
		catalogue.kinds().stream().filter(k -> !k.calculated()).forEach(k -> properties.put(k.key(), described(k.meaning(), kind(k))));
		properties.put(JobKeys.NOT_FITTED, described("What the job does not have.", notFitted(catalogue)));
		properties.put(JobKeys.EXPECT, described("What settings are expected to come to.", expectations(catalogue)));
		properties.put(JobKeys.ACCEPTED, described("New outcomes that somebody accepted: which, when, who and why.", accepted()));
		Map<String, Object> schema = new LinkedHashMap<>();
		schema.put("$schema", "https://json-schema.org/draft/2020-12/schema");
		schema.put("title", "Setwright job case");
		schema.put("required", List.of(JobKeys.JOB));
		schema.putAll(object(properties));
		return JsonText.of(schema) + "\n";
	}

	private static Map<String, Object> kind(FactKind kind) {
		Map<String, Object> fields = new LinkedHashMap<>();
		kind.fields().stream().filter(f -> f.calculation().isEmpty()).forEach(f -> fields.put(f.label(), field(f)));
		List<Object> words = new ArrayList<>(List.of(JobKeys.UNKNOWN));
		words.addAll(kind.always() ? List.of() : List.of(JobKeys.NONE));
		words.addAll(kind.many() ? List.of() : List.of(JobKeys.FITTED));
		return anyOf(kind.many() ? items(kind, object(fields)) : object(fields), ordered("enum", words));
	}

	private static Map<String, Object> items(FactKind kind, Map<String, Object> fact) {
		List<Object> item = new ArrayList<>(List.of(fact, ordered("const", JobKeys.UNKNOWN)));
		kind.fields().stream().filter(Field::naming).findFirst().ifPresent(f -> item.add(values(f.domain())));
		return ordered("type", "array", "minItems", 1, "items", ordered("anyOf", item));
	}

	private static Map<String, Object> field(Field field) {
		return described(field.meaning(), anyOf(values(field.domain()), ordered("const", JobKeys.UNKNOWN)));
	}

	private static Map<String, Object> values(Domain domain) {
		if (domain instanceof Domain.Choices choices) {
			return ordered("oneOf", choices.options().stream().map(o -> ordered("const", written(o.label()), "description", o.meaning())).toList());
		} else if (domain instanceof Domain.Whole whole) {
			return ordered("type", "integer", "minimum", whole.least(), "maximum", whole.most());
		} else if (domain instanceof Domain.Measure measure) {
			return measure.unit() == Unit.NONE ? ordered("type", "number", "minimum", measure.least(), "maximum", measure.most())
					: ordered("type", "string", "pattern", NUMBER + units(measure.unit()) + "$", "description", measure.allowed());
		} else if (domain instanceof Domain.YesNo) {
			return ordered("enum", List.of("yes", "no", true, false));
		}
		return ordered("type", List.of("string", "number", "boolean"), "minLength", 1, "maxLength", Domain.Words.LONGEST);
	}

	/** A choice that looks like a number is one to whoever reads the file by this schema. */
	private static Object written(String label) {
		return label.matches("\\d{1,9}") ? (Object) Integer.valueOf(label) : label;
	}

	private static String units(Unit unit) {
		return Unit.measuring(unit.dimension()).stream().flatMap(u -> u.spellings().stream()).map(JobSchema::literally)
				.distinct().collect(Collectors.joining("|", "(", ")"));
	}

	private static String literally(String text) {
		return Pattern.compile("[\\\\^$.|?*+()\\[\\]{}]").matcher(text).replaceAll("\\\\$0");
	}

	private static Map<String, Object> notFitted(Catalogue catalogue) {
		List<Object> names = catalogue.kinds().stream().filter(k -> !k.always()).flatMap(k -> Stream.of(k.label(), k.key())).distinct()
				.collect(Collectors.toCollection(ArrayList::new));
		names.add(JobKeys.EVERYTHING_ELSE);
		return anyOf(ordered("enum", names), ordered("type", "array", "items", ordered("enum", names)));
	}

	private static Map<String, Object> expectations(Catalogue catalogue) {
		Map<String, Object> settings = new LinkedHashMap<>();
		for (Setting setting : catalogue.settings()) {
			settings.put(setting.label(), described(setting.meaning(), expectation(setting.domain())));
		}
		for (ItemList list : ItemList.values()) {
			settings.put(list.key(), described(ITEMS.get(list), items(list)));
		}
		return object(settings);
	}

	private static Map<String, Object> expectation(Domain domain) {
		Map<String, Object> value = valueWithin(domain);
		Map<String, Object> decided = object(ordered(ExpectationText.IS, value, ExpectationText.BY, words()));
		decided.put("required", List.of(ExpectationText.BY));
		return ordered("anyOf", List.of(value, ordered("enum", ExpectationText.WORDS), decided));
	}

	private static Map<String, Object> valueWithin(Domain domain) {
		boolean number = domain instanceof Domain.Whole || domain instanceof Domain.Measure;
		return !number ? values(domain) : anyOf(values(domain), ordered("type", "string", "pattern", NUMBER + "\\S* *(within|±|\\+/?-).+$",
				"description", "a value, \"within\", and how far it may be off"));
	}

	/** One item, or a list of them. */
	private static Map<String, Object> items(ItemList list) {
		Map<String, Object> item = list.topic() == ItemList.Topic.FINDINGS ? words() : item(list.topic());
		Map<String, Object> one = list.appears() ? item : anyOf(ordered("const", ExpectedItem.ANY_OTHER), item);
		return anyOf(one, ordered("type", "array", "items", one));
	}

	private static Map<String, Object> item(ItemList.Topic topic) {
		Map<String, Object> heads = new LinkedHashMap<>();
		Stream.concat(ItemText.heads(topic).stream(), ItemText.headsOfWords(topic).stream()).forEach(h -> heads.put(h, words()));
		Map<String, Object> withWords = object(heads);
		withWords.put("minProperties", 1);
		withWords.put("maxProperties", 1);
		return anyOf(ordered("enum", ItemText.heads(topic)), withWords);
	}

	private static Map<String, Object> accepted() {
		Map<String, Object> keys = new LinkedHashMap<>();
		Acceptances.KEYS.forEach(k -> keys.put(k, words()));
		keys.put(Acceptances.ON, ordered("type", "string", "pattern", "^\\d{4}-\\d{2}-\\d{2}$"));
		Map<String, Object> one = object(keys);
		one.put("required", Acceptances.KEYS);
		return ordered("type", "array", "items", one);
	}

	/** Words that look like a number or a yes are one to whoever reads the file by this schema. */
	private static Map<String, Object> words() {
		return ordered("type", List.of("string", "number", "boolean"), "minLength", 1, "maxLength", JobKeys.LONGEST_VALUE);
	}

	private static Map<String, Object> object(Map<String, Object> properties) {
		return ordered("type", "object", "additionalProperties", false, "properties", properties);
	}

	private static Map<String, Object> anyOf(Object one, Object other) {
		return ordered("anyOf", List.of(one, other));
	}

	private static Map<String, Object> described(String meaning, Map<String, Object> schema) {
		Map<String, Object> described = ordered("description", meaning);
		described.putAll(new java.util.TreeMap<>(schema));
		return described;
	}

	private static Map<String, Object> ordered(Object... keysAndValues) {
		Map<String, Object> map = new LinkedHashMap<>();
		for (int i = 0; i < keysAndValues.length; i += 2) {
			map.put((String) keysAndValues[i], keysAndValues[i + 1]);
		}
		return map;
	}
}
