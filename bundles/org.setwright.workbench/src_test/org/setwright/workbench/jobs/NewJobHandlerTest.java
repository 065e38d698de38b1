package org.setwright.workbench.jobs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.setwright.workbench.desk.TestBook;

class NewJobHandlerTest {
	@TempDir
	private Path folder;

	@Test
	void theFileIsNamedAfterTheJob() {
		assertEquals("jobs/larch-lane-14-upstairs.yaml", NewJobHandler.file(folder, "Larch Lane 14, upstairs"));
		assertEquals("jobs/rue-de-l-école-3.yaml", NewJobHandler.file(folder, "Rue de l'École 3"));
		assertEquals("jobs/job.yaml", NewJobHandler.file(folder, "../"));
		assertTrue(NewJobHandler.file(folder, "x".repeat(300)).length() < 80);
	}

	@Test
	void anExistingFileIsNotTaken() throws IOException {
		Files.createDirectory(folder.resolve("jobs"));
		Files.createFile(folder.resolve("jobs/mill-road-3.yaml"));
		assertEquals("jobs/mill-road-3-2.yaml", NewJobHandler.file(folder, "Mill Road 3"));
	}

	@Test
	void aNameIsTakenOnce() {
		assertNull(NewJobHandler.wrong(TestBook.saved().book(), "Mill Road 4"));
		assertTrue(NewJobHandler.wrong(TestBook.saved().book(), "mill road 3 ").contains("already"));
		assertTrue(NewJobHandler.wrong(TestBook.saved().book(), " ").contains("name"));
	}
}
