package org.setwright.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.setwright.workbench.theme.Ground;

@ExtendWith(NothingLogged.class)
class WindowOpensTest {
	@Test
	void onTheWritePerspective() {
		assertNotNull(Display.getCurrent(), "these tests run in the window's own thread");
		assertEquals("org.setwright.workbench.write", Bench.page().getPerspective().getId());
	}

	@Test
	void theWelcomePageOffersTheStarterBookAndAnExistingOne() {
		var intro = PlatformUI.getWorkbench().getIntroManager();
		intro.showIntro(Bench.window(), false);
		Waiting.settle();
		assertEquals(1, Bench.all(Button.class, b -> b.getText().equals("Begin with the starter book")).size());
		assertEquals(1, Bench.all(Button.class, b -> b.getText().equals("Open a rule book\u2026")).size());
		assertTrue(intro.closeIntro(intro.getIntro()));
	}

	@Test
	void everyPerspectiveOpens() throws Exception {
		for (String id : new String[] { "review", "verify", "write" }) {
			PlatformUI.getWorkbench().showPerspective("org.setwright.workbench." + id, Bench.window());
			Waiting.settle();
			assertEquals("org.setwright.workbench." + id, Bench.page().getPerspective().getId());
			for (var view : Bench.page().getViewReferences()) {
				assertNotNull(view.getView(true), view.getId());
			}
		}
	}

	@Test
	void darkAndLightAreOneCommandApart() throws Exception {
		Bench.command("org.setwright.workbench.dark");
		Waiting.until(() -> Ground.chosen() == Ground.DARK, "dark colours");
		Bench.command("org.setwright.workbench.dark");
		Waiting.until(() -> Ground.chosen() == Ground.LIGHT, "light colours");
	}
}
