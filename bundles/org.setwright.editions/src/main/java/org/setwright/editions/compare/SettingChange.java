package org.setwright.editions.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.setwright.book.ShopSettingText;
import org.setwright.trade.catalogue.Domain;
import org.setwright.trade.catalogue.Setting;

/**
 * What became of one setting of the shop's own. Immutable.
 *
 * @param before empty when it is new
 * @param after empty when it is gone
 */
public record SettingChange(Optional<ShopSettingText> before, Optional<ShopSettingText> after) {
	/** @return those that are not as they were, in the order of the later file, then those gone */
	public static List<SettingChange> between(List<ShopSettingText> before, List<ShopSettingText> after) {
		List<ShopSettingText> gone = new ArrayList<>(before);
		gone.removeIf(b -> after.stream().anyMatch(a -> a.setting().equals(b.setting())));
		List<SettingChange> changes = new ArrayList<>();
		for (ShopSettingText is : after) {
			Optional<ShopSettingText> was = before.stream().filter(b -> b.setting().equals(is.setting())).findFirst()
					.or(() -> gone.stream().filter(g -> renamed(g.setting(), is.setting())).findFirst());
			was.ifPresent(gone::remove);
			changes.add(new SettingChange(was, Optional.of(is)));
		}
		changes.removeIf(c -> c.before().isPresent() && layout(c.before().get()).equals(layout(c.after().orElseThrow())));
		gone.forEach(g -> changes.add(new SettingChange(Optional.of(g), Optional.empty())));
		return changes;
	}

	private static boolean renamed(Setting was, Setting is) {
		return was.meaning().equals(is.meaning()) && was.domain().equals(is.domain()) && was.requiredWhen().equals(is.requiredWhen());
	}

	private static String layout(ShopSettingText setting) {
		return setting.text().replace("\r", "").replaceAll("[ \t]+\n", "\n");
	}

	/** @return the setting as it is now, or as it was when it is gone */
	public ShopSettingText setting() {
		return after.or(() -> before).orElseThrow();
	}

	/** @return whether nothing but words changed, so that no job comes to anything else by it */
	public boolean wordsOnly() {
		return before.isPresent() && after.isPresent() && !renamed() && !aspects().contains(Aspect.VALUES) && !aspects().contains(Aspect.NEED);
	}

	private boolean renamed() {
		return !before.orElseThrow().setting().label().equals(after.orElseThrow().setting().label());
	}

	/** In what a setting may differ. */
	private enum Aspect {
		VALUES("values"), NEED("which jobs need it"), WORDS("meaning"), HEADING("group");

		private final String words;

		Aspect(String words) {
			this.words = words;
		}
	}

	private List<Aspect> aspects() {
		Setting was = before.orElseThrow().setting();
		Setting is = after.orElseThrow().setting();
		List<Aspect> aspects = new ArrayList<>();
		boolean values = !names(was.domain()).equals(names(is.domain()));
		if (values) {
			aspects.add(Aspect.VALUES);
		}
		if (!was.requiredWhen().equals(is.requiredWhen())) {
			aspects.add(Aspect.NEED);
		}
		if (!was.meaning().equals(is.meaning()) || !values && !was.domain().equals(is.domain())) {
			aspects.add(Aspect.WORDS);
		}
		if (!was.group().equals(is.group())) {
			aspects.add(Aspect.HEADING);
		}
		return aspects;
	}

	/** What may be set, whatever is said of what it means. */
	private static Object names(Domain domain) {
		return domain instanceof Domain.Choices choices ? choices.options().stream().map(Domain.Choices.Option::label).toList() : domain;
	}

	/** @return what became of it, for example {@code values and which jobs need it changed; renamed from pump run} */
	public String what() {
		if (before.isEmpty()) {
			return "added";
		} else if (after.isEmpty()) {
			return "removed";
		}
		String changed = String.join(" and ", aspects().stream().map(a -> a.words).toList());
		String renamed = renamed() ? "renamed from " + before.get().setting().label() : "";
		return changed.isEmpty() ? renamed.isEmpty() ? "wording changed" : renamed : changed + " changed" + (renamed.isEmpty() ? "" : "; " + renamed);
	}

	/** @return the setting and what became of it, in one line */
	public String shown() {
		return "setting " + setting().setting().label() + ": " + what();
	}
}
