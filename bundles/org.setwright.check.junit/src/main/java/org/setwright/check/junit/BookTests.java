package org.setwright.check.junit;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.BiPredicate;
import org.junit.platform.engine.UniqueId;
import org.junit.platform.engine.support.descriptor.AbstractTestDescriptor;
import org.setwright.book.Book;
import org.setwright.book.JobCase;

/** A rule book as a container of its jobs. */
final class BookTests extends AbstractTestDescriptor {
	private static final String SOUND = "the book has no errors";
	private final Sources sources;
	private final Map<String, JobTests> jobs = new LinkedHashMap<>();

	BookTests(UniqueId id, Sources sources) {
		super(id, sources.book().name(), sources.ofBook());
		this.sources = sources;
		addChild(new SoundTest(id.append("sound", SOUND), sources));
	}

	Book book() {
		return sources.book();
	}

	/** Keeps what is meant, beside what was kept before. @param meant told the path of a job and what a point is about */
	void keep(BiPredicate<String, String> meant) {
		for (JobCase job : book().jobs()) {
			for (ExpectedPoint point : ExpectedPoint.of(job)) {
				if (meant.test(job.path(), point.what())) {
					jobs.computeIfAbsent(job.path(), p -> newJob(job)).add(point);
				}
			}
		}
	}

	private JobTests newJob(JobCase job) {
		JobTests tests = new JobTests(getUniqueId().append("job", job.path()), job, sources);
		addChild(tests);
		return tests;
	}

	@Override
	public Type getType() {
		return Type.CONTAINER;
	}

	/** Whether the book can run at all. */
	static final class SoundTest extends AbstractTestDescriptor {

		SoundTest(UniqueId id, Sources sources) {
			super(id, SOUND, sources.ofSoundness(SOUND));
		}

		@Override
		public Type getType() {
			return Type.TEST;
		}
	}
}
