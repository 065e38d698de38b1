package org.setwright.command.bench;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.setwright.bench.Script;
import org.setwright.bench.Session;
import org.setwright.bench.Turn;
import org.setwright.bench.Wish;
import org.setwright.bench.hand.Ground;
import org.setwright.bench.keeping.Keeping;
import org.setwright.bench.keeping.NotKept;
import org.setwright.bench.told.Row;
import org.setwright.bench.told.Rows;
import org.setwright.bench.told.Tone;
import org.setwright.book.AtomicFile;
import org.setwright.book.Book;
import org.setwright.book.BookReader;
import org.setwright.book.JobEdit;
import org.setwright.check.cases.CheckedJob;
import org.setwright.engine.Compilation;
import org.setwright.engine.Edition;
import org.setwright.engine.change.Watch;

/** A session with the files behind it: follows lines, and does what they ask to be done with files. */
final class Talk {
	private static final int DEEPEST_REPLAY = 5;
	private final Path folder;
	private Session session;
	private boolean over;
	private int depth;

	/** @param folder to which names of scripts are relative */
	Talk(Ground ground, Path folder) {
		this.folder = folder;
		session = Session.on(ground);
	}

	Session session() {
		return session;
	}

	/** @return whether somebody has asked to leave */
	boolean over() {
		return over;
	}

	/** @return whether everything expected in lines of this session is met */
	boolean expectedIsMet() {
		List<String> asked = session.hand().edits().stream().flatMap(e -> what(e).stream()).toList();
		return CheckedJob.of(session.hand().job(), session.hand().outcome()).notMet().stream().noneMatch(p -> asked.contains(p.what()));
	}

	/** @return what an edit expects something of, as points of a checked job call it */
	private static Optional<String> what(JobEdit edit) {
		return edit instanceof JobEdit.Expected expected ? Optional.of(expected.setting().label())
				: edit instanceof JobEdit.ItemExpected expected ? Optional.of(expected.item().list().one() + " " + expected.item().text()) : Optional.empty();
	}

	/** @return the line and what is told of it; after it the lines of a script that it replays */
	List<Exchange> say(String line, Watch watch) {
		Turn turn = session.say(line, watch);
		session = turn.session();
		List<Exchange> told = new ArrayList<>();
		if (turn.wish().isEmpty()) {
			told.add(new Exchange(line, turn.rows(), turn.misread(), ""));
		} else if (turn.wish().get() instanceof Wish.Keep keep) {
			told.add(keep(line, keep.keeping(), watch));
		} else if (turn.wish().get() instanceof Wish.Save save) {
			told.add(save(line, save));
		} else if (turn.wish().get() instanceof Wish.Replay replay) {
			told.addAll(replay(line, replay.file(), watch));
		} else {
			over = true;
			told.add(done(line, List.of()));
		}
		return told;
	}

	private Exchange keep(String line, Keeping keeping, Watch watch) {
		Book book = session.hand().ground().book();
		Path file = book.folder().resolve(keeping.path());
		try {
			Optional<String> now = Files.exists(file) ? Optional.of(Files.readString(file, StandardCharsets.UTF_8)) : Optional.empty();
			String after = keeping.edit().of(now);
			Files.createDirectories(file.getParent());
			AtomicFile.write(file, after);
		} catch (NotKept why) {
			return refused(line, why.getMessage());
		} catch (IOException unwritable) {
			return refused(line, "The file " + file + " cannot be written; check who may write there. Nothing was changed.");
		}
		Rows rows = new Rows().add(0, Tone.GOOD, keeping.done());
		return done(line, rows.addAll(overTheBookAsItIs(watch)).all());
	}

	private List<Row> overTheBookAsItIs(Watch watch) {
		Ground before = session.hand().ground();
		Book book = BookReader.read(before.book().folder(), before.catalogue());
		Compilation compilation = Edition.compile(book);
		if (compilation.edition().isEmpty()) {
			return List.of(new Row(0, Tone.ALARM, "The book has errors now, so the bench goes on over what it was before: "
					+ compilation.problems().get(0), ""));
		}
		String path = before.saved().map(j -> j.path()).orElse("");
		Turn turn = session.over(new Ground(book, compilation.edition().get(), Optional.empty()).with(path), watch);
		session = turn.session();
		return turn.rows();
	}

	private Exchange save(String line, Wish.Save save) {
		try {
			Path file = folder.resolve(save.file());
			if (Files.exists(file)) {
				return refused(line, "There is already a file " + file + ", which is left as it is. Name another.");
			}
			AtomicFile.write(file, save.text());
			return done(line, List.of(new Row(0, Tone.GOOD, "The lines are saved in " + file + ".", "")));
		} catch (IOException | InvalidPathException unwritable) {
			return refused(line, "The file " + save.file() + " cannot be written; check its name and who may write there.");
		}
	}

	private List<Exchange> replay(String line, String name, Watch watch) {
		if (depth >= DEEPEST_REPLAY) {
			return List.of(refused(line, "Scripts replay one another more than " + DEEPEST_REPLAY + " deep. Take such a line out."));
		}
		List<Exchange> told = new ArrayList<>();
		try {
			List<String> lines = Script.lines(Files.readString(folder.resolve(name), StandardCharsets.UTF_8));
			told.add(done(line, List.of()));
			depth++;
			for (String each : lines) {
				told.addAll(say(each, watch));
				if (over || told.get(told.size() - 1).failed()) {
					break;
				}
			}
			depth--;
		} catch (IOException | InvalidPathException unreadable) {
			told.add(refused(line, "The file " + name + " cannot be read; check its name."));
		}
		return told;
	}

	private static Exchange done(String line, List<Row> rows) {
		return new Exchange(line, rows, Optional.empty(), "");
	}

	private static Exchange refused(String line, String why) {
		return new Exchange(line, List.of(), Optional.empty(), why);
	}
}
