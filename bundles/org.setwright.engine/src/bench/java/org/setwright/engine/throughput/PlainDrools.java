package org.setwright.engine.throughput;

import java.nio.charset.StandardCharsets;
import java.util.BitSet;
import java.util.List;
import java.util.function.Supplier;
import org.kie.api.KieBase;
import org.kie.api.io.ResourceType;
import org.kie.api.runtime.KieSession;
import org.kie.internal.builder.KnowledgeBuilder;
import org.kie.internal.builder.KnowledgeBuilderFactory;
import org.kie.internal.io.ResourceFactory;
import org.setwright.engine.language.Rule;

/** The rules as ordinary DRL, in one base that is compiled once; every job has a session of its own. */
final class PlainDrools {
	private final KieBase base;

	/** @param classes sees the plain classes */
	PlainDrools(List<Rule> rules, ClassLoader classes) {
		KnowledgeBuilder builder = KnowledgeBuilderFactory
				.newKnowledgeBuilder(KnowledgeBuilderFactory.newKnowledgeBuilderConfiguration(null, classes));
		builder.add(ResourceFactory.newByteArrayResource(PlainDrl.of(rules).getBytes(StandardCharsets.UTF_8)), ResourceType.DRL);
		if (builder.hasErrors()) {
			throw new IllegalStateException("plain rules do not compile: " + builder.getErrors());
		}
		base = inLoader(classes, builder::newKieBase);
	}

	/** A base looks its classes up through the thread's loader. */
	private static <T> T inLoader(ClassLoader loader, Supplier<T> work) {
		Thread thread = Thread.currentThread();
		ClassLoader before = thread.getContextClassLoader();
		thread.setContextClassLoader(loader);
		try {
			return work.get();
		} finally {
			thread.setContextClassLoader(before);
		}
	}

	/** @return the numbers of the rules that fire */
	BitSet fired(Object[] facts) {
		KieSession session = base.newKieSession();
		try {
			Marks marks = new Marks();
			session.setGlobal("marks", marks);
			for (Object fact : facts) {
				session.insert(fact);
			}
			session.fireAllRules();
			return marks.all();
		} finally {
			session.dispose();
		}
	}
}
