package org.setwright.book.yaml;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import org.setwright.book.text.SourceText;
import org.setwright.book.yaml.YamlNode.Entry;
import org.setwright.book.yaml.YamlNode.Mapping;
import org.setwright.book.yaml.YamlNode.Scalar;
import org.setwright.book.yaml.YamlNode.Sequence;
import org.setwright.book.yaml.YamlNode.Style;
import org.setwright.book.yaml.YamlText.Fault;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.events.AliasEvent;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.NodeEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;

/** Builds the tree of a YAML text from the parser's events. One reader reads one text. */
public final class YamlReader {
	/** Deeper nesting than this is refused. */
	static final int DEEPEST = 20;
	/** More values than this in one text are refused. */
	static final int MOST_NODES = 100_000;
	private static final int LARGEST = 4_000_000;

	private final List<Fault> faults = new ArrayList<>();
	private final Offsets offsets;
	private final Iterator<Event> events;
	/** Where the braces and brackets being read were opened, innermost first. */
	private final Deque<Integer> open = new ArrayDeque<>();
	private int nodes;

	private YamlReader(SourceText source) {
		offsets = new Offsets(source.text());
		events = new Parse(settings(source.text().length())).parseString(source.text()).iterator();
	}

	/** @return the tree of {@code source}, or the reason why there is none; never throws for what the text says */
	public static YamlText read(SourceText source) {
		YamlReader reader = new YamlReader(source);
		try {
			Optional<YamlNode> root = reader.document();
			return new YamlText(root, reader.faults);
		} catch (Refused refused) {
			reader.faults.add(refused.fault);
			return new YamlText(Optional.empty(), reader.faults);
		} catch (Unparsed unparsed) {
			int open = reader.open.isEmpty() ? -1 : reader.open.peek();
			reader.faults.add(Complaint.of(unparsed.why, reader.offsets, open));
			return new YamlText(Optional.empty(), reader.faults);
		}
	}

	/** The parser reads the whole text at once: with its usual small steps, one very long word takes minutes. */
	private static LoadSettings settings(int length) {
		return LoadSettings.builder().setUseMarks(true).setParseComments(false).setCodePointLimit(LARGEST)
				.setBufferSize(Math.min(length, LARGEST) + 1).build();
	}

	private Optional<YamlNode> document() {
		next();
		if (next().getEventId() == Event.ID.StreamEnd) {
			return Optional.empty();
		}
		YamlNode root = node(next(), 0);
		next();
		Event after = next();
		if (after.getEventId() != Event.ID.StreamEnd) {
			throw new Refused(start(after), "A second document begins here; a file holds one.",
					"Remove the line of dashes, or move what follows to a file of its own.");
		}
		boolean nothing = root instanceof Scalar scalar && scalar.isEmpty();
		return nothing ? Optional.empty() : Optional.of(root);
	}

	private YamlNode node(Event event, int depth) {
		if (++nodes > MOST_NODES) {
			throw new Refused(start(event), "The file holds more than " + MOST_NODES + " values.", "Split it.");
		}
		if (event instanceof AliasEvent) {
			throw new Refused(start(event), "A value that begins with * refers to another place, which is not read here.",
					"Write the value itself, or put it in quotes.");
		}
		refuseDecoration((NodeEvent) event);
		if (event instanceof ScalarEvent scalar) {
			return scalar(scalar);
		}
		if (depth >= DEEPEST) {
			throw new Refused(start(event), "Braces, brackets or indents are nested more than " + DEEPEST + " deep.",
					"Write it flat: a job needs three levels at most.");
		}
		CollectionStartEvent opening = (CollectionStartEvent) event;
		if (opening.isFlow()) {
			open.push(start(event));
		}
		YamlNode read = event.getEventId() == Event.ID.MappingStart ? mapping(opening, depth + 1) : sequence(opening, depth + 1);
		if (opening.isFlow()) {
			open.pop();
		}
		return read;
	}

	private void refuseDecoration(NodeEvent event) {
		boolean tagged = event instanceof ScalarEvent scalar ? scalar.getTag().isPresent()
				: event instanceof CollectionStartEvent collection && collection.getTag().isPresent();
		if (tagged) {
			faults.add(new Fault(start(event), "A value that begins with ! has a special meaning, which is not read here.",
					"Remove the mark, or put the whole value in quotes."));
		}
		if (event.getAnchor().isPresent()) {
			faults.add(new Fault(start(event), "A value that begins with & names a place, which is not read here.",
					"Remove the mark, or put the whole value in quotes."));
		}
	}

	private Scalar scalar(ScalarEvent event) {
		Style style = event.isPlain() ? Style.PLAIN
				: event.isLiteral() || event.isFolded() ? Style.BLOCK : Style.QUOTED;
		int end = end(event);
		return new Scalar(event.getValue(), style, start(event),
				style == Style.BLOCK ? offsets.withoutBlanksBefore(end, start(event)) : end);
	}

	private Mapping mapping(CollectionStartEvent opening, int depth) {
		List<Entry> entries = new ArrayList<>();
		Event event = next();
		for (; event.getEventId() != Event.ID.MappingEnd; event = next()) {
			if (!(node(event, depth) instanceof Scalar key)) {
				throw new Refused(start(event), "A list or a group stands where a name is expected.",
						"Write a name and a colon, for example \"maker: Norrvik\".");
			}
			entries.add(new Entry(key, node(next(), depth)));
		}
		int last = entries.isEmpty() ? start(opening) : entries.get(entries.size() - 1).value().end();
		return new Mapping(entries, opening.isFlow(), start(opening), opening.isFlow() ? end(event) : last);
	}

	private Sequence sequence(CollectionStartEvent opening, int depth) {
		List<YamlNode> items = new ArrayList<>();
		Event event = next();
		for (; event.getEventId() != Event.ID.SequenceEnd; event = next()) {
			items.add(node(event, depth));
		}
		int last = items.isEmpty() ? start(opening) : items.get(items.size() - 1).end();
		return new Sequence(items, opening.isFlow(), start(opening), opening.isFlow() ? end(event) : last);
	}

	/** Fuzzing has shown the parser to throw other exceptions than its own on some broken texts, so all are taken. */
	private Event next() {
		try {
			return events.next();
		} catch (RuntimeException broken) {
			throw new Unparsed(broken);
		}
	}

	private int start(Event event) {
		return offsets.of(event.getStartMark().orElseThrow().getIndex());
	}

	private int end(Event event) {
		return offsets.of(event.getEndMark().orElseThrow().getIndex());
	}

	/** Ends the reading of this text. */
	private static final class Refused extends RuntimeException {
		private final transient Fault fault;

		Refused(int offset, String what, String remedy) {
			super(what, null, false, false);
			fault = new Fault(offset, what, remedy);
		}
	}

	/** The parser gave up on this text. */
	private static final class Unparsed extends RuntimeException {
		private final transient RuntimeException why;

		Unparsed(RuntimeException why) {
			super(why);
			this.why = why;
		}
	}
}
