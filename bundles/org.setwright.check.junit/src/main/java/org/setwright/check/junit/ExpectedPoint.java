package org.setwright.check.junit;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.setwright.book.JobCase;
import org.setwright.book.Position;
import org.setwright.check.cases.CheckedJob;
import org.setwright.check.cases.ItemPoint;

/** Something a job expects, before the job has run. @param what as a checked point calls it @param at where it stands */
record ExpectedPoint(String what, Position at) {

	/** @return everything {@code job} expects, in the order a check lists it */
	static List<ExpectedPoint> of(JobCase job) {
		Stream<ExpectedPoint> settings = job.expected().keySet().stream().map(s -> CheckedJob.of(job, s, Optional.empty()))
				.map(p -> new ExpectedPoint(p.what(), p.at()));
		Stream<ExpectedPoint> items = job.items().stream().map(i -> new ItemPoint(i, List.of())).map(p -> new ExpectedPoint(p.what(), p.at()));
		return Stream.concat(settings, items).toList();
	}
}
