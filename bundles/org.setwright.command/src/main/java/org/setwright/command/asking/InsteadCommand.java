package org.setwright.command.asking;

import java.util.List;
import org.setwright.book.JobCase;
import org.setwright.command.answer.Refusal;
import org.setwright.command.answer.Report;
import org.setwright.command.opening.OpenBook;
import org.setwright.command.terminal.Style;
import org.setwright.command.terminal.Surroundings;
import org.setwright.engine.Edition;
import org.setwright.engine.Inquiry;
import org.setwright.engine.whynot.WhyNot;
import org.setwright.trade.catalogue.Setting;
import org.setwright.trade.catalogue.Value;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Tells why a setting does not come to another value, and what would have to be different. */
@Command(name = "instead", description = "Show why a setting does not come to another value, and what would change that.")
public final class InsteadCommand extends JobQuestion {
	@Parameters(index = "1", paramLabel = "SETTING", description = "The setting's name, or a part of it.")
	private String setting;
	@Parameters(index = "2", paramLabel = "VALUE", description = "The value that was expected instead.")
	private String value;

	/** @param surroundings where the program runs */
	public InsteadCommand(Surroundings surroundings) {
		super(surroundings);
	}

	@Override
	protected Report report(OpenBook open, Edition edition, JobCase jobCase) {
		Setting asked = open.setting(setting);
		Value wanted = asked.domain().read(value).orElseThrow(() -> Refusal.wrongUsage(
				"\"" + value + "\" is not a value of " + asked.label() + ". Write " + asked.domain().allowed() + "."));
		Inquiry inquiry = edition.about(jobCase.job());
		String now = inquiry.outcome().setting(asked).flatMap(s -> s.value()).map(v -> "comes to " + v.text()).orElse("has no value");
		Steps steps = new Steps().add(0, "now", Style.PLAIN, asked.label() + " " + now + " on this job", "");
		List<WhyNot> rules = inquiry.whyNot(asked, wanted);
		steps.add(0, "heading", Style.STRONG, "Rules that could say " + wanted.text(), "");
		for (WhyNot why : rules) {
			steps.rule(1, why, jobCase);
			inquiry.outcome().setting(asked).stream().flatMap(s -> s.proposals().stream()).filter(p -> p.rule() == why.rule())
					.forEach(p -> steps.add(2, "says", Style.PLAIN, "on this job it says " + p.value().text(), ""));
		}
		if (rules.isEmpty()) {
			steps.add(1, "none", Style.PLAIN, "No rule of this book ever says " + wanted.text() + " for " + asked.label() + ".", "");
		}
		steps.changes(inquiry.toSettle(asked, wanted, new Patience()), jobCase, asked.label() + " would come to " + wanted.text());
		return new OutlineReport("instead", open, jobCase, jobCase.name() + ": why not " + asked.label() + " " + wanted.text() + "?",
				steps.all());
	}
}
