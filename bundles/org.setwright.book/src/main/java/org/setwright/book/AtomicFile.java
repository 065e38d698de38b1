package org.setwright.book;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFilePermissions;

/**
 * Writes a whole file so that, whatever happens, the file holds either its old text or the new one: the text goes to a
 * temporary file beside it, is forced to the disk, and only then takes the file's name.
 */
public final class AtomicFile {
	private static final String NEW_FILE = "rw-r--r--";

	private AtomicFile() {
	}

	/** What writing does to the disk; tests let it fail. */
	interface Disk {
		/** Writes some bytes of {@code bytes} to {@code file}. */
		default void write(FileChannel file, ByteBuffer bytes) throws IOException {
			file.write(bytes);
		}

		/** Makes sure that what was written to {@code file} is on the disk. */
		default void force(FileChannel file) throws IOException {
			file.force(true);
		}

		/** Gives {@code from} the name {@code to}, replacing what has it. */
		default void rename(Path from, Path to) throws IOException {
			try {
				Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
			} catch (AtomicMoveNotSupportedException otherDisk) {
				throw new IOException("The disk cannot replace a file in one step.", otherDisk);
			}
		}
	}

	/**
	 * Keeps the permissions of a file that is there. A link stays a link: what it leads to is written. Folders are not
	 * made.
	 *
	 * @param file to make or replace
	 * @param text written as UTF-8
	 * @throws IOException when it cannot be written; the file is then as it was, and nothing is left beside it
	 */
	public static void write(Path file, String text) throws IOException {
		write(file, text, new Disk() {
		});
	}

	static void write(Path file, String text, Disk disk) throws IOException {
		ByteBuffer bytes = encoded(text);
		Path target = Files.exists(file) ? file.toRealPath() : file.toAbsolutePath();
		Path beside = Files.createTempFile(target.getParent(), "." + target.getFileName() + "-", ".part");
		try {
			try (FileChannel channel = FileChannel.open(beside, StandardOpenOption.WRITE)) {
				while (bytes.hasRemaining()) {
					disk.write(channel, bytes);
				}
				disk.force(channel);
			}
			copyPermissions(target, beside);
			disk.rename(beside, target);
		} catch (IOException | RuntimeException | Error failed) {
			Files.deleteIfExists(beside);
			throw failed;
		}
		forceFolder(target.getParent());
	}

	private static ByteBuffer encoded(String text) throws IOException {
		try {
			return StandardCharsets.UTF_8.newEncoder().encode(CharBuffer.wrap(text));
		} catch (CharacterCodingException halfACharacter) {
			throw new IOException("The text holds half of a character, which cannot be written.", halfACharacter);
		}
	}

	private static void copyPermissions(Path from, Path to) throws IOException {
		PosixFileAttributeView view = Files.getFileAttributeView(to, PosixFileAttributeView.class);
		if (view != null) {
			view.setPermissions(Files.exists(from) ? Files.getPosixFilePermissions(from) : PosixFilePermissions.fromString(NEW_FILE));
		}
	}

	/** Makes the new name last through a power cut; not every system can, and the file is sound either way. */
	private static void forceFolder(Path folder) {
		try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
			channel.force(true);
		} catch (IOException notOnThisSystem) {
			System.getLogger(AtomicFile.class.getName()).log(System.Logger.Level.DEBUG, "folder not forced to disk", notOnThisSystem);
		}
	}
}
