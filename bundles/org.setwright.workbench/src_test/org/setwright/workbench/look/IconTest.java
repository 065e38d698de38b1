package org.setwright.workbench.look;

import static org.junit.jupiter.api.Assertions.assertNotNull;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.setwright.trade.catalogue.CautionKind;
import org.setwright.workbench.contents.BookNode;
import org.setwright.workbench.jobs.JobRow.Standing;
import org.setwright.workbench.reasons.ReasonNode;
import org.setwright.workbench.setup.SettingRow.Mark;

class IconTest {
	@ParameterizedTest
	@EnumSource
	void everySignHasItsDrawing(Icon icon) {
		assertNotNull(icon.drawing(), icon.name());
	}

	@Test
	void everythingThatNeedsASignHasOne() {
		for (Enum<?>[] choices : new Enum<?>[][] { CautionKind.values(), Standing.values(), Mark.values(), ReasonNode.Sign.values(),
				BookNode.Sign.values() }) {
			for (Enum<?> choice : choices) {
				assertNotNull(Icon.of(choice));
			}
		}
	}
}
