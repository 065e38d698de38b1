package org.setwright.editions.signing;

/** What a remark is about. */
public sealed interface About {

	/** @return as it stands in the file, and for people */
	String words();

	/** A rule or row. @param name as it was called when the remark was made */
	record OfRule(String name) implements About {
		@Override
		public String words() {
			return "rule " + name;
		}
	}

	/** What a job comes to. @param job its file below the book @param setting its name */
	record OfDecision(String job, String setting) implements About {
		@Override
		public String words() {
			return "job " + job + ", " + setting;
		}
	}

	/** The edition as a whole. */
	record OfBook() implements About {
		@Override
		public String words() {
			return "the book";
		}
	}

	/** @return what {@code words} stand for; the book, when they are not understood */
	static About read(String words) {
		int comma = words.indexOf(", ");
		if (words.startsWith("rule ")) {
			return new OfRule(words.substring(5));
		} else if (words.startsWith("job ") && comma > 0) {
			return new OfDecision(words.substring(4, comma), words.substring(comma + 2));
		}
		return new OfBook();
	}
}
