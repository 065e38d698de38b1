package org.setwright.check.junit;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiPredicate;
import java.util.stream.Stream;
import org.junit.platform.engine.EngineDiscoveryRequest;
import org.junit.platform.engine.TestDescriptor;
import org.junit.platform.engine.UniqueId;
import org.junit.platform.engine.UniqueId.Segment;
import org.junit.platform.engine.discovery.ClassSelector;
import org.junit.platform.engine.discovery.DirectorySelector;
import org.junit.platform.engine.discovery.FileSelector;
import org.junit.platform.engine.discovery.UniqueIdSelector;
import org.setwright.book.BookReader;
import org.setwright.trade.Trade;

/** Finds the books, jobs and points that a request picks. */
final class Discovery {
	private static final String MARK = "book.yaml";
	private final EngineDiscoveryRequest request;
	private final TestDescriptor engine;
	/** By the name of the book's folder, as it was given. */
	private final Map<String, BookTests> books = new LinkedHashMap<>();
	private boolean byClass;

	Discovery(EngineDiscoveryRequest request, TestDescriptor engine) {
		this.request = request;
		this.engine = engine;
	}

	void run() {
		request.getSelectorsByType(DirectorySelector.class).stream().map(DirectorySelector::getRawPath)
				.filter(d -> Files.isRegularFile(Path.of(d, MARK))).forEach(d -> whole(d));
		byClass = request.getSelectorsByType(ClassSelector.class).stream().anyMatch(s -> RuleBookTest.class.isAssignableFrom(s.getJavaClass()));
		if (byClass) {
			named().forEach(this::whole);
		}
		request.getSelectorsByType(FileSelector.class).stream().map(s -> Path.of(s.getRawPath())).forEach(this::job);
		request.getSelectorsByType(UniqueIdSelector.class).stream().map(UniqueIdSelector::getUniqueId).forEach(this::id);
	}

	/** The books that the configuration parameter names; else the current folder. */
	private Stream<String> named() {
		return Stream.of(request.getConfigurationParameters().get(CaseTestEngine.BOOK).orElse(".").split(";")).map(String::strip).filter(b -> !b.isEmpty());
	}

	private void whole(String folder) {
		book(folder).keep((job, point) -> true);
	}

	private void job(Path file) {
		Path jobs = file.toAbsolutePath().normalize().getParent();
		if (jobs != null && jobs.getParent() != null && Files.isRegularFile(jobs.getParent().resolve(MARK))) {
			String path = jobs.getFileName() + "/" + file.getFileName();
			Path given = file.getParent() == null ? null : file.getParent().getParent();
			book(given == null ? given(jobs.getParent()) : given.toString()).keep((job, point) -> job.equals(path));
		}
	}

	private static String given(Path folder) {
		Path here = Path.of("").toAbsolutePath();
		return folder.startsWith(here) ? here.relativize(folder).toString() : folder.toString();
	}

	private void id(UniqueId id) {
		List<Segment> segments = id.getSegments();
		if (!id.getEngineId().equals(Optional.of(CaseTestEngine.ID)) || segments.size() < 2) {
			if (segments.size() == 1 && id.equals(engine.getUniqueId())) {
				named().forEach(this::whole);
			}
			return;
		}
		BiPredicate<String, String> meant = (job, point) -> (segments.size() < 3 || value(segments.get(2)).equals(job))
				&& (segments.size() < 4 || value(segments.get(3)).equals(point));
		book(value(segments.get(1))).keep(meant);
	}

	private static String value(Segment segment) {
		return segment.getValue();
	}

	private BookTests book(String folder) {
		return books.computeIfAbsent(folder, f -> {
			BookTests tests = new BookTests(engine.getUniqueId().append("book", f),
					new Sources(BookReader.read(Path.of(f), Trade.catalogue()), byClass));
			engine.addChild(tests);
			return tests;
		});
	}
}
