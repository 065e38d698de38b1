package org.setwright.check.junit;

import org.junit.platform.engine.EngineDiscoveryRequest;
import org.junit.platform.engine.ExecutionRequest;
import org.junit.platform.engine.TestDescriptor;
import org.junit.platform.engine.TestEngine;
import org.junit.platform.engine.UniqueId;
import org.junit.platform.engine.support.descriptor.EngineDescriptor;

/**
 * Runs the job cases of rule books: a book is a container, each of its jobs a container in it, each thing a job expects a
 * test. Whether the book has errors is a test too.
 *
 * <p>Books are picked by directory, by the class {@link RuleBookTest} together with the configuration parameter
 * {@value #BOOK}, by a job's file, or by unique id.
 */
public final class CaseTestEngine implements TestEngine {
	/** The configuration parameter that names the folder of the rule book; of several, with semicolons between. */
	public static final String BOOK = "setwright.book";
	/** The engine's name. */
	public static final String ID = "setwright";

	@Override
	public String getId() {
		return ID;
	}

	@Override
	public TestDescriptor discover(EngineDiscoveryRequest request, UniqueId uniqueId) {
		EngineDescriptor engine = new EngineDescriptor(uniqueId, "Setwright job cases");
		new Discovery(request, engine).run();
		return engine;
	}

	@Override
	public void execute(ExecutionRequest request) {
		new Execution(request.getEngineExecutionListener()).run(request.getRootTestDescriptor());
	}
}
