package org.setwright.book.history;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.setwright.book.ItemList;
import org.setwright.trade.catalogue.Catalogue;
import org.setwright.trade.catalogue.FactKind;
import org.setwright.trade.catalogue.Field;
import org.setwright.trade.catalogue.Setting;

/** What the cells of a column say about a job. */
sealed interface Target {
	/** Left out. */
	String IGNORE = "ignore";
	String JOB = "job";
	String NOTES = "notes";
	String EXPECT = "expect ";
	String BY = " by";

	/** @return its heading */
	String name();

	/** The name of the job. */
	record Name() implements Target {
		@Override
		public String name() {
			return JOB;
		}
	}

	/** Its notes. */
	record Notes() implements Target {
		@Override
		public String name() {
			return NOTES;
		}
	}

	/** Whether there is any fact of a kind, or how many. */
	record Presence(FactKind kind) implements Target {
		@Override
		public String name() {
			return kind.key();
		}
	}

	/** An answer. @param item from 0 */
	record Answer(FactKind kind, int item, Field field) implements Target {
		@Override
		public String name() {
			return kind.label() + (kind.many() ? " " + (item + 1) : "") + " " + field.label();
		}
	}

	/** What a setting is expected to come to. @param rule whether the cells name the rule that has to decide it */
	record Expected(Setting setting, boolean rule) implements Target {
		@Override
		public String name() {
			return EXPECT + setting.label() + (rule ? BY : "");
		}
	}

	/** Items of a list, one on each line of the cell. */
	record Items(ItemList list) implements Target {
		@Override
		public String name() {
			return EXPECT + list.key();
		}
	}

	/** Nothing. */
	record Ignored() implements Target {
		@Override
		public String name() {
			return IGNORE;
		}
	}

	/** @return what a column headed {@code name} holds, or empty when that means nothing */
	static Optional<Target> of(String name, Catalogue catalogue) {
		String words = name.strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
		return switch (words) {
			case JOB -> Optional.of(new Name());
			case NOTES -> Optional.of(new Notes());
			case IGNORE -> Optional.of(new Ignored());
			default -> words.startsWith(EXPECT) ? expected(words.substring(EXPECT.length()), catalogue) : fact(words, catalogue);
		};
	}

	private static Optional<Target> expected(String words, Catalogue catalogue) {
		Optional<Target> items = ItemList.called(words).map(Items::new);
		return items.isPresent() ? items : catalogue.settingLabelled(words).<Target>map(s -> new Expected(s, false)).or(() -> !words.endsWith(BY) ? Optional.empty()
				: catalogue.settingLabelled(words.substring(0, words.length() - BY.length())).map(s -> new Expected(s, true)));
	}

	private static Optional<Target> fact(String words, Catalogue catalogue) {
		return kinds(catalogue).flatMap(kind -> fact(words, kind).stream()).findFirst();
	}

	private static Optional<Target> fact(String words, FactKind kind) {
		if (words.equals(kind.key().toLowerCase(Locale.ROOT)) || words.equals(kind.label().toLowerCase(Locale.ROOT))) {
			return Optional.of(new Presence(kind));
		}
		Matcher rest = Pattern.compile(Pattern.quote(kind.label().toLowerCase(Locale.ROOT)) + (kind.many() ? "(?: (\\d{1,2}))?" : "()") + " (.+)").matcher(words);
		if (!rest.matches()) {
			return Optional.empty();
		}
		int item = rest.group(1) == null || rest.group(1).isEmpty() ? 0 : Integer.parseInt(rest.group(1)) - 1;
		return item < 0 ? Optional.empty()
				: asked(kind).filter(f -> f.label().equalsIgnoreCase(rest.group(2))).findFirst().map(f -> new Answer(kind, item, f));
	}

	/** @return every name a column may have, those of several facts of a kind with the first one's number */
	static List<String> names(Catalogue catalogue) {
		List<String> names = new ArrayList<>(List.of(JOB, NOTES));
		kinds(catalogue).forEach(kind -> {
			names.add(kind.key());
			asked(kind).forEach(f -> names.add(new Answer(kind, 0, f).name()));
		});
		catalogue.settings().forEach(s -> names.add(EXPECT + s.label()));
		return names;
	}

	private static Stream<FactKind> kinds(Catalogue catalogue) {
		return catalogue.kinds().stream().filter(k -> !k.calculated());
	}

	private static Stream<Field> asked(FactKind kind) {
		return kind.fields().stream().filter(f -> f.calculation().isEmpty());
	}
}
