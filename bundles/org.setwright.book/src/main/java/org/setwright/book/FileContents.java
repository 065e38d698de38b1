package org.setwright.book;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.setwright.book.text.SourceText;

/**
 * The text of a file, or the reason why it has none.
 *
 * @param text empty when there is a problem
 */
record FileContents(Optional<String> text, Optional<Problem> problem) {
	private static final String SAVE_AS = "Open it in a text editor and save it as UTF-8.";

	static FileContents of(String text) {
		return new FileContents(Optional.of(text), Optional.empty());
	}

	/** @return what an editor holds, with the line breaks and the beginning that a saved file would be read with */
	static FileContents typed(String text) {
		return of(SourceText.of(text).text());
	}

	static FileContents refused(Problem problem) {
		return new FileContents(Optional.empty(), Optional.of(problem));
	}

	/** @return {@code bytes} as UTF-8 text without byte order mark */
	static FileContents decode(String path, byte[] bytes) {
		if (begins(bytes, 0xFF, 0xFE) || begins(bytes, 0xFE, 0xFF)) {
			return refused(Problem.error(new Position(path, 1, 1), "The file is written in UTF-16, and UTF-8 is read here.", SAVE_AS));
		}
		CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder().onMalformedInput(CodingErrorAction.REPORT)
				.onUnmappableCharacter(CodingErrorAction.REPORT);
		CharBuffer chars = CharBuffer.allocate(bytes.length + 1);
		CoderResult result = decoder.decode(ByteBuffer.wrap(bytes), chars, true);
		String text = chars.flip().toString();
		if (result.isError()) {
			return refused(Problem.error(end(path, text), "A letter here is not written in UTF-8.", SAVE_AS));
		}
		int binary = text.indexOf('\0');
		if (binary >= 0) {
			return refused(Problem.error(end(path, text.substring(0, binary)), "This is no text: a zero byte stands here.",
					"Remove the file from the book, or restore it from an earlier edition."));
		}
		return of(SourceText.of(text).text());
	}

	private static Position end(String path, String before) {
		SourceText source = SourceText.of(before);
		int end = source.text().length();
		return new Position(path, source.line(end), source.column(end));
	}

	private static boolean begins(byte[] bytes, int first, int second) {
		return bytes.length > 1 && (bytes[0] & 0xFF) == first && (bytes[1] & 0xFF) == second;
	}
}
