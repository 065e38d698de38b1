package org.setwright.engine.explaining;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.setwright.trade.catalogue.Field;
import org.setwright.trade.catalogue.Value;

/** Says that a fact does not do what its field says: "is not red", "does not feed cooling", "is neither red nor blue". */
final class Denied {
	private static final Pattern BEING = Pattern.compile("(its .+? is|is|was) (.*)");
	private static final Pattern DOING = Pattern.compile("(\\w+)( .*)");

	private Denied() {
	}

	/** @return that the answer is none of {@code values}, as the end of a sentence about the fact */
	static String of(Field field, List<Value> values) {
		List<String> texts = Said.texts(field, values);
		Matcher being = BEING.matcher(field.says());
		if (!being.matches()) {
			return filled(doing(field.says()), texts, "or");
		}
		boolean bare = being.group(2).equals("{}") || being.group(2).equals("{a}");
		boolean several = bare && texts.size() > 1;
		return filled(being.group(1) + (several ? " neither " : " not ") + being.group(2), texts, several ? "nor" : "or");
	}

	private static String doing(String says) {
		Matcher doing = DOING.matcher(says);
		if (!doing.matches()) {
			return "not: " + says;
		}
		String verb = doing.group(1);
		return switch (verb) {
			case "has" -> "does not have";
			case "had" -> "did not have";
			case "left" -> "did not leave";
			default -> verb.endsWith("s") ? "does not " + verb.substring(0, verb.length() - 1) : "do not " + verb;
		} + doing.group(2);
	}

	private static String filled(String says, List<String> texts, String joint) {
		String words = Said.joined(texts, joint);
		return says.replace("\"{}\"", '"' + String.join("\" " + joint + " \"", texts) + '"').replace("{a}", words).replace("{}", words);
	}
}
