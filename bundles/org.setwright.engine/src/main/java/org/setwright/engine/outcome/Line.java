package org.setwright.engine.outcome;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.setwright.trade.catalogue.JobField;
import org.setwright.trade.catalogue.Quantity;
import org.setwright.trade.catalogue.Setting;
import org.setwright.trade.catalogue.UnitSystem;

/** What a rule says about one job: its words, with the job's answers and settings read into them. */
public record Line(List<Part> parts) {
	public Line {
		parts = List.copyOf(parts);
	}

	/** A part of a line. */
	public sealed interface Part {
		/** @return as people read it */
		String text(UnitSystem units);
	}

	/** Words that are the same in any unit. */
	public record Words(String words) implements Part {
		@Override
		public String text(UnitSystem units) {
			return words;
		}
	}

	/** A quantity, or a range of it. @param most empty unless it is a range */
	public record Amount(Quantity least, Optional<Quantity> most) implements Part {
		@Override
		public String text(UnitSystem units) {
			return units.text(least, most.orElse(least));
		}
	}

	/** An answer nobody has looked up. @param lookUp what to look up to know it; not empty */
	public record NotKnown(JobField place, Set<JobField> lookUp) implements Part {
		public NotKnown {
			lookUp = Set.copyOf(lookUp);
		}

		@Override
		public String text(UnitSystem units) {
			return "(not known yet: find out " + lookUp.stream().map(JobField::label).sorted().collect(Collectors.joining(", ")) + ")";
		}
	}

	/** What a setting comes to. @param decided whether a person need not decide first */
	public record OfSetting(Setting setting, String words, boolean decided) implements Part {
		@Override
		public String text(UnitSystem units) {
			return words;
		}
	}

	/** @return the whole line, quantities in {@code units} */
	public String text(UnitSystem units) {
		return parts.stream().map(p -> p.text(units)).collect(Collectors.joining());
	}
}
