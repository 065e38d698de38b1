package org.setwright.editions;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.setwright.editions.kept.Kept;
import org.setwright.editions.kept.NotDone;
import org.setwright.editions.kept.Who;
import org.setwright.trade.Trade;

/** A shop with a book in a folder, and command-line Git to compare with. */
public final class Shop implements AutoCloseable {
	/** Writes most. */
	public static final Who TRINE = new Who("Trine Aasen", "trine@fennimore.example");
	/** Writes the rest. */
	public static final Who ODD = new Who("Odd Bakke", "odd@fennimore.example");
	/** Reviews and signs. */
	public static final Who MARIT = new Who("Marit Cole", "marit@fennimore.example");

	private final Path folder;
	private final EditionsOf editions;

	private Shop(Path folder, EditionsOf editions) {
		this.folder = folder;
		this.editions = editions;
	}

	/** A book in a repository of its own, with nothing kept yet. */
	public static Shop in(Path folder) throws IOException, NotDone {
		write(folder, "book.yaml", "book: Fennimore practice\nformat: 1\n");
		return started(folder);
	}

	/** A book that is there already. */
	public static Shop started(Path folder) throws IOException, NotDone {
		Shop shop = new Shop(folder, EditionsOf.start(folder, Trade.catalogue(), List.of()));
		shop.git("config", "user.name", TRINE.name());
		shop.git("config", "user.email", TRINE.email());
		shop.git("config", "commit.gpgSign", "false");
		return shop;
	}

	public Path folder() {
		return folder;
	}

	public EditionsOf editions() {
		return editions;
	}

	public Shop write(String path, String text) throws IOException {
		write(folder, path, text);
		return this;
	}

	static void write(Path folder, String path, String text) throws IOException {
		Files.createDirectories(folder.resolve(path).getParent());
		Files.writeString(folder.resolve(path), text);
	}

	public String read(String path) throws IOException {
		return Files.readString(folder.resolve(path));
	}

	public Shop delete(String path) throws IOException {
		Files.delete(folder.resolve(path));
		return this;
	}

	public Kept keep(String message, Who by) throws NotDone {
		return editions.keep(editions.work(), message, Optional.of(by));
	}

	public Kept keep(String message) throws NotDone {
		return keep(message, TRINE);
	}

	/** Runs command-line Git in the book's folder; it must succeed. @return what it says */
	public String git(String... words) throws IOException {
		return run(folder, Map.of(), words("git", words));
	}

	static List<String> words(String first, String... more) {
		List<String> all = new ArrayList<>(List.of(first));
		all.addAll(List.of(more));
		return all;
	}

	static String run(Path folder, Map<String, String> environment, List<String> words) throws IOException {
		ProcessBuilder builder = new ProcessBuilder(words).directory(folder.toFile()).redirectErrorStream(true);
		builder.environment().keySet().removeIf(k -> k.startsWith("GIT_"));
		builder.environment().putAll(environment);
		builder.redirectInput(new File("/dev/null"));
		Process process = builder.start();
		String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
		try {
			if (process.waitFor() != 0) {
				throw new IOException(words + ": " + said);
			}
		} catch (InterruptedException e) {
			Thread.currentThread().interrupt();
		}
		return said.strip();
	}

	/** A rule with everything filled in. */
	public static String rule(String name, String authority, String when, String then) {
		return "rule \"" + name + "\"\n    @authority( \"" + authority + "\" )\n    @because( \"It has always been so: " + name + ".\" )\n"
				+ "    @source( common practice )\nwhen\n    " + when + "\nthen\n    " + then + "\nend\n";
	}

	/** A job with an outdoor unit of so many stages. */
	public static String job(String name, int stages) {
		return "job: " + name + "\noutdoor unit: { kind: air-source heat pump, maker: Norrvik, stages: " + stages
				+ ", valve energised in: unknown }\nindoor unit: { kind: air handler, fuel: none }\nauxiliary heat: none\n";
	}

	@Override
	public void close() {
		editions.close();
	}
}
