package org.setwright.check;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.setwright.book.Book;
import org.setwright.book.JobCase;
import org.setwright.book.JobReader;
import org.setwright.book.JobText;
import org.setwright.engine.Edition;
import org.setwright.trade.catalogue.About;
import org.setwright.trade.catalogue.Answer;
import org.setwright.trade.catalogue.Asked;
import org.setwright.trade.catalogue.Catalogue;
import org.setwright.trade.catalogue.Choice;
import org.setwright.trade.catalogue.Domain;
import org.setwright.trade.catalogue.Fact;
import org.setwright.trade.catalogue.Setting;
import org.setwright.trade.catalogue.Unit;

/** A small invented trade with a book of its own, so that these tests do not change with the real catalogue. */
public final class Sample {
	public static final Catalogue CATALOGUE = new Catalogue.Builder().facts(Pump.class, Lamp.class)
			.settings(List.of(new Setting("SPEED", "speed", "pump", "How fast it turns.", new Domain.Whole(0, 9), "Pump( )"),
					new Setting("ALARM", "alarm", "pump", "When it rings.", new Domain.Measure(Unit.FAHRENHEIT, 0, 99), "Pump( )"),
					new Setting("COLOUR", "colour", "lamp", "What it shines.", Domain.Choices.of(Colour.class), "Lamp( )"),
					new Setting("SIGN", "sign", "lamp", "What stands on it.", new Domain.Words(), Setting.OPTIONAL)))
			.build();

	private static final String RULES = """
			rule "By size" @authority( shop practice ) @because( "Big ones turn slowly." ) @source( common practice )
			when Pump( $s : size ) then propose( SPEED, $s ); end

			rule "The alarm" @authority( shop practice ) @because( "So it is." ) @source( common practice )
			when Pump( size > 1 ) then propose( ALARM, "62 °F" ); caution( STOP, "Mind the  heat: it burns." ); end

			rule "Red" @authority( shop practice ) @because( "So it is." ) @source( common practice )
			when Lamp( lit == YES ) then propose( COLOUR, RED ); end

			rule "Blue" @authority( shop practice ) @because( "So it is." ) @source( common practice )
			when Lamp( lit == YES, bright == YES ) then propose( COLOUR, BLUE ); end

			rule "Make it ring" @authority( shop practice ) @because( "So it is." ) @source( common practice )
			when Pump( size > 1 ) then find( PUMP_THAT_RINGS );
			startUp( SAFETY_DEVICES, "Warm it to {10 F°} above {setting ALARM}.", "It rings.", "A broken bell." ); end
			""";
	private static final String TABLE = "pump size,=> sign,authority,source,because\n3,three,shop practice,common practice,It is three.\n";

	private Sample() {
	}

	/** A pump. */
	@About(label = "pump", meaning = "Moves water.")
	public record Pump(@Asked(label = "size", meaning = "How big it is.", most = 9) Answer<Integer> size) implements Fact {
	}

	/** A lamp. */
	@About(label = "lamp", meaning = "Shines.")
	public record Lamp(@Asked(label = "lit", meaning = "Whether it burns.") Answer<Boolean> lit,
			@Asked(label = "bright", meaning = "Whether it dazzles.") Answer<Boolean> bright) implements Fact {
	}

	/** Colours. */
	public enum Colour implements Choice {
		RED, BLUE;

		@Override
		public String label() {
			return name().toLowerCase(java.util.Locale.ROOT);
		}

		@Override
		public String meaning() {
			return label();
		}
	}

	/** @param jobs texts of job files, called jobs/0.yaml and so on */
	public static Book book(String... jobs) {
		List<JobCase> read = new ArrayList<>();
		for (String text : jobs) {
			JobText job = JobReader.read("jobs/" + read.size() + ".yaml", text, CATALOGUE);
			if (!job.sound()) {
				throw new AssertionError(job.problems());
			}
			read.add(job.job());
		}
		return new Book(Path.of("."), "Sample", CATALOGUE, List.of(new Book.RuleFile("rules/a.drl", RULES)),
				List.of(org.setwright.book.TableReader.read("tables/signs.csv", TABLE).table()), read);
	}

	/** @return the sample's rules, compiled */
	public static Edition edition() {
		var compiled = Edition.compile(book());
		return compiled.edition().orElseThrow(() -> new AssertionError(compiled.problems().stream().map(Object::toString).collect(Collectors.joining("\n"))));
	}
}
