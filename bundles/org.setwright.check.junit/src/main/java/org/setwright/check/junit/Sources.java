package org.setwright.check.junit;

import java.io.File;
import org.junit.platform.engine.TestSource;
import org.junit.platform.engine.support.descriptor.ClassSource;
import org.junit.platform.engine.support.descriptor.DirectorySource;
import org.junit.platform.engine.support.descriptor.FilePosition;
import org.junit.platform.engine.support.descriptor.FileSource;
import org.junit.platform.engine.support.descriptor.MethodSource;
import org.setwright.book.Book;
import org.setwright.book.JobCase;
import org.setwright.check.report.JunitXml;

/**
 * Where tests come from: the files of the book, with line and column. Build tools that pick tests by class count only what
 * belongs to a class and a method; for them a job goes by the name of a class, and a point by that of a method.
 *
 * @param byClass whether the book was picked by a class
 */
record Sources(Book book, boolean byClass) {

	TestSource ofBook() {
		return byClass ? ClassSource.from(book.name()) : DirectorySource.from(book.folder().toFile());
	}

	TestSource ofSoundness(String test) {
		return byClass ? MethodSource.from(book.name(), test) : DirectorySource.from(book.folder().toFile());
	}

	TestSource of(JobCase job) {
		return byClass ? ClassSource.from(JunitXml.group(book.name(), job)) : FileSource.from(file(job.path()));
	}

	TestSource of(JobCase job, ExpectedPoint point) {
		return byClass ? MethodSource.from(JunitXml.group(book.name(), job), point.what())
				: FileSource.from(file(point.at().file()), FilePosition.from(point.at().line(), point.at().column()));
	}

	private File file(String path) {
		return book.folder().resolve(path).toFile();
	}
}
