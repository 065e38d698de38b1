package org.setwright.check.junit;

import java.util.HashSet;
import java.util.Set;
import org.junit.platform.engine.TestSource;
import org.junit.platform.engine.UniqueId;
import org.junit.platform.engine.support.descriptor.AbstractTestDescriptor;
import org.setwright.book.JobCase;

/** A job as a container of what it expects. */
final class JobTests extends AbstractTestDescriptor {
	private final JobCase job;
	private final Sources sources;
	private final Set<String> kept = new HashSet<>();

	JobTests(UniqueId id, JobCase job, Sources sources) {
		super(id, job.name(), sources.of(job));
		this.job = job;
		this.sources = sources;
	}

	JobCase job() {
		return job;
	}

	/** Adds a test, once. */
	void add(ExpectedPoint point) {
		if (kept.add(point.what())) {
			addChild(new PointTest(getUniqueId().append("point", point.what()), point.what(), sources.of(job, point)));
		}
	}

	@Override
	public Type getType() {
		return Type.CONTAINER;
	}

	@Override
	public String getLegacyReportingName() {
		return job.path();
	}

	/** One thing a job expects. */
	static final class PointTest extends AbstractTestDescriptor {

		PointTest(UniqueId id, String what, TestSource source) {
			super(id, what, source);
		}

		@Override
		public Type getType() {
			return Type.TEST;
		}
	}
}
