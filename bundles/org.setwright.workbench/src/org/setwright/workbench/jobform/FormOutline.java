package org.setwright.workbench.jobform;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.eclipse.osgi.util.NLS;
import org.setwright.book.JobCase;
import org.setwright.trade.catalogue.Catalogue;
import org.setwright.trade.catalogue.Fact;
import org.setwright.trade.catalogue.FactKind;
import org.setwright.trade.catalogue.Field;
import org.setwright.trade.catalogue.Job;
import org.setwright.workbench.jobform.FormNode.AboutJob;
import org.setwright.workbench.jobform.FormNode.Expectations;
import org.setwright.workbench.jobform.FormNode.OfKind;
import org.setwright.workbench.jobform.FormNode.Sign;

/** Turns a job into the outline of its form: every kind of fact that is asked for, with how much of it is known. */
final class FormOutline {
	private FormOutline() {
	}

	static List<FormNode> of(Catalogue catalogue, JobCase job) {
		List<FormNode> nodes = new ArrayList<>();
		nodes.add(new FormNode(new AboutJob(), Sign.JOB, Messages.FormOutline_job, "", List.of())); //$NON-NLS-1$
		catalogue.kinds().stream().filter(k -> !k.calculated()).forEach(k -> nodes.add(kind(k, job.job().entry(k))));
		nodes.add(new FormNode(new Expectations(), Sign.VERIFY, Messages.FormOutline_expected,
				job.expectations() == 0 ? "" : Integer.toString(job.expectations()), List.of())); //$NON-NLS-1$
		return nodes;
	}

	private static FormNode kind(FactKind kind, Job.Entry entry) {
		OfKind page = new OfKind(kind, Optional.empty());
		return switch (entry.presence()) {
			case UNKNOWN -> new FormNode(page, Sign.UNKNOWN, kind.key(), Messages.FormOutline_unknown, List.of());
			case NONE -> new FormNode(page, Sign.NONE, kind.key(), Messages.FormOutline_none, List.of());
			case PRESENT -> kind.many() ? list(kind, entry.facts()) : fact(page, kind.key(), kind, entry.facts().get(0));
		};
	}

	private static FormNode list(FactKind kind, List<Fact> facts) {
		List<FormNode> items = IntStream.range(0, facts.size())
				.mapToObj(i -> fact(new OfKind(kind, Optional.of(i)), title(kind, i, facts.get(i)), kind, facts.get(i))).toList();
		boolean allKnown = items.stream().allMatch(n -> n.sign() == Sign.KNOWN);
		return new FormNode(new OfKind(kind, Optional.empty()), allKnown ? Sign.KNOWN : Sign.PARTLY_KNOWN, kind.key(),
				Integer.toString(facts.size()), items);
	}

	/** @return for example "wire 3, blue" */
	static String title(FactKind kind, int item, Fact fact) {
		String number = NLS.bind(Messages.FormOutline_item, kind.label(), item + 1);
		return kind.fields().stream().filter(Field::naming).findFirst().flatMap(f -> kind.answer(fact, f).value())
				.map(v -> NLS.bind(Messages.FormOutline_itemNamed, number, v.text())).orElse(number);
	}

	private static FormNode fact(OfKind page, String text, FactKind kind, Fact fact) {
		long asked = kind.fields().stream().filter(f -> f.calculation().isEmpty()).count();
		long known = kind.fields().stream().filter(f -> f.calculation().isEmpty() && kind.answer(fact, f).isKnown()).count();
		Sign sign = known == asked ? Sign.KNOWN : known == 0 ? Sign.UNKNOWN : Sign.PARTLY_KNOWN;
		return new FormNode(page, sign, text, NLS.bind(Messages.FormOutline_known, known, asked), List.of());
	}
}
