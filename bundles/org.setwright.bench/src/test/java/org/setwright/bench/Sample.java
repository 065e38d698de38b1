package org.setwright.bench;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.setwright.bench.hand.Ground;
import org.setwright.bench.told.Row;
import org.setwright.book.Book;
import org.setwright.book.JobCase;
import org.setwright.book.JobReader;
import org.setwright.book.JobText;
import org.setwright.book.TableReader;
import org.setwright.engine.Edition;
import org.setwright.engine.change.Watch;
import org.setwright.trade.catalogue.About;
import org.setwright.trade.catalogue.Answer;
import org.setwright.trade.catalogue.Asked;
import org.setwright.trade.catalogue.Calculated;
import org.setwright.trade.catalogue.Catalogue;
import org.setwright.trade.catalogue.Choice;
import org.setwright.trade.catalogue.Domain;
import org.setwright.trade.catalogue.Fact;
import org.setwright.trade.catalogue.Quantity;
import org.setwright.trade.catalogue.Setting;
import org.setwright.trade.catalogue.Unit;

/** A small invented trade with a book of its own, so that these tests do not change with the real catalogue. */
final class Sample {
	static final Catalogue CATALOGUE = new Catalogue.Builder().facts(Pump.class, Lamp.class, Hose.class, Yard.class)
			.calculated(Reach.class, job -> new Reach(job.one(Pump.class).map(p -> p.lift().map(q -> new Quantity(2 * q.number(), q.unit())))
					.orElse(Answer.unknown())))
			.settings(List.of(new Setting("SPEED", "speed", "pump", "How fast it turns.", new Domain.Whole(0, 9), "Pump( )"),
					new Setting("ALARM", "alarm", "pump", "When it rings.", new Domain.Measure(Unit.FAHRENHEIT, 0, 99), "Pump( )"),
					new Setting("COLOUR", "colour of light", "lamp", "What it shines.", Domain.Choices.of(Colour.class), "Lamp( )")))
			.build();

	static final String RULES = """
			// the shop's own
			rule "By size" @authority( shop practice ) @because( "Big ones turn slowly." ) @source( common practice )
			when Pump( $s : size ) then propose( SPEED, $s ); end

			rule "The alarm" @authority( shop practice ) @because( "So it is." ) @source( common practice )
			when Pump( size > 1 ) then propose( ALARM, "62 °F" ); caution( STOP, "Mind the heat." ); find( BIG ); end

			rule "Red" @authority( shop practice ) @because( "So it is." ) @source( common practice )
			when Lamp( lit == YES ) then propose( COLOUR, RED ); end

			rule "A big one is started slowly" @authority( shop practice ) @because( "So it is." ) @source( common practice )
			when Finding( name == BIG )
			then startUp( FAN, "Let it turn.", "It hums.", "Stop it." ); end
			""";
	private static final String TABLE = "lamp bright,=> colour of light,authority,source,because\nyes,blue,maker's instructions,common practice,Bright is blue.\n";
	static final String JOB = "job: Mill Lane 3\npump: { size: 1, lift: 10 ft }\nhoses:\n  - { paint: red, length: 9 m }\nlamp: none\nexpect:\n  speed: 1\n";
	static final String OTHER = "job: Weir 5\npump: { size: 3 }\n";
	private static final Edition EDITION = edition(RULES);

	private Sample() {
	}

	/** A pump. */
	@About(label = "pump", meaning = "Moves water.")
	public record Pump(@Asked(label = "size", meaning = "How big it is.", most = 9) Answer<Integer> size,
			@Asked(label = "lift", meaning = "How high it lifts.", unit = Unit.FOOT, most = 900) Answer<Quantity> lift,
			@Asked(label = "coldest", meaning = "How cold it may be.", unit = Unit.FAHRENHEIT, least = -90,
					most = 200) Answer<Quantity> coldest) implements Fact {
	}

