package org.setwright.command.terminal;

import java.io.File;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.setwright.trade.Trade;
import org.setwright.trade.catalogue.Catalogue;

/**
 * Where the program runs: everything it takes from outside its words. Tests pass their own.
 *
 * @param out answers go here, in UTF-8; text keeps to ASCII by itself where it must
 * @param err refusals and failures go here
 * @param catalogue the facts and settings there are
 * @param folder the current folder, absolute
 * @param starter the starter rule book; need not exist
 * @param log where an unexpected failure is written down
 * @param name how the program was called, for hints on what to type next
 * @param columns how many characters fit on a line, from 60 to 120
 * @param colour whether colour may be used
 * @param accents whether the terminal can show more than plain ASCII
 * @param ceilings folders at which to stop looking for the repository a book lives in; usually none
 * @param watched whether somebody reads {@code err} on a terminal, so that progress is worth showing
 * @param keyboard what is typed while the program runs
 */
public record Surroundings(OutputStream out, PrintStream err, Catalogue catalogue, Path folder, Path starter, Path log,
		String name, int columns, boolean colour, boolean accents, List<Path> ceilings, boolean watched, Keyboard keyboard) {
	private static final int USUAL_COLUMNS = 80;
	private static final int FEWEST_COLUMNS = 60;
	private static final int MOST_COLUMNS = 120;

	public Surroundings {
		ceilings = List.copyOf(ceilings);
		columns = Math.max(FEWEST_COLUMNS, Math.min(columns, MOST_COLUMNS));
	}

	/** The same where a repository is looked for in the folder itself alone, and nothing is typed. */
	public Surroundings(OutputStream out, PrintStream err, Catalogue catalogue, Path folder, Path starter, Path log, String name, int columns,
			boolean colour, boolean accents, boolean watched) {
		this(out, err, catalogue, folder, starter, log, name, columns, colour, accents, List.of(folder), watched, Keyboard.NONE);
	}

	/** The same where nobody watches, and where a repository is looked for in the folder itself alone. */
	public Surroundings(OutputStream out, PrintStream err, Catalogue catalogue, Path folder, Path starter, Path log, String name, int columns,
			boolean colour, boolean accents) {
		this(out, err, catalogue, folder, starter, log, name, columns, colour, accents, false);
	}

	/** @return the same where {@code typed} is what is typed */
	public Surroundings with(Keyboard typed) {
		return new Surroundings(out, err, catalogue, folder, starter, log, name, columns, colour, accents, ceilings, watched, typed);
	}

	/** @return the same on a terminal of another width */
	public Surroundings wide(int other) {
		return new Surroundings(out, err, catalogue, folder, starter, log, name, other, colour, accents, ceilings, watched, keyboard);
	}

	/**
	 * Looks around this process. The entry script tells what Java cannot see by system properties: setwright.name,
	 * setwright.starter, setwright.log, setwright.terminal (yes or no), setwright.typing (yes or no), setwright.columns, setwright.accents (yes or no), setwright.watched (yes or no).
	 */
	public static Surroundings ofProcess() {
		Map<String, String> environment = System.getenv();
		boolean terminal = said("setwright.terminal", System.console() != null);
		return new Surroundings(new FileOutputStream(FileDescriptor.out), new PrintStream(System.err, true, StandardCharsets.UTF_8), Trade.catalogue(), Path.of("").toAbsolutePath(),
				Path.of(System.getProperty("setwright.starter", "rules/starter")).toAbsolutePath(),
				Path.of(System.getProperty("setwright.log", System.getProperty("java.io.tmpdir") + "/setwright.log")),
				System.getProperty("setwright.name", "setwright"), columns(environment), terminal && wantsColour(environment),
				said("setwright.accents", utf8Locale()), ceilings(environment), said("setwright.watched", terminal), Keyboard.ofProcess(environment));
	}

	static boolean said(String property, boolean otherwise) {
		String said = System.getProperty(property);
		return said == null ? otherwise : said.equals("yes");
	}

	private static boolean wantsColour(Map<String, String> environment) {
		return environment.getOrDefault("NO_COLOR", "").isEmpty() && !"dumb".equals(environment.get("TERM"));
	}

	private static int columns(Map<String, String> environment) {
		String stated = System.getProperty("setwright.columns", environment.getOrDefault("COLUMNS", ""));
		return stated.matches("[1-9]\\d{0,4}") ? Integer.parseInt(stated) : USUAL_COLUMNS;
	}

	private static List<Path> ceilings(Map<String, String> environment) {
		return Arrays.stream(environment.getOrDefault("GIT_CEILING_DIRECTORIES", "").split(File.pathSeparator)).filter(f -> !f.isBlank()).map(Path::of).toList();
	}

	private static boolean utf8Locale() {
		return Charset.isSupported(System.getProperty("native.encoding", "US-ASCII"))
				&& Charset.forName(System.getProperty("native.encoding", "US-ASCII")).equals(StandardCharsets.UTF_8);
	}
}
