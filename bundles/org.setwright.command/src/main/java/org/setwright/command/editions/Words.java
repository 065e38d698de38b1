package org.setwright.command.editions;

import java.util.List;
import org.setwright.command.opening.Named;
import org.setwright.editions.EditionsOf;
import org.setwright.editions.kept.Kept;
import org.setwright.editions.kept.NotDone;
import org.setwright.editions.reading.BookAt;
import org.setwright.editions.written.WrittenRule;

/** How editions and rules are named at the prompt and on the page. */
final class Words {
	static final String WORK = "work";
	static final List<String> EDITION = List.of("edition", "on", "by", "title", "reason");

	private Words() {
	}

	/** @return a thing with the fields {@link #EDITION} */
	static Item item(Kept kept) {
		return new Item().with("edition", kept.id().hash(), "on", kept.on().toString(), "by", kept.by().toString(), "title", kept.title(), "reason",
				kept.reason());
	}

	/** @param name of an edition, or "work" for what lies in the folder */
	static BookAt book(EditionsOf editions, String name) throws NotDone {
		return name.equals(WORK) ? editions.inHand() : editions.at(editions.edition(name));
	}

	/** @return the rule or row that {@code wanted} names, in whole or in part */
	static WrittenRule rule(BookAt book, String wanted) {
		return Named.one("rule", wanted, book.rules(), WrittenRule::name);
	}
}
