package org.setwright.book;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.setwright.book.JobCase.DecidedBy;
import org.setwright.book.JobCase.Settled;
import org.setwright.trade.catalogue.CautionKind;
import org.setwright.trade.catalogue.Dimension;
import org.setwright.trade.catalogue.Domain;
import org.setwright.trade.catalogue.Quantity;
import org.setwright.trade.catalogue.Setting;
import org.setwright.trade.catalogue.StartUpPhase;
import org.setwright.trade.catalogue.Unit;

/** Makes what {@link RandomJobs} expects besides values, and what was accepted. */
final class RandomExpectations {
	private static final List<String> WORDS = List.of("line voltage at the wall", "Smell gas: leave", "it's \"so\"", "a, b", "# no", "{ odd }", "more than 30 V");
	private static final List<String> RULES = List.of("Nobody has looked: take cooling, and check", "table changeover-by-maker, row 1", "table floors", "It's \"so\"", "[x]");
	private final RandomJobs jobs;

	RandomExpectations(RandomJobs jobs) {
		this.jobs = jobs;
	}

	List<ExpectedItem> items() {
		List<ExpectedItem> items = new ArrayList<>();
		for (int i = jobs.random.nextInt(6) - 1; i > 0; i--) {
			ExpectedItem item = item();
			if (items.stream().noneMatch(item::same)) {
				items.add(item);
			}
		}
		return items;
	}

	private ExpectedItem item() {
		Position at = Position.whole(RandomJobs.PATH);
		ItemList list = jobs.pick(List.of(ItemList.values()));
		boolean other = !list.appears() && jobs.random.nextInt(4) == 0;
		return switch (list.topic()) {
			case CAUTIONS -> other ? new ExpectedCaution(false, Optional.empty(), "", true, at) : caution(list);
			case START_UP -> jobs.random.nextInt(3) == 0 ? ExpectedCheck.by(list, jobs.pick(RULES), at) : new ExpectedCheck(list,
					other || jobs.random.nextInt(5) == 0 ? Optional.empty() : Optional.of(jobs.pick(List.of(StartUpPhase.values()))),
					other || jobs.random.nextInt(3) == 0 ? "" : jobs.pick(WORDS), false, other, at);
			case FINDINGS -> new ExpectedFinding(list.appears(), jobs.pick(List.of("DUAL_FUEL_JOB", "two transformers", "any")), other, at);
		};
	}

	private ExpectedCaution caution(ItemList list) {
		Optional<CautionKind> kind = jobs.random.nextInt(5) == 0 ? Optional.empty() : Optional.of(jobs.pick(List.of(CautionKind.values())));
		return new ExpectedCaution(list.appears(), kind, jobs.random.nextInt(3) == 0 ? "" : jobs.pick(WORDS), Position.whole(RandomJobs.PATH));
	}

	List<Acceptance> accepted() {
		List<Acceptance> accepted = new ArrayList<>();
		for (int i = jobs.random.nextInt(5) - 2; i > 0; i--) {
			accepted.add(acceptance());
		}
		return accepted;
	}

	private Acceptance acceptance() {
		return new Acceptance(jobs.pick(List.copyOf(jobs.catalogue.settings())).label(), jobs.pick(WORDS), jobs.pick(WORDS),
				LocalDate.of(2026, 1, 1).plusDays(jobs.random.nextInt(700)), jobs.pick(List.of("Dana Reyes", "O'Dell, Ltd")), jobs.pick(WORDS));
	}

	/** The same with a tolerance, with a rule, or with both. */
	JobCase.Expectation particular(Setting setting, Settled settled) {
		Settled within = tolerance(setting.domain()).map(t -> new Settled(settled.value(), Optional.of(t), settled.at())).orElse(settled);
		return switch (jobs.random.nextInt(3)) {
			case 0 -> within;
			case 1 -> new DecidedBy(Optional.of(within), jobs.pick(RULES), settled.at());
			default -> new DecidedBy(Optional.empty(), jobs.pick(RULES), settled.at());
		};
	}

	private Optional<Quantity> tolerance(Domain domain) {
		double number = (1 + jobs.random.nextInt(40)) / 4.0;
		if (domain instanceof Domain.Measure measure) {
			Dimension dimension = measure.unit().dimension();
			return Optional.of(new Quantity(number, jobs.pick(Unit.measuring(dimension == Dimension.TEMPERATURE ? Dimension.TEMPERATURE_DIFFERENCE : dimension))));
		}
		return domain instanceof Domain.Whole ? Optional.of(new Quantity(Math.ceil(number), Unit.NONE)) : Optional.empty();
	}

	JobEdit edit(JobCase job) {
		return switch (jobs.random.nextInt(3)) {
			case 0 -> new JobEdit.Accepted(acceptance());
			case 1 -> job.items().isEmpty() ? new JobEdit.ItemExpected(item()) : new JobEdit.ItemNotExpected(jobs.pick(job.items()));
			default -> new JobEdit.ItemExpected(item());
		};
	}
}
