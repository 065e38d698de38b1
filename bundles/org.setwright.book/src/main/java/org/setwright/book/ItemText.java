package org.setwright.book;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.setwright.book.ItemList.Topic;
import org.setwright.trade.catalogue.CautionKind;
import org.setwright.trade.catalogue.Choice;
import org.setwright.trade.catalogue.StartUpPhase;

/** How the items of a list stand in a file: a head, and for most of them words after a colon. */
public final class ItemText {
	private static final String FINDING = "[a-z][a-z0-9 -]*";

	private ItemText() {
	}

	/** @return what an item of {@code topic} may begin with, with or without words after it; empty for a name that rules give */
	static List<String> heads(Topic topic) {
		List<String> heads = new ArrayList<>(switch (topic) {
			case CAUTIONS -> labels(CautionKind.values());
			case START_UP -> labels(StartUpPhase.values());
			case FINDINGS -> List.of();
		});
		heads.add(ExpectedItem.ANY);
		return heads;
	}

	private static List<String> labels(Choice[] choices) {
		return Arrays.stream(choices).map(Choice::label).toList();
	}

	/** @return what may stand only with words after it */
	static List<String> headsOfWords(Topic topic) {
		return topic == Topic.START_UP ? List.of(ExpectedCheck.BY) : List.of();
	}

	/** @param words empty for none @return the item that says so, or empty when it says nothing */
	static Optional<ExpectedItem> read(ItemList list, String head, String words, Position at) {
		String name = Keys.normal(head);
		boolean other = name.equals(ExpectedItem.ANY_OTHER);
		if (other && (list.appears() || !words.isEmpty())) {
			return Optional.empty();
		} else if (list.topic() == Topic.FINDINGS) {
			String label = ExpectedFinding.label(head);
			return !words.isEmpty() || !label.matches(FINDING) ? Optional.empty()
					: Optional.of(new ExpectedFinding(list.appears(), other ? ExpectedItem.ANY : label, other, at));
		} else if (!other && !heads(list.topic()).contains(name) && (words.isEmpty() || !headsOfWords(list.topic()).contains(name))) {
			return Optional.empty();
		} else if (list.topic() == Topic.CAUTIONS) {
			return Optional.of(new ExpectedCaution(list.appears(), labelled(CautionKind.values(), name), words, other, at));
		}
		return Optional.of(new ExpectedCheck(list, labelled(StartUpPhase.values(), name), words, name.equals(ExpectedCheck.BY), other, at));
	}

	private static <C extends Choice> Optional<C> labelled(C[] choices, String label) {
		return Arrays.stream(choices).filter(c -> c.label().equals(label)).findFirst();
	}

	/** @param line an item alone on its line @return what it says, or empty when it says nothing */
	public static Optional<ExpectedItem> read(ItemList list, String line, Position at) {
		int colon = line.indexOf(':');
		return colon < 0 ? read(list, line, "", at) : read(list, line.substring(0, colon), line.substring(colon + 1).strip(), at);
	}

	/** @return why {@code head} begins no item of {@code list} */
	public static Misfit misfit(ItemList list, String head) {
		List<String> heads = new ArrayList<>(heads(list.topic()));
		heads.addAll(headsOfWords(list.topic()));
		String near = Nearest.to(Keys.normal(head), heads).map(n -> "Write \"" + n + "\".").orElse("Write one of: " + String.join(", ", heads) + ".");
		return switch (list.topic()) {
			case CAUTIONS -> new Misfit("There is no kind of caution " + Misfit.quoted(head) + ".", near);
			case START_UP -> Keys.normal(head).equals(ExpectedCheck.BY)
					? new Misfit("The name of the rule that asks for the check is missing.", "Write \"by: <name of the rule>\".")
					: new Misfit("There is no part of a start-up " + Misfit.quoted(head) + ".", near);
			case FINDINGS -> new Misfit(Misfit.quoted(head) + " is no name of a finding.", "Write the name as in the rule that finds it, or in small letters.");
		};
	}
}
