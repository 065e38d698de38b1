package org.setwright.command;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.concurrent.Callable;
import org.setwright.command.answer.ExitCode;
import org.setwright.command.answer.Refusal;
import org.setwright.command.asking.ApartCommand;
import org.setwright.command.asking.InsteadCommand;
import org.setwright.command.asking.MattersCommand;
import org.setwright.command.asking.SilentCommand;
import org.setwright.command.bench.BenchCommand;
import org.setwright.command.check.AcceptCommand;
import org.setwright.command.check.CheckCommand;
import org.setwright.command.editions.AnswersCommand;
import org.setwright.command.editions.ChangesCommand;
import org.setwright.command.editions.EditionsCommand;
import org.setwright.command.editions.JoinCommand;
import org.setwright.command.editions.KeepCommand;
import org.setwright.command.editions.ReceiveCommand;
import org.setwright.command.editions.RemarkCommand;
import org.setwright.command.editions.RestoreCommand;
import org.setwright.command.editions.ReviewCommand;
import org.setwright.command.editions.SendCommand;
import org.setwright.command.editions.SignCommand;
import org.setwright.command.editions.SinceCommand;
import org.setwright.command.editions.TrialCommand;
import org.setwright.command.editions.VerifyCommand;
import org.setwright.command.fitness.CoverageCommand;
import org.setwright.command.fitness.StrengthCommand;
import org.setwright.command.history.ExportCommand;
import org.setwright.command.history.ImportCommand;
import org.setwright.command.jobs.JobsCommand;
import org.setwright.command.landing.LandingCommand;
import org.setwright.command.reading.ReadCommand;
import org.setwright.command.setup.SetupCommand;
import org.setwright.command.startup.StartupCommand;
import org.setwright.command.terminal.Surroundings;
import org.setwright.command.why.WhyCommand;
import org.setwright.command.words.WordsCommand;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine;

/** Where the program starts. */
public final class Main {
	private Main() {
	}

	/** Runs the words given and ends the process with their exit code. */
	public static void main(String[] words) {
		System.exit(run(Surroundings.ofProcess(), words));
	}

	/**
	 * Runs the words given.
	 *
	 * @param at where to look and print
	 * @param words as typed
	 * @return one of {@link ExitCode}
	 */
	public static int run(Surroundings at, String... words) {
		Words top = new Words();
		try {
			return commandLine(top, at).execute(words);
		} catch (VirtualMachineError | LinkageError beyondRepair) {
			return new Failure(at, top.debug()).tell(beyondRepair);
		}
	}

	private static CommandLine commandLine(Words top, Surroundings at) {
		CommandLine commandLine = new CommandLine(top);
		List<Callable<Integer>> all = List.of(new JobsCommand(at), new SetupCommand(at), new LandingCommand(at),
				new StartupCommand(at), new WhyCommand(at), new SilentCommand(at), new InsteadCommand(at), new MattersCommand(at),
				new ApartCommand(at), new ReadCommand(at), new CheckCommand(at), new AcceptCommand(at), new CoverageCommand(at),
				new StrengthCommand(at), new ImportCommand(at), new ExportCommand(at), new EditionsCommand(at), new KeepCommand(at), new ChangesCommand(at),
				new AnswersCommand(at), new SinceCommand(at), new RestoreCommand(at), new TrialCommand(at), new JoinCommand(at), new ReceiveCommand(at),
				new SendCommand(at), new RemarkCommand(at), new ReviewCommand(at), new SignCommand(at), new VerifyCommand(at), new WordsCommand(at),
				new BenchCommand(at));
		all.forEach(commandLine::addSubcommand);
		commandLine.getSubcommands().values().forEach(c -> c.getCommandSpec().mixinStandardHelpOptions(true));
		return commandLine.setCommandName(at.name()).setOut(new PrintWriter(at.out(), true, StandardCharsets.UTF_8))
				.setErr(new PrintWriter(at.err(), true)).setUsageHelpWidth(at.columns())
				.setColorScheme(CommandLine.Help.defaultColorScheme(at.colour() ? Ansi.ON : Ansi.OFF))
				.setCaseInsensitiveEnumValuesAllowed(true).setParameterExceptionHandler((e, given) -> new WrongUsage(at).tell(e))
				.setExecutionExceptionHandler((e, line, parsed) -> failed(at, top, e));
	}

	private static int failed(Surroundings at, Words top, Exception e) {
		if (e instanceof Refusal refusal) {
			at.err().println(at.name() + ": " + refusal.getMessage());
			return refusal.exitCode();
		}
		return new Failure(at, top.debug()).tell(e);
	}
}
