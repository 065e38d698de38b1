package org.setwright.editions.joining;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.setwright.book.ShopSettingText;
import org.setwright.book.ShopSettings;
import org.setwright.editions.compare.SettingChange;
import org.setwright.editions.joining.RuleFileJoin.Joined;
import org.setwright.trade.catalogue.Catalogue;

/** Joins the settings of the shop's own that both sides changed, setting by setting, as {@link RuleFileJoin} does rules. */
final class SettingsFileJoin {
	/** How texts come together does not depend on what the trade knows. */
	private static final Catalogue NO_TRADE = new Catalogue.Builder().build();
	private final String text;
	private final List<ShopSettingText> ours;
	private final List<ShopSettingText> theirs;
	private final Map<ShopSettingText, ShopSettingText> oursOfBase;
	private final Map<ShopSettingText, ShopSettingText> theirsOfBase;
	private final List<Conflict> conflicts = new ArrayList<>();
	private final Map<ShopSettingText, Optional<String>> replaced = new LinkedHashMap<>();
	private final Map<ShopSettingText, String> added = new LinkedHashMap<>();

	private SettingsFileJoin(String text, List<ShopSettingText> base, List<ShopSettingText> ours, List<ShopSettingText> theirs) {
		this.text = text;
		this.ours = ours;
		this.theirs = theirs;
		oursOfBase = partners(base, ours);
		theirsOfBase = partners(base, theirs);
	}

	/**
	 * @param base empty text when there was no such file
	 * @param choices the text for each conflict that was decided, by {@link Conflict#what}; empty to leave it out
	 * @return empty when a side has errors, when what stands between the settings changed on both sides, or when the settings are
	 *         written so that their texts do not go together
	 */
	static Optional<Joined> of(String base, String ours, String theirs, Map<String, Optional<String>> choices) {
		Optional<List<ShopSettingText>> was = settings(base);
		Optional<List<ShopSettingText>> here = settings(ours);
		Optional<List<ShopSettingText>> there = settings(theirs);
		if (was.isEmpty() || here.isEmpty() || there.isEmpty()) {
			return Optional.empty();
		}
		String before = between(plain(base), was.get());
		String beside = between(plain(ours), here.get());
		String beyond = between(plain(theirs), there.get());
		if (beyond.equals(before) || beyond.equals(beside)) {
			return new SettingsFileJoin(plain(ours), was.get(), here.get(), there.get()).joined(was.get(), choices);
		} else if (!beside.equals(before)) {
			return Optional.empty();
		}
		return new SettingsFileJoin(plain(theirs), was.get(), there.get(), here.get()).joined(was.get(), choices)
				.map(turned -> new Joined(turned.text(), turned.conflicts().stream().map(Conflict::turned).toList()));
	}

	private static Optional<List<ShopSettingText>> settings(String text) {
		return ShopSettingText.all(text, NO_TRADE);
	}

	private static String plain(String text) {
		return text.startsWith("\uFEFF") ? text.substring(1) : text;
	}

	/** What a file holds besides settings, free of layout. */
	private static String between(String text, List<ShopSettingText> settings) {
		StringBuilder left = new StringBuilder(text);
		for (int i = settings.size() - 1; i >= 0; i--) {
			left.replace(settings.get(i).start(), settings.get(i).end(), " ");
		}
		return left.toString().strip().replaceAll("\\s+", " ");
	}

	/** What has become of each that is not gone, also under another name. */
	private static Map<ShopSettingText, ShopSettingText> partners(List<ShopSettingText> base, List<ShopSettingText> side) {
		Map<ShopSettingText, ShopSettingText> partners = new HashMap<>();
		base.forEach(b -> side.stream().filter(s -> s.setting().equals(b.setting())).forEach(s -> partners.put(b, s)));
		for (SettingChange change : SettingChange.between(base, side)) {
			change.before().ifPresent(b -> change.after().ifPresent(a -> partners.put(b, a)));
		}
		return partners;
	}

