package org.setwright.writing.uses;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.regex.PatternSyntaxException;
import org.setwright.book.Book;
import org.setwright.book.ExpectedCheck;
import org.setwright.book.ExpectedFinding;
import org.setwright.book.ExpectedItem;
import org.setwright.book.JobCase;
import org.setwright.book.JobCase.DecidedBy;
import org.setwright.book.JobEdit;
import org.setwright.book.JobNotWritten;
import org.setwright.trade.catalogue.Answer;
import org.setwright.trade.catalogue.JobField;
import org.setwright.trade.catalogue.Value;
import org.setwright.writing.Manuscript;
import org.setwright.writing.text.TextEdit;

/** Gives a finding, a rule, or a setting or value of the shop's own another name, in rules, tables, settings and jobs alike. */
public final class Renaming {
	private static final Pattern FINDING = Pattern.compile("[A-Z][A-Z0-9_]*");
	private static final Pattern VALUE = Pattern.compile("[\\p{L}\\p{N}](?:[\\p{L}\\p{N} .&'()/+-]*[\\p{L}\\p{N}.)])?");
	private static final Pattern EXPRESSION = Pattern.compile("\\b(\\w+)\\s+matches\\s+\"((?:\\\\.|[^\"\\\\])*)\"");
	private static final int LONGEST = 120;
	private final Manuscript manuscript;
	private final Thing thing;
	private final Optional<ShopRenaming> shops;
	private final Uses uses;
	private final Set<String> askedByTheProgram;

	/**
	 * @param thing what is to be renamed
	 * @param askedByTheProgram names of findings the program itself looks for
	 */
	public Renaming(Manuscript manuscript, Thing thing, Set<String> askedByTheProgram) {
		this.manuscript = manuscript;
		this.thing = thing;
		this.askedByTheProgram = Set.copyOf(askedByTheProgram);
		shops = ShopRenaming.of(manuscript, thing);
		uses = Uses.in(manuscript);
	}

	/** @return what it is called now */
	public String name() {
		return shops.isPresent() ? shops.get().name() : thing instanceof Thing.OfFinding finding ? finding.name() : thing instanceof Thing.OfValue value ? value.value()
				: thing instanceof Thing.OfRule rule ? rule.name() : thing.called();
	}

	/** @return why it cannot be renamed at all, in sentences; empty when it can */
	public Optional<String> refusal() {
		if (thing instanceof Thing.OfFinding finding && askedByTheProgram.contains(finding.name())) {
			return Optional.of("Setwright itself looks for the finding " + finding.name() + ", so it has to keep its name.");
		} else if (thing instanceof Thing.OfRule rule && manuscript.book().tables().stream().anyMatch(t -> rule.name().matches("table \\Q" + t.name() + "\\E(, row \\d+)?"))) {
			return Optional.of("A table is called after its file, so " + rule.name() + " cannot be renamed here.");
		} else if (shops.isPresent()) {
			return Optional.empty();
		} else if (thing instanceof Thing.OfSetting || thing instanceof Thing.OfKind || thing instanceof Thing.OfField
				|| thing instanceof Thing.OfChoice || thing instanceof Thing.OfSettingChoice || thing instanceof Thing.OfAuthority) {
			return Optional.of("The name of " + thing.called() + " comes from the catalogue of Setwright, and a book cannot change it. "
					+ "Findings, rules, and the shop's own settings and words can be renamed.");
		}
		return Optional.empty();
	}

	/** @return why it cannot be called {@code name}, in sentences; empty when it can */
	public Optional<String> refusal(String name) {
		if (name.isBlank() || name.equals(name())) {
			return Optional.of("Write the new name.");
		} else if (shops.isPresent()) {
			return shops.get().refusal(name);
		} else if (thing instanceof Thing.OfFinding) {
			return finding(name);
		} else if (thing instanceof Thing.OfValue value) {
			return value(value, name);
		}
		return rule(name);
	}

	private Optional<String> finding(String name) {
		if (!FINDING.matcher(name).matches()) {
			return Optional.of("A finding is written in capitals, digits and low lines, such as DUAL_FUEL_JOB.");
		} else if (name.equals("UNKNOWN") || name.equals("YES") || name.equals("NO")) {
			return Optional.of(name + " means something else in rules.");
		} else if (!uses.of(new Thing.OfFinding(name)).isEmpty()) {
			return Optional.of("There is already a finding " + name + "; the two would become one.");
		}
		return askedByTheProgram.contains(name)
				? Optional.of("Setwright itself looks for a finding " + name + ", so the name would say more than you mean.")
				: Optional.empty();
	}

