package org.setwright.book;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** A list in which a job case names what it expects besides settings. */
public enum ItemList {
	/** Cautions that must be raised. */
	CAUTIONS(Topic.CAUTIONS, "cautions", "caution", "raised"),
	/** Cautions that must not be raised. */
	NO_CAUTIONS(Topic.CAUTIONS, "no cautions", "no caution", "not raised"),
	/** Start-up checks that the job certainly needs. */
	START_UP(Topic.START_UP, "start-up", "start-up check", "needed"),
	/** Start-up checks of which nobody knows yet whether the job needs them. */
	PERHAPS_START_UP(Topic.START_UP, "perhaps start-up", "perhaps start-up check", "perhaps needed"),
	/** Start-up checks that the job does not need. */
	NO_START_UP(Topic.START_UP, "no start-up", "no start-up check", "not needed"),
	/** What the rules must find on the way. */
	FINDINGS(Topic.FINDINGS, "findings", "finding", "found"),
	/** What the rules must not find. */
	NO_FINDINGS(Topic.FINDINGS, "no findings", "no finding", "not found");

	/** What the items of a list are about. */
	public enum Topic {
		CAUTIONS("cautions"), START_UP("start-up checks"), FINDINGS("findings");

		private final String label;

		Topic(String label) {
			this.label = label;
		}

		/** @return for people, in the plural */
		public String label() {
			return label;
		}
	}

	private final Topic topic;
	private final String key;
	private final String one;
	private final String state;

	ItemList(Topic topic, String key, String one, String state) {
		this.topic = topic;
		this.key = key;
		this.one = one;
		this.state = state;
	}

	/** @return what its items are about */
	public Topic topic() {
		return topic;
	}

	/** @return as it stands in a job file */
	public String key() {
		return key;
	}

	/** @return one of its items, to be followed by which: "no caution" */
	public String one() {
		return one;
	}

	/** @return how what an item means has to stand: "not raised" */
	public String state() {
		return state;
	}

	/** @return whether what its items mean has to be there, and not be missing */
	public boolean appears() {
		return this != absent();
	}

	/** @return the list of the same topic for what has to be missing */
	public ItemList absent() {
		return switch (topic) {
			case CAUTIONS -> NO_CAUTIONS;
			case START_UP -> NO_START_UP;
			case FINDINGS -> NO_FINDINGS;
		};
	}

	/** @return the list that is written as {@code key}, in small letters, or empty */
	public static Optional<ItemList> called(String key) {
		return Arrays.stream(values()).filter(l -> l.key.equals(key)).findFirst();
	}

	/** @return every key, in the order in which lists are written */
	public static List<String> keys() {
		return Arrays.stream(values()).map(ItemList::key).toList();
	}
}
