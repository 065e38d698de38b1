package org.setwright.engine.throughput;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.setwright.trade.Trade;
import org.setwright.trade.catalogue.Domain;
import org.setwright.trade.catalogue.FactKind;
import org.setwright.trade.catalogue.Field;
import org.setwright.trade.catalogue.Value;

/**
 * The stated facts as the classes a programmer would write who knows of no unknowns: enums, whole numbers, numbers in the
 * base unit, yes and no, text; and {@code Site}, which holds all facts of one job.
 */
final class PlainClasses {
	static final String PACKAGE = "plain";
	static final List<FactKind> KINDS = Trade.catalogue().kinds().stream().filter(k -> !k.calculated()).toList();

	private static final Map<Domain, String> CHOICES = choices();

	private PlainClasses() {
	}

	/** @return the sources by class name */
	static Map<String, String> sources() {
		Map<String, String> sources = new LinkedHashMap<>();
		CHOICES.forEach((domain, name) -> sources.put(name, "package " + PACKAGE + ";\npublic enum " + name + " { "
				+ ((Domain.Choices) domain).options().stream().map(Domain.Choices.Option::id).collect(Collectors.joining(", ")) + " }\n"));
		KINDS.forEach(k -> sources.put(k.name(), fact(k)));
		sources.put("Site", site());
		sources.put("Finding", "package " + PACKAGE + ";\npublic final class Finding {\n\tprivate final String name;\n"
				+ "\tpublic Finding(String name) { this.name = name; }\n\tpublic String getName() { return name; }\n}\n");
		return sources;
	}

	private static String fact(FactKind kind) {
		StringBuilder out = new StringBuilder("package " + PACKAGE + ";\npublic final class " + kind.name() + " {\n");
		for (Field field : kind.fields()) {
			out.append("\tpublic ").append(type(field.domain())).append(' ').append(field.name()).append(";\n");
			out.append("\tpublic ").append(type(field.domain())).append(' ').append(getter(field)).append("() { return ")
					.append(field.name()).append("; }\n");
		}
		return out.append("}\n").toString();
	}

	private static String site() {
		return "package " + PACKAGE + ";\npublic final class Site {\n" + KINDS.stream()
				.map(k -> "\tpublic " + k.name() + (k.many() ? "[] " : " ") + place(k) + ";\n").collect(Collectors.joining()) + "}\n";
	}

	/** @return the field of {@code Site} that holds the facts of {@code kind}: an array, or one that is null when there is none */
	static String place(FactKind kind) {
		return "its" + kind.name();
	}

	static String type(Domain domain) {
		return domain instanceof Domain.Whole ? "int" : domain instanceof Domain.Measure ? "double"
				: domain instanceof Domain.YesNo ? "boolean" : domain instanceof Domain.Words ? "String" : CHOICES.get(domain);
	}

	/** @return {@code value}, of a field of {@code domain}, as Java and DRL write it */
	static String literal(Value value, Domain domain) {
		Object plain = value.plain();
		return domain instanceof Domain.Choices ? CHOICES.get(domain) + "." + plain : plain instanceof String text ? quoted(text) : plain.toString();
	}

	static String quoted(String text) {
		return "\"" + text.replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
	}

	private static String getter(Field field) {
		return (field.domain() instanceof Domain.YesNo ? "is" : "get") + field.name().substring(0, 1).toUpperCase(Locale.ROOT) + field.name().substring(1);
	}

	private static Map<Domain, String> choices() {
		Map<Domain, String> names = new LinkedHashMap<>();
		KINDS.stream().flatMap(k -> k.fields().stream()).map(Field::domain).filter(Domain.Choices.class::isInstance)
				.forEach(d -> names.computeIfAbsent(d, x -> "Choice" + names.size()));
		return names;
	}
}