	private Optional<Joined> joined(List<ShopSettingText> base, Map<String, Optional<String>> choices) {
		for (ShopSettingText was : base) {
			decide(Optional.of(was), Optional.ofNullable(oursOfBase.get(was)), Optional.ofNullable(theirsOfBase.get(was)), choices);
		}
		for (ShopSettingText there : theirs) {
			if (!theirsOfBase.containsValue(there)) {
				decide(Optional.empty(), ours.stream().filter(o -> o.setting().equals(there.setting())).findFirst(), Optional.of(there), choices);
			}
		}
		Joined joined = new Joined(written(), conflicts);
		return asMeant(joined.text()) ? Optional.of(joined) : Optional.empty();
	}

	private void decide(Optional<ShopSettingText> was, Optional<ShopSettingText> here, Optional<ShopSettingText> there,
			Map<String, Optional<String>> choices) {
		Optional<String> before = was.map(SettingsFileJoin::lines);
		Optional<String> ourText = here.map(SettingsFileJoin::lines);
		Optional<String> theirText = there.map(SettingsFileJoin::lines);
		if (theirText.equals(before) || theirText.equals(ourText)) {
			return;
		} else if (ourText.equals(before)) {
			put(here, there, there.map(ShopSettingText::text));
			return;
		}
		String name = Stream.of(here, there, was).flatMap(Optional::stream).findFirst().orElseThrow().setting().label();
		Conflict conflict = new Conflict("setting " + name, ShopSettings.FILE, true, was.map(ShopSettingText::text), here.map(ShopSettingText::text),
				there.map(ShopSettingText::text));
		Optional<String> choice = choices.get(conflict.what());
		if (choice == null) {
			conflicts.add(conflict);
		} else {
			put(here, there, choice);
		}
	}

	private void put(Optional<ShopSettingText> here, Optional<ShopSettingText> there, Optional<String> chosen) {
		if (here.isPresent()) {
			replaced.put(here.get(), chosen);
		} else {
			chosen.ifPresent(t -> added.put(there.orElseThrow(), t));
		}
	}

	private static String lines(ShopSettingText setting) {
		return setting.text().replace("\r", "").replaceAll("[ \t]+\n", "\n");
	}

	private String written() {
		Map<Integer, String> insertions = new TreeMap<>();
		added.forEach((setting, by) -> insertions.merge(place(setting), "\n" + by, String::concat));
		StringBuilder joined = new StringBuilder(text);
		Map<Integer, Runnable> edits = new TreeMap<>(Comparator.reverseOrder());
		insertions.forEach((at, by) -> edits.put(at, () -> joined.insert(at, by)));
		replaced.forEach((setting, by) -> edits.put(setting.start(), () -> joined.replace(setting.start(),
				by.isPresent() ? setting.end() : behindLine(joined, setting.end()), by.orElse(""))));
		edits.values().forEach(Runnable::run);
		return joined.toString();
	}

	private static int behindLine(StringBuilder text, int at) {
		int end = text.indexOf("\n", at);
		return end < 0 ? text.length() : end + 1;
	}

	/** Where a new setting of the other side goes: behind the one it follows there and what is new behind that here, else at the end. */
	private int place(ShopSettingText setting) {
		int place = ours.size() - 1;
		for (ShopSettingText other : theirs.subList(0, theirs.indexOf(setting))) {
			place = theirsOfBase.entrySet().stream().filter(e -> e.getValue() == other).map(e -> oursOfBase.get(e.getKey())).filter(Objects::nonNull)
					.map(ours::indexOf).findFirst().orElse(place);
		}
		while (place + 1 < ours.size() && !oursOfBase.containsValue(ours.get(place + 1))) {
			place++;
		}
		return place < 0 ? text.stripTrailing().length() : ours.get(place).end();
	}

	/** Whether reading what was joined finds every setting as it was meant, whatever the manner of writing on the two sides. */
	private boolean asMeant(String joined) {
		List<String> meant = new ArrayList<>(added.values());
		ours.forEach(o -> replaced.getOrDefault(o, Optional.of(o.text())).ifPresent(meant::add));
		return settings(joined).filter(all -> all.stream().map(ShopSettingText::text).sorted().toList().equals(meant.stream().sorted().toList())).isPresent();
	}
}
