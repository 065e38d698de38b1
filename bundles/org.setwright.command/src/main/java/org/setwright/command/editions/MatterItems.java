package org.setwright.command.editions;

import java.util.ArrayList;
import java.util.List;
import org.setwright.command.terminal.Style;
import org.setwright.editions.signing.Matter;
import org.setwright.editions.signing.Remark;

/** Remarks, one thing each. */
final class MatterItems {
	static final List<String> COLUMNS = List.of("matter", "open", "about", "edition", "on", "by", "stands", "text", "at");

	private MatterItems() {
	}

	static List<Item> of(List<Matter> matters) {
		List<Item> items = new ArrayList<>();
		for (Matter matter : matters) {
			for (Remark remark : matter.remarks()) {
				Item item = new Item().with("matter", matter.thread(), "open", matter.open() ? "yes" : "no", "about", remark.about().words(), "edition",
						remark.edition(),
						"on", remark.on().toString(), "by", remark.by().toString(), "stands", remark.stand().words(), "text", remark.text(), "at", remark.file());
				if (remark == matter.remarks().get(0)) {
					item.line(2, matter.open() ? Style.ATTENTION : Style.PLAIN, (matter.open() ? "OPEN" : "settled") + "  " + matter.thread() + ": about "
							+ matter.about().words());
				}
				item.line(6, Style.QUIET, remark.by().name() + ", " + remark.on().toLocalDate()
						+ (remark.stand() == Remark.Stand.SETTLED ? ", settled it:" : ":"));
				remark.text().lines().forEach(l -> item.line(8, Style.PLAIN, l));
				items.add(item);
			}
		}
		return items;
	}
}
