package org.setwright.book.history;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.IntConsumer;
import org.setwright.book.AtomicFile;
import org.setwright.book.history.HistoryResult.Watcher;

/**
 * A folder beside the one that job files are for, in which they wait until all of them are there. Once all are on the disk, a
 * note says where they belong; from then on they are moved there, and whoever comes after a crash finishes that. Without the
 * note nothing has been moved, and whoever comes after a crash throws the folder away. As long as somebody works on it, a lock
 * keeps others out.
 */
final class Staging implements AutoCloseable {
	/** How its name begins. */
	static final String PREFIX = ".importing-";
	private static final String LOCK = "lock";
	private static final String NOTE = "ready";
	private static final String FILES = "files";
	private final Path folder;
	private final FileChannel channel;
	private final Disk disk;

	/** What moving does to the disk; tests let it fail. */
	interface Disk {
		/** The disk as it is. */
		Disk REAL = new Disk() {
		};

		/** Gives {@code from} the name {@code to}, which nothing has. */
		default void move(Path from, Path to) throws IOException {
			Files.move(from, to);
		}
	}

	private Staging(Path folder, FileChannel channel, Disk disk) {
		this.folder = folder;
		this.channel = channel;
		this.disk = disk;
	}

	/** @param jobs the folder the files are for; it need not exist */
	static Staging beside(Path jobs, Disk disk) throws IOException {
		Path parent = jobs.toAbsolutePath().getParent();
		Files.createDirectories(parent);
		Path folder = Files.createDirectory(parent.resolve(PREFIX + UUID.randomUUID()));
		Files.createDirectory(folder.resolve(FILES));
		return locked(folder, disk).orElseThrow(() -> new IOException("the folder " + folder + " is in use"));
	}

	/** @return the folder left behind by somebody else; empty when somebody is working on it, or it is no such folder */
	static Optional<Staging> left(Path folder) throws IOException {
		return Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS) && Files.isRegularFile(folder.resolve(LOCK), LinkOption.NOFOLLOW_LINKS)
				? locked(folder, Disk.REAL) : Optional.empty();
	}

	private static Optional<Staging> locked(Path folder, Disk disk) throws IOException {
		FileChannel channel = FileChannel.open(folder.resolve(LOCK), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
		try {
			FileLock lock = channel.tryLock();
			if (lock != null) {
				return Optional.of(new Staging(folder, channel, disk));
			}
		} catch (OverlappingFileLockException somebodyElseInThisProgram) {
			// the same as being held by another program
		}
		channel.close();
		return Optional.empty();
	}

	/** @return where the files wait */
	Path files() {
		return folder.resolve(FILES);
	}

	/**
	 * Moves all files to {@code jobs}. When one cannot be moved, those before it are moved back.
	 *
	 * @throws IOException when they could not be moved; if not even back, they will be finished by {@link UnfinishedImports}
	 */
	void place(Path jobs, Watcher watcher) throws IOException {
		List<Path> names = names();
		int all = 2 * names.size();
		for (int i = 0; i < names.size(); i++) {
			force(files().resolve(names.get(i)));
			watcher.placing(i + 1, all);
		}
		AtomicFile.write(folder.resolve(NOTE), jobs.getFileName().toString());
		move(jobs, names, done -> watcher.placing(names.size() + done, all));
		discard();
	}

	/** Finishes what was begun, or throws it away. @return whether files were put in their place */
	boolean finish() throws IOException {
		Path note = folder.resolve(NOTE);
		if (!Files.isRegularFile(note, LinkOption.NOFOLLOW_LINKS)) {
			discard();
			return false;
		}
		Path jobs = Path.of(Files.readString(note));
		if (jobs.isAbsolute() || jobs.getNameCount() != 1 || jobs.toString().isEmpty() || jobs.toString().startsWith(".")) {
			throw new IOException("the note in " + folder + " names no folder beside it");
		}
		Path target = folder.resolveSibling(jobs);
		Files.createDirectories(target);
		for (Path name : names()) {
			disk.move(files().resolve(name), target.resolve(JobFileName.free(name.toString(), target)));
		}
		discard();
		return true;
	}

	/**
	 * In one step when there is no folder yet. Else file by file; should one not move, those moved before it move back, and only
	 * when that has been done is the note taken away.
	 */
	private void move(Path jobs, List<Path> names, IntConsumer moved) throws IOException {
		if (!Files.exists(jobs, LinkOption.NOFOLLOW_LINKS)) {
			Files.move(files(), jobs, StandardCopyOption.ATOMIC_MOVE);
			moved.accept(names.size());
			return;
		}
		int done = 0;
		try {
			for (Path name : names) {
				disk.move(files().resolve(name), jobs.resolve(name));
				moved.accept(++done);
			}
		} catch (IOException stuck) {
			for (Path name : names.subList(0, done)) {
				disk.move(jobs.resolve(name), files().resolve(name));
			}
			Files.delete(folder.resolve(NOTE));
			throw stuck;
		}
	}

	private List<Path> names() throws IOException {
		List<Path> names = new ArrayList<>();
		if (Files.isDirectory(files(), LinkOption.NOFOLLOW_LINKS)) {
			try (DirectoryStream<Path> files = Files.newDirectoryStream(files())) {
				files.forEach(f -> names.add(f.getFileName()));
			}
		}
		names.sort(null);
		return names;
	}

	private static void force(Path file) throws IOException {
		try (FileChannel written = FileChannel.open(file, StandardOpenOption.WRITE)) {
			written.force(true);
		}
	}

	/** Throws away what is waiting. */
	void discard() throws IOException {
		for (Path name : names()) {
			Files.delete(files().resolve(name));
		}
		Files.deleteIfExists(files());
		Files.deleteIfExists(folder.resolve(NOTE));
		close();
		Files.deleteIfExists(folder.resolve(LOCK));
		Files.delete(folder);
	}

	/** @return whether files may have been moved, so that it has to be finished */
	boolean onItsWay() {
		return Files.exists(folder.resolve(NOTE));
	}

	/** Throws away what is waiting, unless that has been done. */
	void discardIfThere() throws IOException {
		if (Files.exists(folder)) {
			discard();
		}
	}

	/** Lets others at it. */
	@Override
	public void close() throws IOException {
		channel.close();
	}
}
