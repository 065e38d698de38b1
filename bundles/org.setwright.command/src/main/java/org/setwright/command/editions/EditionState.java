package org.setwright.command.editions;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.setwright.book.Book;
import org.setwright.book.SignOff;
import org.setwright.command.answer.Problems;
import org.setwright.command.terminal.Page;
import org.setwright.command.terminal.Style;
import org.setwright.command.terminal.Surroundings;
import org.setwright.editions.EditionsOf;
import org.setwright.editions.kept.Kept;
import org.setwright.editions.kept.NotDone;
import org.setwright.editions.signing.SignedOff;

/**
 * Which edition a book is at, and who signed it.
 *
 * @param last empty when nothing was kept yet
 * @param signed who signed it; empty when nobody did
 * @param notKept the files that are not as in that edition
 * @param demanded whether the book demands to be signed
 * @param fault why the editions cannot be read; empty when they can
 */
public record EditionState(Optional<Kept> last, Optional<SignedOff> signed, List<String> notKept, boolean demanded, String fault) {

	/** @return empty when the book lives in no repository */
	public static Optional<EditionState> of(Surroundings at, Book book) {
		List<Path> ceilings = ceilings(at);
		if (!looksKept(real(book.folder()), ceilings)) {
			return Optional.empty();
		}
		boolean demanded = book.signOff() != SignOff.NOT_DEMANDED;
		try (EditionsOf editions = EditionsOf.find(book.folder(), at.catalogue(), ceilings).orElseThrow()) {
			Optional<Kept> last = editions.last();
			Optional<SignedOff> signed = last.isEmpty() ? Optional.empty() : editions.signOffs().of(last.get());
			return Optional.of(new EditionState(last, signed, editions.work().notKept(), demanded, ""));
		} catch (NotDone refused) {
			return Optional.of(new EditionState(Optional.empty(), Optional.empty(), List.of(), demanded, refused.getMessage()));
		}
	}

	/** Looks without loading the Git library, which takes time that most answers need not wait for. */
	private static boolean looksKept(Path book, List<Path> ceilings) {
		for (Path folder = book; folder != null; folder = folder.getParent()) {
			if (Files.exists(folder.resolve(".git"), LinkOption.NOFOLLOW_LINKS)) {
				return true;
			} else if (ceilings.contains(folder)) {
				return false;
			}
		}
		return false;
	}

	/** @return the folders at which to stop looking upwards, links followed */
	static List<Path> ceilings(Surroundings at) {
		return at.ceilings().stream().map(EditionState::real).toList();
	}

	private static Path real(Path folder) {
		try {
			return folder.toRealPath();
		} catch (IOException notThere) {
			return folder.toAbsolutePath();
		}
	}

	/** Says it in one or two lines. */
	public void text(Page page) {
		if (!fault.isEmpty()) {
			page.line(0, Style.ATTENTION, "edition: " + fault);
			return;
		}
		String signature = signed.map(SignedOff::shown).orElse(demanded ? "NOT SIGNED, and the book demands it" : "not signed");
		boolean wanting = signed.isEmpty() && demanded;
		page.line(0, wanting ? Style.ALARM : Style.QUIET, last.map(k -> "edition " + k.shown() + "; " + signature)
				.orElse("no edition of the book has been kept yet"));
		if (!notKept.isEmpty() && last.isPresent()) {
			page.line(0, Style.ATTENTION, "CHANGED SINCE THAT EDITION: " + Problems.counted(notKept.size(), "file") + " ("
					+ String.join(", ", notKept.subList(0, Math.min(3, notKept.size())))
					+ (notKept.size() > 3 ? ", ..." : "") + ")");
		}
	}

	/** Writes the field "edition". */
	public void json(JsonGenerator json) throws IOException {
		json.writeObjectFieldStart("edition");
		json.writeStringField("edition", last.map(k -> k.id().hash()).orElse(""));
		json.writeStringField("on", last.map(k -> k.on().toString()).orElse(""));
		json.writeStringField("by", last.map(k -> k.by().toString()).orElse(""));
		json.writeStringField("signed", signed.map(SignedOff::shown).orElse(""));
		json.writeBooleanField("demanded", demanded);
		json.writeArrayFieldStart("notKept");
		for (String path : notKept) {
			json.writeString(path);
		}
		json.writeEndArray();
		json.writeStringField("fault", fault);
		json.writeEndObject();
	}
}
