package org.setwright.engine.synthetic;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.setwright.book.Book;
import org.setwright.trade.Trade;
import org.setwright.trade.catalogue.Authority;
import org.setwright.trade.catalogue.Setting;

/**
 * A rule book of any size. Its rules have the shapes of those of the starter book in about the same shares: one condition
 * in half of the rules, two in most others; every third rule asks for a finding, every fifteenth makes one; half propose,
 * the rest warn or ask for a check at start-up. They read stated facts only and never ask whether an answer is known.
 */
public final class SyntheticBook {
	private static final int FILE_LENGTH = 50;
	private static final int FINDING_EVERY = 15;

	private final Random random;
	private final List<Setting> settings = List.copyOf(Trade.catalogue().settings());
	private final List<String> findings = new ArrayList<>();

	private SyntheticBook(long seed) {
		random = new Random(seed);
	}

	/**
	 * @param rules how many, from 1
	 * @param seed the same seed gives the same book
	 * @return a book without jobs, in files of fifty rules; it stands in no folder
	 */
	public static Book of(int rules, long seed) {
		List<String> files = new SyntheticBook(seed).files(rules);
		List<Book.RuleFile> ruleFiles = new ArrayList<>();
		for (int i = 0; i < files.size(); i++) {
			ruleFiles.add(new Book.RuleFile("rules/made-up-" + (i + 1) + ".drl", files.get(i)));
		}
		return new Book(Path.of("").toAbsolutePath(), "Made up", Trade.catalogue(), ruleFiles, List.of(), List.of());
	}

	private List<String> files(int rules) {
		List<String> files = new ArrayList<>();
		StringBuilder file = new StringBuilder();
		for (int i = 0; i < rules; i++) {
			file.append(rule(i));
			if (i % FILE_LENGTH == FILE_LENGTH - 1 || i == rules - 1) {
				files.add(file.toString());
				file.setLength(0);
			}
		}
		return files;
	}

	private String rule(int number) {
		boolean makesFinding = number % FINDING_EVERY == 0;
		SyntheticConditions conditions = new SyntheticConditions(random, List.copyOf(findings), makesFinding);
		String when = String.join("\n    ", conditions.some());
		String then = makesFinding ? "find( FINDING_" + number + " );" : action(number);
		if (makesFinding) {
			findings.add("FINDING_" + number);
		}
		return "rule \"Rule " + number + "\"\n    @authority( \"" + authority() + "\" )\n    @because( \"Made up to measure with.\" )\n"
				+ "    @source( common practice )\nwhen\n    " + when + "\nthen\n    " + then + "\nend\n\n";
	}

	private String authority() {
		Authority[] all = Authority.values();
		return all[random.nextInt(all.length)].label();
	}

	private String action(int number) {
		int pick = random.nextInt(10);
		if (pick < 2) {
			return "startUp( FAN, \"Call for {setting " + setting().id() + "}.\", \"Lamp " + number + " lights.\", \"Stop.\" );";
		} else if (pick < 5) {
			return "caution( NOTE, \"Look at place " + number + ".\" );";
		}
		Setting setting = setting();
		String proposal = "propose( " + setting.id() + ", " + Answers.written(Answers.any(setting.domain(), random)) + " );";
		return pick < 8 ? proposal : proposal + "\n    caution( CHECK_AT_START_UP, \"Prove entry " + number + ".\" );";
	}

	private Setting setting() {
		return settings.get(random.nextInt(settings.size()));
	}
}
