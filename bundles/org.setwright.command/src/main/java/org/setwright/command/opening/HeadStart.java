package org.setwright.command.opening;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.atomic.AtomicBoolean;
import org.setwright.book.Book;
import org.setwright.engine.Edition;
import org.setwright.trade.catalogue.About;
import org.setwright.trade.catalogue.Answer;
import org.setwright.trade.catalogue.Asked;
import org.setwright.trade.catalogue.Catalogue;
import org.setwright.trade.catalogue.Fact;
import org.setwright.trade.catalogue.Job;

/**
 * Compiles and runs a book of one rule while the main thread still reads the real one: the rule engine's classes are then
 * loaded by the time they are needed, which shortens the way to the first answer.
 */
final class HeadStart {
	private static final String RULE = """
			rule "start" @authority( shop practice ) @because( "It warms the engine." ) @source( common practice )
			when Kindling( logs > 1 ) not Kindling( logs == 3 ) then find( FIRE ); end
			""";
	private static final AtomicBoolean BEGUN = new AtomicBoolean();

	private HeadStart() {
	}

	/** Any fact will do. */
	@About(label = "kindling", meaning = "What starts a fire.")
	public record Kindling(@Asked(label = "logs", meaning = "How many there are.", most = 9) Answer<Integer> logs) implements Fact {
	}

	/** Begins beside the calling thread, once, where there is a second processor; whatever comes of it is forgotten. */
	static void begin() {
		if (Runtime.getRuntime().availableProcessors() > 1 && !BEGUN.getAndSet(true)) {
			Thread beside = new Thread(HeadStart::run, "head start");
			beside.setDaemon(true);
			beside.setUncaughtExceptionHandler((thread, failure) -> { });
			beside.start();
		}
	}

	static void run() {
		Catalogue catalogue = new Catalogue.Builder().facts(Kindling.class).build();
		Book book = new Book(Path.of(""), "", catalogue, List.of(new Book.RuleFile("rules/start.drl", RULE)), List.of(), List.of());
		Edition.compile(book).edition().orElseThrow().run(Job.blank());
	}
}
