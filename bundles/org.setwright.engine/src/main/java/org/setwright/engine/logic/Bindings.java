package org.setwright.engine.logic;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.setwright.engine.language.Condition;
import org.setwright.engine.language.Operand;
import org.setwright.engine.language.Test;
import org.setwright.trade.catalogue.FactKind;
import org.setwright.trade.catalogue.Field;
import org.setwright.trade.catalogue.JobField;

/**
 * The facts and answers that names stand for while one rule is tried. Everything read of the job goes through here, so
 * that it can be told afterwards which places the result rests on.
 */
public final class Bindings {
	/** For those who do not ask which places are read. */
	static final Consumer<JobField> NOBODY = place -> {
	};

	/** Most rules bind nothing: empty until something is bound. */
	private Map<String, JobFacts.Item> facts = Map.of();
	private Map<String, JobFacts.Item> owners = Map.of();
	private final Consumer<JobField> looked;

	/** @param looked gets every place of the job that is read, once or more */
	Bindings(Consumer<JobField> looked) {
		this.looked = looked;
	}

	/** @return what the names stand for once conditions have held by way of {@code steps} */
	public static Bindings after(List<Verdict.Step> steps) {
		Bindings bindings = new Bindings(NOBODY);
		for (Verdict.Step step : steps) {
			if (step.condition() instanceof Condition.Pattern pattern) {
				bindings.pattern(pattern, step.item().orElseThrow());
			}
		}
		return bindings;
	}

	void pattern(Condition.Pattern pattern, JobFacts.Item item) {
		pattern.binding().ifPresent(name -> fact(name, item));
		answers(pattern.test(), item);
	}

	private void answers(Test test, JobFacts.Item item) {
		if (test instanceof Test.Bind bind) {
			answer(bind.variable(), item);
		} else if (test instanceof Test.AllOf all) {
			all.tests().forEach(t -> answers(t, item));
		}
	}

	void fact(String variable, JobFacts.Item item) {
		facts = facts.isEmpty() ? new HashMap<>() : facts;
		facts.put(variable, item);
	}

	void answer(String variable, JobFacts.Item owner) {
		owners = owners.isEmpty() ? new HashMap<>() : owners;
		owners.put(variable, owner);
	}

	/** @return the facts of {@code kind} */
	List<JobFacts.Item> items(JobFacts job, FactKind kind) {
		if (looked != NOBODY) {
			looked.accept(JobField.presence(kind));
		}
		return job.items(kind);
	}

	/** @return the plain answer of {@code item}, or null when unknown */
	Object plain(JobFacts.Item item, Field field) {
		if (looked != NOBODY) {
			looked.accept(item.place(field));
		}
		return item.answer(field);
	}

	/** @return the plain value of {@code operand}, or null when unknown */
	Object plain(Operand operand) {
		return operand instanceof Operand.Literal literal ? literal.value().plain()
				: plain(owner((Operand.Bound) operand), ((Operand.Bound) operand).field());
	}

	/** @return where the answer of {@code bound} stands in the job; empty when its fact has not been met */
	public Optional<JobField> placeOf(Operand.Bound bound) {
		return Optional.ofNullable(owner(bound)).map(o -> o.place(bound.field()));
	}

	/** @return where the answer of {@code bound} stands in the job */
	JobField place(Operand.Bound bound) {
		return owner(bound).place(bound.field());
	}

	private JobFacts.Item owner(Operand.Bound bound) {
		return (bound.ofFact() ? facts : owners).get(bound.variable());
	}
}
