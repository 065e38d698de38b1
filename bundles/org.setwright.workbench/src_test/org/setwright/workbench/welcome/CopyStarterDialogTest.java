package org.setwright.workbench.welcome;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CopyStarterDialogTest {
	@TempDir
	private Path place;

	@Test
	void aNewFolderInAnExistingPlaceIsFine() {
		assertEquals(Optional.empty(), CopyStarterDialog.wrong(place.toString(), "our-rules"));
	}

	@Test
	void whatExistsIsNotOverwritten() throws IOException {
		Files.createDirectory(place.resolve("our-rules"));
		assertTrue(CopyStarterDialog.wrong(place.toString(), "our-rules").orElseThrow().contains("exists already"));
	}

	@Test
	void aPlaceThatIsNotThereIsRefused() {
		assertTrue(CopyStarterDialog.wrong(place.resolve("nowhere").toString(), "our-rules").isPresent());
		assertTrue(CopyStarterDialog.wrong("", "our-rules").isPresent());
	}

	@Test
	void aNameThatLeadsElsewhereIsRefused() {
		for (String name : new String[] { "", " ", "a/b", "..", "/" }) {
			assertTrue(CopyStarterDialog.wrong(place.toString(), name).isPresent(), name);
		}
	}
}
