package org.setwright.command;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ScopeType;
import picocli.CommandLine.Spec;

/** The program without a word: help, version, and the options that go with every word. */
@Command(name = "setwright", version = "Setwright 0.1.0", mixinStandardHelpOptions = true,
		description = "Shows what to set on a wall controller, by a shop's own rules, and which rule says so.%n",
		footer = { "", "It ends with 0 when all is well, 1 when the book has errors or a job does not come to what it expects,",
				"2 when the words make no sense, 3 when it could not run." })
final class Words implements Runnable {
	@Spec
	private CommandSpec spec;

	@Option(names = "--debug", scope = ScopeType.INHERIT, description = "Show the technical details of an unexpected failure.")
	private boolean debug;

	/** @return whether the user wants to see stack traces */
	boolean debug() {
		return debug;
	}

	@Override
	public void run() {
		throw new ParameterException(spec.commandLine(),
				"Say what to show: jobs, setup, landing, startup, why, silent, instead, matters, apart, read, check, accept, coverage, strength, import, export, "
				+ "editions, keep, changes, answers, since, restore, trial, join, receive, send, remark, review, sign, verify, words or bench.");
	}
}
