package org.setwright.command.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.atomic.AtomicBoolean;
import org.jline.reader.EndOfFileException;
import org.jline.reader.LineReader;
import org.jline.reader.LineReader.Option;
import org.jline.reader.LineReaderBuilder;
import org.jline.reader.UserInterruptException;
import org.jline.reader.impl.history.DefaultHistory;
import org.jline.terminal.Terminal;
import org.jline.terminal.TerminalBuilder;
import org.jline.terminal.Terminal.Signal;
import org.jline.terminal.Terminal.SignalHandler;
import org.setwright.bench.asking.Listing;
import org.setwright.command.answer.ExitCode;
import org.setwright.command.terminal.Page;
import org.setwright.command.terminal.Style;
import org.setwright.command.terminal.Surroundings;

/** Somebody types at the bench: lines are edited, completed and remembered. */
final class AtTerminal {
	private static final int MOST_REMEMBERED = 2000;
	private static final String HINT = "Type \"words\" to see what can be said, the tab key to complete, \"leave\" to leave.";
	private final Surroundings at;
	private final Talk talk;
	private final AtomicBoolean ended = new AtomicBoolean();

	AtTerminal(Surroundings at, Talk talk) {
		this.at = at;
		this.talk = talk;
	}

	/** Goes on until somebody leaves. @return the exit code */
	int begin() throws IOException {
		try (Terminal terminal = TerminalBuilder.builder().name("bench").system(true).build()) {
			LineReader reader = reader(terminal);
			Page greeting = page(terminal);
			new BenchText(greeting).rows(new Listing(talk.session().hand()).job());
			show(terminal, greeting.line(BenchText.SAY.length(), Style.QUIET, HINT));
			while (!talk.over()) {
				try {
					say(terminal, reader.readLine(BenchText.SAY));
				} catch (UserInterruptException thrownAway) {
					show(terminal, page(terminal).line(BenchText.SAY.length(), Style.QUIET, "That line is thrown away. Type \"leave\" to leave."));
				} catch (EndOfFileException leaving) {
					break;
				}
			}
		}
		return ExitCode.FINE;
	}

	private LineReader reader(Terminal terminal) {
		LineWords words = new LineWords(() -> talk.session().hand());
		LineReader reader = LineReaderBuilder.builder().terminal(terminal).appName("bench").parser(words).completer(words).history(new DefaultHistory())
				.variable(LineReader.SECONDARY_PROMPT_PATTERN, BenchText.MORE)
				.variable(LineReader.INDENTATION, 0)
				.variable(LineReader.HISTORY_SIZE, MOST_REMEMBERED)
				.option(Option.DISABLE_EVENT_EXPANSION, true)
				.option(Option.CASE_INSENSITIVE, true)
				.option(Option.AUTO_MENU_LIST, true)
				.option(Option.AUTO_FRESH_LINE, true)
				.option(Option.HISTORY_TIMESTAMPED, false)
				.build();
		if (remembers()) {
			reader.setVariable(LineReader.HISTORY_FILE, at.keyboard().history());
		}
		return reader;
	}

	/** Where lines cannot be kept, they are remembered while the bench is open. */
	private boolean remembers() {
		Path file = at.keyboard().history();
		try {
			Files.createDirectories(file.toAbsolutePath().getParent());
			return !Files.exists(file) || Files.isReadable(file) && Files.isWritable(file);
		} catch (IOException | SecurityException unwritable) {
			return false;
		}
	}

	private void say(Terminal terminal, String line) {
		ended.set(false);
		SignalHandler before = terminal.handle(Signal.INT, signal -> ended.set(true));
		List<Exchange> told;
		try {
			told = talk.say(line, changes -> !ended.get());
		} finally {
			terminal.handle(Signal.INT, before);
		}
		Page page = page(terminal);
		BenchText text = new BenchText(page);
		for (Exchange exchange : told) {
			if (told.size() > 1 && exchange != told.get(0)) {
				text.line(exchange.line());
			}
			text.answer(exchange);
		}
		show(terminal, page);
	}

	private Page page(Terminal terminal) {
		return new Page(terminal.getWidth() > 0 ? at.wide(terminal.getWidth()) : at);
	}

	private static void show(Terminal terminal, Page page) {
		terminal.writer().print(page);
		terminal.writer().flush();
	}
}
