package org.setwright.bench.words;

import java.util.List;

/**
 * A word of the bench's own.
 *
 * @param word how the line begins, in small letters
 * @param goesOn what follows it, in capitals; empty when nothing does
 * @param meaning what it does, one sentence
 * @param group the heading it is listed under
 */
public record BenchWord(String word, String goesOn, String meaning, String group) {
	private static final String SAY = "State or change something";
	private static final String ASK = "Ask";
	private static final String KEEP = "Keep, take back, leave";

	/** Every word there is, in the order they are listed. */
	public static final List<BenchWord> ALL = List.of(
			new BenchWord("rule", "\"NAME\" ... end", "Tries a rule, over as many lines as it needs; one of the same name is redefined.", SAY),
			new BenchWord("drop", "RULE", "Takes a rule out of force.", SAY),
			new BenchWord("not fitted", ": KIND, KIND", "Says that there is none of these.", SAY),
			new BenchWord("job", "JOB", "Puts another saved job on the bench; rules that were tried stay in force.", SAY),
			new BenchWord("no job", "", "Puts a job on the bench of which nothing is known.", SAY),
			new BenchWord("expect", "SETTING: VALUE", "Says what a setting should come to; what it comes to now, when no value is given.", SAY),
			new BenchWord("expect caution", "KIND: WORDS", "Says that a caution should be raised; so do expect no caution, start-up check, finding.", SAY),
			new BenchWord("expect nothing of", "SETTING", "No longer expects anything of a setting.", SAY),
			new BenchWord("settled", "", "Lists the settings that are settled, and which rule says so.", ASK),
			new BenchWord("open", "", "Lists the settings in dispute, without a value, or perhaps needed.", ASK),
			new BenchWord("unknown", "", "Lists what is still to find out, and what it could change.", ASK),
			new BenchWord("cautions", "", "Lists the cautions that are raised.", ASK),
			new BenchWord("findings", "", "Lists what rules concluded on the way.", ASK),
			new BenchWord("start-up", "", "Lists what to prove when the equipment is started.", ASK),
			new BenchWord("facts", "", "Lists what is known of the job.", ASK),
			new BenchWord("calculations", "", "Lists everything that can be worked out, with formula and source.", ASK),
			new BenchWord("rules", "", "Lists the rules that were tried, and those that speak or are held open.", ASK),
			new BenchWord("expected", "", "Lists what the job expects, and whether it comes to it.", ASK),
			new BenchWord("why", "SETTING or RULE", "Shows the reasons behind a setting, or what became of a rule.", ASK),
			new BenchWord("why not", "SETTING: VALUE", "Shows why a setting does not come to a value, or why a rule is silent.", ASK),
			new BenchWord("what would give", "SETTING: VALUE", "Looks for the smallest changes by which a setting comes to a value.", ASK),
			new BenchWord("what would make", "RULE speak", "Looks for the smallest changes by which a rule speaks.", ASK),
			new BenchWord("what would change", "SETTING", "Tells which single answers, were they wrong, would change a setting.", ASK),
			new BenchWord("what matters", "", "Tells which single answers, were they wrong, would change most settings.", ASK),
			new BenchWord("other jobs", "", "Tells on which saved jobs the rules that were tried change a setting.", ASK),
			new BenchWord("keep rule", "RULE in FILE", "Writes a rule that was tried into a file of the book.", KEEP),
			new BenchWord("keep job as", "NAME", "Writes the job on the bench into a new file.", KEEP),
			new BenchWord("keep job", "", "Writes what was changed into the job's own file.", KEEP),
			new BenchWord("keep expectation", "SETTING", "Writes into the job's file that it comes to what it comes to now.", KEEP),
			new BenchWord("keep expectations", "", "Writes what was expected here into the job's file.", KEEP),
			new BenchWord("undo", "", "Takes the last line back that changed something.", KEEP),
			new BenchWord("redo", "", "Does again what was taken back.", KEEP),
			new BenchWord("lines", "", "Lists the lines that are in force, ready to be saved.", KEEP),
			new BenchWord("save lines to", "FILE", "Writes these lines into a file.", KEEP),
			new BenchWord("replay", "FILE", "Goes through the lines of a file.", KEEP),
			new BenchWord("words", "", "Lists these words.", KEEP),
			new BenchWord("leave", "", "Leaves the bench; what is not kept is gone.", KEEP));
}
