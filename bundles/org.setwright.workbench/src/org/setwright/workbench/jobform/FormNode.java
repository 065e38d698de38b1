package org.setwright.workbench.jobform;

import java.util.List;
import java.util.Optional;
import org.setwright.trade.catalogue.FactKind;
import org.setwright.trade.catalogue.JobField;

/**
 * One line of the form's outline, and one page of the form.
 *
 * @param page which page it opens
 * @param sign which sign stands before it
 * @param text the line
 * @param remark what stands after it, quieter; may be empty
 * @param children the single facts, where a job may have several
 */
record FormNode(Page page, Sign sign, String text, String remark, List<FormNode> children) {
	FormNode {
		children = List.copyOf(children);
	}

	/** The sign before a line. */
	enum Sign {
		JOB, KNOWN, PARTLY_KNOWN, UNKNOWN, NONE, VERIFY
	}

	/** What a page is about; two pages about the same are the same page. */
	sealed interface Page {
	}

	/** The job's name and notes. */
	record AboutJob() implements Page {
	}

	/** What the job is expected to come to. */
	record Expectations() implements Page {
	}

	/** A kind of fact. @param item which of several; empty for the kind as a whole */
	record OfKind(FactKind kind, Optional<Integer> item) implements Page {

		/** @return the page that asks {@code field} */
		static OfKind asking(JobField field) {
			boolean single = field.kind().many() && field.field().isPresent();
			return new OfKind(field.kind(), single ? Optional.of(field.item()) : Optional.empty());
		}
	}
}
