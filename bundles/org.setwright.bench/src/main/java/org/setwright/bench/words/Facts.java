package org.setwright.bench.words;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.setwright.bench.told.Misread;
import org.setwright.book.Misfit;
import org.setwright.book.Nearest;
import org.setwright.trade.catalogue.Catalogue;
import org.setwright.trade.catalogue.FactKind;
import org.setwright.trade.catalogue.Field;

/** Finds the kind of fact, its number and its field in words such as "wire 2 colour". */
public final class Facts {
	private static final Pattern NUMBER = Pattern.compile("\\s+(\\d{1,3})(?![\\w.,])");
	private final Catalogue catalogue;

	/** @param catalogue which facts there are */
	public Facts(Catalogue catalogue) {
		this.catalogue = catalogue;
	}

	/**
	 * What words name.
	 *
	 * @param number which of several, from 1; 0 when not said
	 * @param field empty when the whole kind is meant
	 * @param length how many characters of the words it takes
	 */
	public record Meant(FactKind kind, int number, Optional<Field> field, int length) {
	}

	/** @return what the beginning of {@code words} names, as much of it as possible; empty when nothing */
	public Optional<Meant> begun(String words) {
		List<Meant> all = new ArrayList<>();
		for (FactKind kind : catalogue.kinds()) {
			for (String name : List.of(kind.label(), kind.key())) {
				if (starts(words, 0, name)) {
					all.add(rest(kind, name.length(), words));
				}
			}
			if (kind.fields().stream().anyMatch(f -> starts(words, 0, f.label()))) {
				field(kind, words, 0).filter(this::alone).ifPresent(f -> all.add(new Meant(kind, 0, Optional.of(f), f.label().length())));
			}
		}
		return all.stream().max(Comparator.comparingInt(Meant::length));
	}

	private Meant rest(FactKind kind, int from, String words) {
		Matcher number = NUMBER.matcher(words).region(from, words.length());
		boolean numbered = kind.many() && number.lookingAt();
		int at = numbered ? number.end() : from;
		int next = at;
		while (next < words.length() && words.charAt(next) == ' ') {
			next++;
		}
		int start = next;
		Optional<Field> field = next == at ? Optional.empty() : field(kind, words, next);
		return new Meant(kind, numbered ? Integer.parseInt(number.group(1)) : 0, field, field.map(f -> start + f.label().length()).orElse(at));
	}

	private static Optional<Field> field(FactKind kind, String words, int from) {
		return kind.fields().stream().filter(f -> starts(words, from, f.label())).max(Comparator.comparingInt(f -> f.label().length()));
	}

	private boolean alone(Field field) {
		return catalogue.kinds().stream().filter(k -> k.fieldLabelled(field.label()).isPresent()).count() == 1;
	}

	private static boolean starts(String words, int from, String name) {
		int end = from + name.length();
		return words.regionMatches(true, from, name, 0, name.length()) && (end == words.length() || !Character.isLetterOrDigit(words.charAt(end)));
	}

	/**
	 * @param words all of which have to name something
	 * @return what they name
	 * @throws Misread saying what was probably meant
	 */
	public Meant meant(Span words) throws Misread {
		Optional<Meant> meant = begun(words.text());
		if (meant.isEmpty()) {
			throw words.misread("There is no fact called " + Misfit.quoted(words.text()) + ".", remedy(words.text()));
		}
		Span rest = words.from(meant.get().length());
		if (!rest.isEmpty()) {
			throw unknownField(meant.get().kind(), rest);
		}
		return meant.get();
	}

	/** @return a complaint that {@code kind} has no field called {@code name} */
	public Misread unknownField(FactKind kind, Span name) {
		List<String> labels = kind.fields().stream().map(Field::label).toList();
		return name.misread("There is no " + Misfit.quoted(name.text()) + " of the " + kind.label() + ".", Nearest.to(name.text(), labels)
				.map(n -> "Is \"" + n + "\" meant?").orElse("Write one of: " + String.join(", ", labels) + "."));
	}

	private String remedy(String words) {
		List<String> owners = catalogue.kinds().stream().filter(k -> k.fieldLabelled(words).isPresent())
				.map(k -> "\"" + k.label() + (k.many() ? " 1 " : " ") + words.strip() + "\"").toList();
		if (!owners.isEmpty()) {
			return "Say of what: " + owners.stream().collect(Collectors.joining(" or ")) + ".";
		}
		List<String> names = catalogue.kinds().stream().flatMap(k -> Stream.concat(Stream.of(k.label(), k.key()),
				k.fields().stream().map(f -> k.label() + " " + f.label()))).toList();
		return Nearest.to(words, names).map(n -> "Is \"" + n + "\" meant?").orElse("Type \"words\" to see what can be said.");
	}
}
