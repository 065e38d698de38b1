package org.setwright.command.opening;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import org.setwright.book.Book;
import org.setwright.book.JobCase;
import org.setwright.command.answer.Problems;
import org.setwright.engine.Compilation;
import org.setwright.engine.Edition;
import org.setwright.engine.language.Rule;
import org.setwright.trade.catalogue.Catalogue;
import org.setwright.trade.catalogue.Setting;

/**
 * A rule book with its compilation.
 *
 * @param named whether hints must name its folder, because it is not the usual one
 */
public record OpenBook(Book book, Compilation compilation, boolean named) {

	static OpenBook of(Book book, boolean named) {
		return new OpenBook(book, Edition.compile(book), named);
	}

	/** @return every fact and setting the book may speak of */
	public Catalogue catalogue() {
		return book.catalogue();
	}

	/** @return what is wrong with it */
	public Problems problems() {
		return new Problems(compilation.problems());
	}

	/** @return the job case that {@code wanted} names by name, file, or a part of either that only one job has */
	public JobCase job(String wanted) {
		return Named.one("job", wanted, book.jobs(), JobCase::name, JobCase::path, OpenBook::shortName);
	}

	/** @return the name of the job's file without folder and ending: short to type */
	public static String shortName(JobCase job) {
		return job.path().substring(job.path().lastIndexOf('/') + 1).replaceFirst("\\.[^.]*$", "");
	}

	/** @return the setting that {@code wanted} names by label, word, or a part of either that only one has */
	public Setting setting(String wanted) {
		return Named.one("setting", wanted, catalogue().settings(), Setting::label, Setting::id);
	}

	/** @return the rule of {@code edition} that {@code wanted} names by its name, or a part of it that only one has */
	public Rule rule(String wanted, Edition edition) {
		return Named.one("rule", wanted, edition.rules(), Rule::name);
	}

	/** Writes the field "book". */
	public void json(JsonGenerator json) throws IOException {
		json(json, book);
	}

	/** Writes the field "book". */
	public static void json(JsonGenerator json, Book book) throws IOException {
		json.writeObjectFieldStart("book");
		json.writeStringField("name", book.name());
		json.writeStringField("folder", book.folder().toString());
		json.writeEndObject();
	}
}
