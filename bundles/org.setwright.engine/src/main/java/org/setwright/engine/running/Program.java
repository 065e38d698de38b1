package org.setwright.engine.running;

import java.nio.charset.StandardCharsets;
import java.util.BitSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.kie.api.KieBase;
import org.kie.api.definition.type.FactType;
import org.kie.api.io.ResourceType;
import org.kie.api.runtime.KieSession;
import org.kie.internal.builder.KnowledgeBuilder;
import org.kie.internal.builder.KnowledgeBuilderConfiguration;
import org.kie.internal.builder.KnowledgeBuilderFactory;
import org.kie.internal.io.ResourceFactory;
import org.setwright.engine.language.Condition;
import org.setwright.engine.language.FindingOrder;
import org.setwright.engine.language.Rule;
import org.setwright.engine.logic.JobFacts;
import org.setwright.trade.catalogue.Catalogue;
import org.setwright.trade.catalogue.FactKind;

/**
 * Checked rules compiled for Drools: decides which rules fire on a job. The only class besides its helpers that touches
 * Drools. Thread-safe.
 */
public final class Program implements Decides {
	private final List<List<String>> finds;
	private final KieBase base;
	private final Map<FactKind, FactType> types = new HashMap<>();
	/** The kinds some rule asks for; facts of others need not be laid out. */
	private final Set<FactKind> asked;
	/** The kinds that some condition asks for in its possible form; what may not even be there can meet no other. */
	private final Set<FactKind> askedPossibly = new HashSet<>();

	private Program(List<Rule> rules, KieBase base, Set<FactKind> asked) {
		finds = rules.stream().map(Rule::finds).toList();
		this.base = base;
		this.asked = asked;
		asked.forEach(k -> types.put(k, base.getFactType(DrlWriter.PACKAGE, DrlWriter.type(k))));
		for (Rule rule : rules) {
			rule.when().forEach(c -> askPossibly(c, true));
			if (!rule.finds().isEmpty()) {
				rule.when().forEach(c -> askPossibly(c, false));
			}
		}
	}

	/** Follows {@link ConditionWriter}: what is below not is written in the other form. */
	private void askPossibly(Condition condition, boolean certain) {
		if (!certain && condition instanceof Condition.Pattern pattern) {
			askedPossibly.add(pattern.kind());
		}
		condition.inner().forEach(c -> askPossibly(c, condition instanceof Condition.Not ? !certain : certain));
	}

	private boolean matters(JobFacts.Item item) {
		return (item.phantom() ? askedPossibly : asked).contains(item.kind());
	}

	private static void ask(Condition condition, Set<FactKind> asked) {
		if (condition instanceof Condition.Pattern pattern) {
			asked.add(pattern.kind());
		}
		condition.inner().forEach(inner -> ask(inner, asked));
	}

	/**
	 * Compiles checked rules.
	 *
	 * @throws IllegalStateException when Drools refuses them: a fault of this program, never of the book
	 */
	public static Program compile(List<Rule> rules, FindingOrder order, Catalogue catalogue) {
		return inOwnLoader(() -> {
			KnowledgeBuilderConfiguration configuration = KnowledgeBuilderFactory.newKnowledgeBuilderConfiguration(null,
					Program.class.getClassLoader());
			KnowledgeBuilder builder = KnowledgeBuilderFactory.newKnowledgeBuilder(configuration);
			Set<FactKind> asked = new HashSet<>();
			rules.forEach(r -> r.when().forEach(c -> ask(c, asked)));
			byte[] drl = DrlWriter.write(rules, order, catalogue.kinds().stream().filter(asked::contains).toList()).getBytes(StandardCharsets.UTF_8);
			builder.add(ResourceFactory.newByteArrayResource(drl), ResourceType.DRL);
			if (builder.hasErrors()) {
				throw new IllegalStateException("the rule engine refuses checked rules: " + builder.getErrors());
			}
			return new Program(rules, builder.newKieBase(), asked);
		});
	}

	@Override
	public BitSet fired(JobFacts job) {
		return inOwnLoader(() -> {
			KieSession session = base.newKieSession();
			try {
				Desk desk = new Desk(finds, session);
				session.setGlobal("desk", desk);
				job.all().stream().filter(this::matters).forEach(item -> session.insert(fact(item)));
				session.fireAllRules(desk);
				return desk.fired();
			} finally {
				session.dispose();
			}
		});
	}

	/** Sets unknown answers to null by hand: the engine's own new facts would hold zero and false there. */
	private Object fact(JobFacts.Item item) {
		FactType type = types.get(item.kind());
		try {
			Object fact = type.newInstance();
			type.set(fact, "phantom", item.phantom());
			for (int i = 0; i < item.answers().length; i++) {
				type.set(fact, DrlWriter.field(item.kind().fields().get(i)), item.answers()[i]);
			}
			return fact;
		} catch (InstantiationException | IllegalAccessException impossible) {
			throw new IllegalStateException("cannot make " + item.kind().name(), impossible);
		}
	}

	/** Drools finds its own parts through the thread's context loader, which inside a workbench is another bundle's. */
	private static <T> T inOwnLoader(java.util.function.Supplier<T> work) {
		Thread thread = Thread.currentThread();
		ClassLoader before = thread.getContextClassLoader();
		thread.setContextClassLoader(Program.class.getClassLoader());
		try {
			return work.get();
		} finally {
			thread.setContextClassLoader(before);
		}
	}
}