	/** A lamp. */
	@About(label = "lamp", meaning = "Shines.")
	public record Lamp(@Asked(label = "lit", meaning = "Whether it burns.") Answer<Boolean> lit,
			@Asked(label = "bright", meaning = "Whether it dazzles.") Answer<Boolean> bright) implements Fact {
	}

	/** Hoses, of which a job may have several. */
	@About(label = "hose", plural = "hoses", meaning = "Carries water.")
	public record Hose(@Asked(label = "paint", meaning = "How it is painted.", naming = true) Answer<Colour> paint,
			@Asked(label = "length", meaning = "How long it is.", unit = Unit.METRE, most = 99) Answer<Quantity> length) implements Fact {
	}

	/** What every job has. */
	@About(label = "yard", meaning = "Where it all stands.", always = true)
	public record Yard(@Asked(label = "gates", meaning = "How many.", most = 9) Answer<Integer> gates) implements Fact {
	}

	/** What is worked out. */
	@About(label = "reach", meaning = "How far the water goes.")
	public record Reach(@Asked(label = "distance", meaning = "The farthest.", unit = Unit.FOOT, most = 9999)
	@Calculated(from = "Pump.lift", formula = "twice the lift", source = "common practice") Answer<Quantity> distance) implements Fact {
	}

	/** Colours. */
	public enum Colour implements Choice {
		RED, BLUE;

		@Override
		public String label() {
			return name().toLowerCase(Locale.ROOT);
		}

		@Override
		public String meaning() {
			return "It is " + label() + ".";
		}
	}

	static Book book(String rules) {
		List<JobCase> read = new ArrayList<>();
		for (String text : List.of(JOB, OTHER)) {
			JobText job = JobReader.read("jobs/" + read.size() + ".yaml", text, CATALOGUE);
			if (!job.sound()) {
				throw new AssertionError(job.problems());
			}
			read.add(job.job());
		}
		return new Book(Path.of("."), "Sample", CATALOGUE, List.of(new Book.RuleFile("rules/a.drl", rules)),
				List.of(TableReader.read("tables/lamps.csv", TABLE).table()), read);
	}

	static Edition edition(String rules) {
		var compiled = Edition.compile(book(rules));
		return compiled.edition().orElseThrow(() -> new AssertionError(compiled.problems().toString()));
	}

	/** @return the bench with the first job on it */
	static Session bench() {
		return Session.on(new Ground(book(RULES), EDITION, Optional.empty()).with("jobs/0.yaml"));
	}

	/** @return a rule of one line */
	static String rule(String name, String authority, String when, String then) {
		return "rule \"" + name + "\" @authority( " + authority + " ) @because( \"So it is.\" ) @source( common practice ) when " + when
				+ " then " + then + " end";
	}

	/** @return the session after lines that all have to be followed */
	static Session after(Session session, String... lines) {
		Session now = session;
		for (String line : lines) {
			Turn turn = now.say(line, Watch.PATIENT);
			turn.misread().ifPresent(m -> {
				throw new AssertionError(line + ": " + m.what() + " " + m.remedy());
			});
			now = turn.session();
		}
		return now;
	}

	/** @return what is told of a line that has to be followed, a row a line */
	static String told(Session session, String line) {
		Turn turn = session.say(line, Watch.PATIENT);
		turn.misread().ifPresent(m -> {
			throw new AssertionError(line + ": " + m.what() + " " + m.remedy());
		});
		return turn.rows().stream().map(Sample::text).collect(Collectors.joining("\n"));
	}

	/** @return where and why a line cannot be followed */
	static String misread(Session session, String line) {
		Turn turn = session.say(line, Watch.PATIENT);
		if (turn.session() != session) {
			throw new AssertionError("a line that cannot be followed changed something: " + line);
		}
		return turn.misread().map(m -> m.line(line) + ":" + m.column(line) + " " + m.what() + " " + m.remedy()).orElse("followed");
	}

	private static String text(Row row) {
		return "  ".repeat(row.depth()) + row.words();
	}
}
