package org.setwright.book;

import org.setwright.trade.catalogue.Answer;
import org.setwright.trade.catalogue.FactKind;
import org.setwright.trade.catalogue.Job;
import org.setwright.trade.catalogue.JobField;
import org.setwright.trade.catalogue.Setting;
import org.setwright.trade.catalogue.Value;

/** One change somebody makes to a job case. */
public sealed interface JobEdit {

	/**
	 * A question is answered, or its answer is taken back. A fact that the job did not have is there afterwards.
	 *
	 * @param at with a field; its item may be one past the last, which adds one
	 * @param answer of the field's domain
	 */
	record Answered(JobField at, Answer<Value> answer) implements JobEdit {
		public Answered {
			if (at.field().isEmpty() || at.item() > 0 && !at.kind().many()) {
				throw new IllegalArgumentException("an answer belongs to a field of a fact");
			}
		}
	}

	/**
	 * Somebody says whether there is any fact of a kind. Present when there was none means one of which nothing else is
	 * known; present when there is one already changes nothing.
	 */
	record Fitted(FactKind kind, Job.Presence presence) implements JobEdit {
	}

	/** One more fact of a kind, nothing known of it. @param kind one a job may have several of */
	record Added(FactKind kind) implements JobEdit {
	}

	/** A fact is taken out. @param kind one a job may have several of @param item from 0; not the only one */
	record Removed(FactKind kind, int item) implements JobEdit {
	}

	/** The job is called something else. @param name one line, not blank */
	record Named(String name) implements JobEdit {
	}

	/** The notes are written anew. @param notes may be empty */
	record Noted(String notes) implements JobEdit {
	}

	/** A setting is expected to come to something. @param expectation its place counts for nothing */
	record Expected(Setting setting, JobCase.Expectation expectation) implements JobEdit {
	}

	/** Something besides settings is expected, to be there or not to be. @param item its place counts for nothing */
	record ItemExpected(ExpectedItem item) implements JobEdit {
	}

	/** That is no longer expected. @param item its place counts for nothing */
	record ItemNotExpected(ExpectedItem item) implements JobEdit {
	}

	/** Somebody's acceptance of a new outcome is noted. */
	record Accepted(Acceptance acceptance) implements JobEdit {
	}

	/** Nothing is expected of a setting any more. */
	record NotExpected(Setting setting) implements JobEdit {
	}
}
