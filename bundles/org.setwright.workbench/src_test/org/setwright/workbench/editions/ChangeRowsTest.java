package org.setwright.workbench.editions;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.setwright.book.ShopSettingText;
import org.setwright.editions.compare.BookChanges;
import org.setwright.editions.compare.SettingChange;
import org.setwright.editions.kept.NotDone;
import org.setwright.editions.reading.BookAt;
import org.setwright.trade.Trade;
import org.setwright.workbench.look.Icon;
import org.setwright.workbench.rows.Row;

class ChangeRowsTest {
	private static final String PUMP = "settings:\n  - { setting: pump exercise, meaning: Turns it., values: [off, daily] }\n";

	private static Optional<ShopSettingText> setting(String text) {
		return Optional.of(ShopSettingText.all(text, Trade.catalogue()).orElseThrow().get(0));
	}

	private static List<Row> rows(SettingChange... changes) throws NotDone {
		return ChangeRows.of(new BookChanges(BookAt.NOTHING, BookAt.NOTHING, List.of(), List.of(changes), List.of(), List.of()), List.of());
	}

	@Test
	void settingsOfTheShopsOwnStandBelowAHeadingOfTheirOwn() throws NotDone {
		SettingChange added = new SettingChange(Optional.empty(), setting(PUMP));
		SettingChange changed = new SettingChange(setting(PUMP), setting(PUMP.replace("daily", "weekly")));
		SettingChange reworded = new SettingChange(setting(PUMP), setting(PUMP.replace("it.", "the pump.")));
		Row heading = rows(added, changed, reworded).get(0);
		assertEquals("Settings of the shop's own (3)", heading.cells().get(0));
		assertEquals(List.of(List.of("pump exercise", "added", "settings.yaml"), List.of("pump exercise", "values changed", "settings.yaml"),
				List.of("pump exercise", "meaning changed", "settings.yaml")), heading.below().stream().map(Row::cells).toList());
		assertEquals(List.of(Icon.ADD, Icon.WRITE, Icon.NOTE), heading.below().stream().map(Row::sign).toList());
	}

	@Test
	void withoutAnyThereIsNoHeading() throws NotDone {
		assertEquals(List.of(), rows());
	}
}