	private Optional<String> value(Thing.OfValue old, String name) {
		if (!VALUE.matcher(name).matches() || name.contains(" or ") || name.equalsIgnoreCase("unknown") || name.equalsIgnoreCase("none")) {
			return Optional.of("Keep to letters, digits, blanks and the signs . & ' ( ) / + -, begin with a letter or digit, and do without the word or.");
		}
		boolean taken = uses.all().stream().anyMatch(m -> m.thing() instanceof Thing.OfValue v && v.kind().equals(old.kind())
				&& v.field().equals(old.field()) && v.value().equalsIgnoreCase(name) && !v.value().equals(old.value()));
		return taken ? Optional.of("There is already a " + old.field().label() + " \"" + name + "\"; the two would become one.") : Optional.empty();
	}

	private Optional<String> rule(String name) {
		if (name.length() > LONGEST || name.contains("\\") || name.contains("\"") || name.contains("\n")) {
			return Optional.of("A rule's name stands on one line, has at most " + LONGEST + " characters, and no quotation marks.");
		}
		return uses.definitions(new Thing.OfRule(name)).isEmpty() ? Optional.empty() : Optional.of("There is already a rule called \"" + name + "\".");
	}

	/** @return what somebody should look at before calling it {@code name}: rules that match names by an expression; one sentence each */
	public List<String> warnings(String name) {
		List<String> warnings = new ArrayList<>();
		if (thing instanceof Thing.OfValue value) {
			for (Book.RuleFile file : manuscript.book().ruleFiles()) {
				Matcher expression = EXPRESSION.matcher(manuscript.text(file.path()));
				while (expression.find()) {
					String written = expression.group(2).replaceAll("\\\\(.)", "$1");
					if (expression.group(1).equals(value.field().name()) && matches(written, value.value()) != matches(written, name)) {
						warnings.add("In " + file.path() + " the expression \"" + written + "\" is not changed, and holds for only one of the two names.");
					}
				}
			}
		}
		return warnings;
	}

	private static boolean matches(String expression, String name) {
		try {
			return name.matches(expression);
		} catch (PatternSyntaxException unfinished) {
			return false;
		}
	}

	/**
	 * @param name one that is not refused
	 * @return the edits, by path below the book folder
	 * @throws JobNotWritten when a job cannot be changed without losing something; then nothing should be changed
	 */
	public Map<String, List<TextEdit>> edits(String name) throws JobNotWritten {
		Map<String, List<TextEdit>> edits = new LinkedHashMap<>();
		for (Mention mention : uses.of(thing)) {
			if (!mention.path().startsWith("jobs/")) {
				edits.computeIfAbsent(mention.path(), p -> new ArrayList<>()).add(new TextEdit(mention.start(), mention.end(), written(mention, name)));
			}
		}
		for (JobCase job : manuscript.book().jobs()) {
			shops.map(s -> s.inJob(job, name)).filter(e -> !e.isEmpty()).ifPresent(e -> edits.put(job.path(), e));
			List<JobEdit> changes = changes(job, name);
			if (!changes.isEmpty()) {
				edits.put(job.path(), manuscript.inJob(job.path(), changes));
			}
		}
		return edits;
	}

	private String written(Mention mention, String name) {
		if (shops.isPresent()) {
			return shops.get().written(mention, name);
		}
		String text = manuscript.text(mention.path());
		boolean apostrophes = mention.path().endsWith(".drl") && mention.start() > 0 && text.charAt(mention.start() - 1) == '\'';
		return apostrophes ? name.replace("'", "\\'") : name;
	}

	private List<JobEdit> changes(JobCase job, String name) {
		Map<JobField, JobEdit> answers = new HashMap<>();
		if (thing instanceof Thing.OfValue value) {
			for (JobField place : job.positions().keySet()) {
				if (place.kind().equals(value.kind()) && place.field().filter(value.field()::equals).isPresent()
						&& JobMentions.words(job, place).filter(value.value()::equals).isPresent()) {
					answers.put(place, new JobEdit.Answered(place, new Answer.Known<>(new Value.Words(name))));
				}
			}
		}
		List<JobEdit> changes = new ArrayList<>(answers.values());
		job.expected().forEach((setting, expectation) -> {
			if (thing instanceof Thing.OfRule rule && expectation instanceof DecidedBy by && by.rule().equals(rule.name())) {
				changes.add(new JobEdit.Expected(setting, new DecidedBy(by.is(), name, by.at())));
			}
		});
		job.items().forEach(item -> renamed(item, name).ifPresent(to -> changes.addAll(List.of(new JobEdit.ItemNotExpected(item), new JobEdit.ItemExpected(to)))));
		return changes;
	}

	/** @return {@code item} with the new name, when it is this finding or rule that it names */
	private Optional<ExpectedItem> renamed(ExpectedItem item, String name) {
		if (thing instanceof Thing.OfFinding old && item instanceof ExpectedFinding finding && !finding.other() && finding.word().equals(old.name())) {
			return Optional.of(new ExpectedFinding(finding.appears(), name, false, finding.at()));
		}
		return thing instanceof Thing.OfRule rule && item instanceof ExpectedCheck check && check.byRule() && check.words().equals(rule.name())
				? Optional.of(ExpectedCheck.by(check.list(), name, check.at())) : Optional.empty();
	}
}
