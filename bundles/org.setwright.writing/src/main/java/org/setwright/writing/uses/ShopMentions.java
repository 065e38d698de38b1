package org.setwright.writing.uses;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.setwright.book.Position;
import org.setwright.book.ShopSetting;
import org.setwright.book.ShopSettings;
import org.setwright.trade.catalogue.Catalogue;
import org.setwright.trade.catalogue.Domain;
import org.setwright.writing.text.RuleText;

/** Finds what {@code settings.yaml} speaks of: the settings of the shop's own, their values, and what makes a job need them. */
final class ShopMentions {
	private static final String BEFORE = "rule \"needed\" when ";
	private final String text;
	private final List<Mention> found = new ArrayList<>();

	private ShopMentions(String text) {
		this.text = text;
	}

	static List<Mention> of(ShopSettings settings, String text) {
		ShopMentions mentions = new ShopMentions(text);
		settings.own().forEach(own -> mentions.setting(own, settings.catalogue()));
		return mentions.found;
	}

	private void setting(ShopSetting own, Catalogue catalogue) {
		String where = own.setting().label();
		name(new Thing.OfSetting(own.setting()), own.at(), own.setting().label(), where);
		if (own.setting().domain() instanceof Domain.Choices choices) {
			for (int i = 0; i < own.valuesAt().size(); i++) {
				Domain.Choices.Option option = choices.options().get(i);
				name(new Thing.OfSettingChoice(own.setting(), option), own.valuesAt().get(i), option.label(), where);
			}
		}
		own.neededAt().ifPresent(at -> needed(at, own.setting().requiredWhen(), catalogue, where));
	}

	private void name(Thing thing, Position at, String name, String where) {
		int start = Offsets.of(text, at, name);
		found.add(new Mention(thing, ShopSettings.FILE, start, Math.min(text.length(), start + name.length()), true, where));
	}

	/** The conditions are read as those of a rule, and stand as they are unless somebody has escaped a sign in them. */
	private void needed(Position at, String conditions, Catalogue catalogue, String where) {
		int start = Offsets.of(text, at);
		if (text.startsWith(conditions, start)) {
			RuleText.of(BEFORE + conditions + " then end").blocks().stream().flatMap(b -> RuleMentions.of(ShopSettings.FILE, b, catalogue).stream())
					.filter(m -> m.start() >= BEFORE.length()).forEach(m -> found.add(new Mention(m.thing(), m.path(),
							m.start() - BEFORE.length() + start, m.end() - BEFORE.length() + start, false, where)));
		}
	}

	/** @return what the word at {@code offset} stands for */
	static Optional<Thing> at(ShopSettings settings, String text, int offset) {
		return of(settings, text).stream().filter(m -> m.start() <= offset && offset <= m.end()).findFirst().map(Mention::thing);
	}
}
