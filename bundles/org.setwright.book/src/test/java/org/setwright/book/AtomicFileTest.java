package org.setwright.book;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AtomicFileTest {
	@TempDir
	Path folder;
	private Path file;

	@BeforeEach
	void aFile() throws IOException {
		file = folder.resolve("larch.yaml");
		Files.writeString(file, "job: old\n");
	}

	@Test
	void replacesTheTextAndLeavesNothingBeside() throws IOException {
		AtomicFile.write(file, "job: new, 35 °F\n");
		assertEquals("job: new, 35 °F\n", Files.readString(file));
		assertEquals(List.of("larch.yaml"), names());
	}

	@Test
	void makesAFileThatWasNotThere() throws IOException {
		AtomicFile.write(folder.resolve("new.yaml"), "job: B\n");
		assertEquals("job: B\n", Files.readString(folder.resolve("new.yaml")));
	}

	@Test
	void keepsThePermissions() throws IOException {
		assumeTrue(FileSystems.getDefault().supportedFileAttributeViews().contains("posix"), "only where files have them");
		Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-rw-r-x"));
		AtomicFile.write(file, "job: new\n");
		assertEquals("rw-rw-r-x", PosixFilePermissions.toString(Files.getPosixFilePermissions(file)));
	}

	@Test
	void aLinkStaysALink() throws IOException {
		Path link = Files.createSymbolicLink(folder.resolve("link.yaml"), file);
		AtomicFile.write(link, "job: new\n");
		assertTrue(Files.isSymbolicLink(link));
		assertEquals("job: new\n", Files.readString(file));
	}

	@Test
	void aDiskThatFillsUpLeavesTheOldText() throws IOException {
		assertOldTextAfter(new AtomicFile.Disk() {
			@Override
			public void write(FileChannel channel, ByteBuffer bytes) throws IOException {
				bytes.limit(bytes.position() + 3);
				channel.write(bytes);
				throw new IOException("No space left");
			}
		});
	}

	@Test
	void aDiskThatDoesNotFlushLeavesTheOldText() throws IOException {
		assertOldTextAfter(new AtomicFile.Disk() {
			@Override
			public void force(FileChannel channel) throws IOException {
				throw new IOException("Input/output error");
			}
		});
	}

	@Test
	void aFailedRenameLeavesTheOldText() throws IOException {
		assertOldTextAfter(new AtomicFile.Disk() {
			@Override
			public void rename(Path from, Path to) throws IOException {
				throw new IOException("Permission denied");
			}
		});
	}

	@Test
	void aBugWhileWritingLeavesTheOldText() throws IOException {
		AtomicFile.Disk disk = new AtomicFile.Disk() {
			@Override
			public void write(FileChannel channel, ByteBuffer bytes) {
				throw new IllegalStateException("bug");
			}
		};
		assertThrows(IllegalStateException.class, () -> AtomicFile.write(file, "job: new\n", disk));
		assertOldText();
	}

	@Test
	void theFileNeverShowsHalfOfTheText() throws IOException {
		AtomicFile.write(file, "job: new\n", new AtomicFile.Disk() {
			@Override
			public void write(FileChannel channel, ByteBuffer bytes) throws IOException {
				int end = bytes.limit();
				bytes.limit(bytes.position() + 1);
				channel.write(bytes);
				bytes.limit(end);
				assertEquals("job: old\n", Files.readString(file));
			}
		});
		assertEquals("job: new\n", Files.readString(file));
	}

	@Test
	void aFolderOfThatNameIsNotReplaced() throws IOException {
		Path other = Files.createDirectories(folder.resolve("alder.yaml/inside")).getParent();
		assertThrows(IOException.class, () -> AtomicFile.write(other, "job: A\n"));
		assertTrue(Files.isDirectory(other.resolve("inside")));
		assertEquals(List.of("alder.yaml", "larch.yaml"), names());
	}

	@Test
	void halfACharacterIsRefusedRatherThanReplaced() throws IOException {
		assertThrows(IOException.class, () -> AtomicFile.write(file, "job: \uD835\n"));
		assertOldText();
	}

	@Test
	void aMissingFolderIsNotMade() {
		assertThrows(IOException.class, () -> AtomicFile.write(folder.resolve("nowhere/x.yaml"), "job: A\n"));
	}

	private void assertOldTextAfter(AtomicFile.Disk disk) throws IOException {
		assertThrows(IOException.class, () -> AtomicFile.write(file, "job: new\n", disk));
		assertOldText();
	}

	private void assertOldText() throws IOException {
		assertEquals("job: old\n", Files.readString(file));
		assertEquals(List.of("larch.yaml"), names());
	}

	private List<String> names() throws IOException {
		try (var files = Files.list(folder)) {
			return files.map(f -> f.getFileName().toString()).sorted().toList();
		}
	}
}
