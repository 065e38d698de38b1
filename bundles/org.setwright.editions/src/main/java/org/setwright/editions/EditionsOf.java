package org.setwright.editions;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.setwright.book.JobCase;
import org.setwright.check.Progress;
import org.setwright.editions.compare.BookChanges;
import org.setwright.editions.compare.RuleChange;
import org.setwright.editions.compare.Suggestion;
import org.setwright.editions.git.EditionLog;
import org.setwright.editions.git.Keeping;
import org.setwright.editions.git.Lines;
import org.setwright.editions.git.Repo;
import org.setwright.editions.git.Tag;
import org.setwright.editions.git.TreeContent;
import org.setwright.editions.git.WorkInHand;
import org.setwright.editions.impact.Impact;
import org.setwright.editions.kept.Kept;
import org.setwright.editions.kept.NotDone;
import org.setwright.editions.kept.Who;
import org.setwright.editions.lineage.Answer;
import org.setwright.editions.lineage.Identities;
import org.setwright.editions.lineage.Lineage;
import org.setwright.editions.lineage.RuleStep;
import org.setwright.editions.reading.BookAt;
import org.setwright.editions.reading.Shelf;
import org.setwright.editions.restoring.Restoring;
import org.setwright.editions.signing.SignOffs;
import org.setwright.editions.since.Since;
import org.setwright.editions.written.WrittenRule;
import org.setwright.trade.catalogue.Catalogue;
import org.setwright.trade.catalogue.Setting;

/**
 * The editions of one book: the way in for whoever shows them. Every answer is a record that does not change; ask again after
 * something was kept. Never overwrites work that is not kept. Thread-safe for reading. Close it when done.
 */
public final class EditionsOf implements AutoCloseable {
	private final Repo repo;
	private final Shelf shelf;
	private Set<String> seenTips = Set.of();
	private EditionLog seenLog;
	private Identities seenIdentities;

	private EditionsOf(Repo repo, Catalogue catalogue) {
		this.repo = repo;
		shelf = new Shelf(repo, catalogue);
	}

	/**
	 * @param book the folder of a book, at the top of a repository or anywhere below
	 * @param ceilings folders at which to stop looking upwards; usually none
	 * @return empty when it lives in no repository
	 */
	public static Optional<EditionsOf> find(Path book, Catalogue catalogue, List<Path> ceilings) throws NotDone {
		return Repo.around(book, ceilings).map(r -> new EditionsOf(r, catalogue));
	}

	/** Starts a repository in the folder of a book, unless it lives in one. */
	public static EditionsOf start(Path book, Catalogue catalogue, List<Path> ceilings) throws NotDone {
		return new EditionsOf(Repo.start(book, ceilings), catalogue);
	}

	/** Opens a repository without work in hand, as on a server. @param prefix where the book is in it; empty for the top */
	public static EditionsOf on(Path repository, String prefix, Catalogue catalogue) throws NotDone {
		return new EditionsOf(Repo.at(repository, prefix), catalogue);
	}

	/** @return the repository, for what is asked of it directly */
	public Repo repo() {
		return repo;
	}

	/** @return reads books at any edition */
	public Shelf shelf() {
		return shelf;
	}

	// --- history -----------------------------------------------------------------------------------------------------

	/** @return every edition that any line, place or mark of signing leads to */
	public synchronized EditionLog log() throws NotDone {
		Set<String> tips = new LinkedHashSet<>();
		repo.tip().ifPresent(tips::add);
		tips.addAll(Lines.all(repo).values());
		tips.addAll(Lines.elsewhere(repo).values());
		tips.addAll(Tag.marked(repo, SignOffs.MARKS).values());
		if (seenLog == null || !tips.equals(seenTips)) {
			seenLog = EditionLog.of(repo, tips);
			seenTips = tips;
		}
		return seenLog;
	}

	/** @return every edition that {@link #log()} holds and that {@code commit} came from, which no line need lead to yet */
	public EditionLog log(String commit) throws NotDone {
		EditionLog known = log();
		if (known.byCommit().containsKey(commit)) {
			return known;
		}
		Set<String> tips = new LinkedHashSet<>(seenTips);
		tips.add(commit);
		return EditionLog.of(repo, tips);
	}

	/** @return the edition the open line is at; empty when nothing was kept */
	public Optional<Kept> last() throws NotDone {
		Optional<String> tip = repo.tip();
		return tip.isEmpty() ? Optional.empty() : log().at(tip.get());
	}

	/** @return the last edition @throws NotDone when there is none */
	public Kept demandLast() throws NotDone {
		return last().orElseThrow(() -> new NotDone("No edition of this book has been kept yet.", "Keep a first one."));
	}

	/** @return the editions of the open line, newest first; empty when nothing was kept */
	public List<Kept> history() throws NotDone {
		Optional<Kept> last = last();
		return last.isEmpty() ? List.of() : log().leadingTo(last.get().id());
	}

	/** @param path below the book @return the editions of the open line that changed that file, newest first */
	public List<Kept> history(String path) throws NotDone {
		return Lineage.ofFile(shelf, log(), demandLast(), path);
	}

	/**
	 * @param name "last", "signed" (the last signed one), the first digits of an edition, or whatever Git calls it: a line, a mark, HEAD~2
	 * @return the edition meant
	 */
	public Kept edition(String name) throws NotDone {
		if (name.equals("last")) {
			return demandLast();
		} else if (name.equals("signed")) {
			return signOffs().before(demandLast()).orElseThrow(() -> new NotDone("No edition of this line has been signed.", "Name another edition."))
					.edition();
		}
		Optional<String> commit = repo.commit(name);
		if (commit.isEmpty()) {
			throw new NotDone("There is no edition called " + name + ".", "Write the first digits of one, as history shows them, or the name of a line.");
		}
		Optional<Kept> known = log().at(commit.get());
		return known.isPresent() ? known.get() : EditionLog.of(repo, List.of(commit.get())).at(commit.get())
				.orElseThrow(() -> new NotDone("There is no book yet in " + name + ".", "Name a later edition."));
	}

	// --- books -------------------------------------------------------------------------------------------------------

	/** @return the book as it was at {@code edition}; of the last one with the remarks that were kept since */
	public BookAt at(Kept edition) throws NotDone {
		Optional<String> tip = repo.tip();
		return tip.isPresent() && log().at(tip.get()).filter(edition::equals).isPresent() ? shelf.at(edition, tip.get()) : shelf.at(edition);
	}

	/** @return what lies in the folder now, and which of it is not kept */
	public WorkInHand work() throws NotDone {
		return WorkInHand.of(repo);
	}

	/** @return the book as it lies in the folder now */
	public BookAt inHand() throws NotDone {
		return shelf.inHand(work().files());
	}

	/** @return what is different between two books, rule by rule and job by job; rules are followed through the editions between */
	public BookChanges changes(BookAt before, BookAt after) throws NotDone {
		try {
			Identities known = identities();
			return BookChanges.between(shelf, before, after, known.of(before, last()), known.of(after, last()));
		} catch (NotDone someEditionBetweenIsDamaged) {
			return BookChanges.between(shelf, before, after);
		}
	}

	/** @return what is different between the last edition and the work in hand; everything is new when nothing was kept */
	public BookChanges notKept() throws NotDone {
		Optional<Kept> last = last();
		return changes(last.isPresent() ? at(last.get()) : BookAt.NOTHING, inHand());
	}

	private synchronized Identities identities() throws NotDone {
		EditionLog log = log();
		if (seenIdentities == null || !seenIdentities.log().equals(log)) {
			seenIdentities = new Identities(shelf, log);
		}
		return seenIdentities;
	}

	/** @return what changes mean for the saved jobs, and what is responsible; empty when cancelled */
	public Optional<Impact> impact(BookChanges changes, Progress progress) throws NotDone {
		return Impact.of(shelf, changes, progress);
	}

	// --- keeping -----------------------------------------------------------------------------------------------------

	/** @return a message that says what changed since the last edition */
	public String suggestion() throws NotDone {
		return last().isEmpty() ? "First edition" : Suggestion.message(notKept());
	}

	/**
	 * Keeps the work in hand.
	 *
	 * @param seen the work as it was looked at: when it is another by now, nothing is kept
	 * @param message not blank
	 * @param by its author; empty for whoever Git is told works here
	 * @return the edition it became; the last one again, when only remarks were kept
	 */
	public Kept keep(WorkInHand seen, String message, Optional<Who> by) throws NotDone {
		Who author = by.isPresent() ? by.get() : repo.user();
		WorkInHand now = work();
		if (now.notKept().isEmpty()) {
			throw new NotDone("Nothing has changed since the last edition.", "Change something first.");
		} else if (!now.equals(seen)) {
			throw new NotDone("Files of the book changed while you were looking, so nothing was kept.", "Look at what changed, then keep it.");
		} else if (message.isBlank()) {
			throw new NotDone("An edition needs a message.", "Say what changed, and why.");
		}
		String commit = Keeping.commit(repo, now.notKept(), message, author);
		return log().at(commit).orElseThrow(() -> new NotDone("What was kept holds no book.yaml, so it is no edition of a book.",
				"Make the file, and keep again."));
	}

	// --- who answers -------------------------------------------------------------------------------------------------

	/** @return who answers for every rule and row in hand, by file and place */
	public List<Answer> answers() throws NotDone {
		return answers(inHand().rules());
	}

	/** @param rules of the work in hand @return who answers for each of them */
	public List<Answer> answers(Collection<WrittenRule> rules) throws NotDone {
		Optional<Kept> last = last();
		Map<WrittenRule, RuleChange> inHand = new HashMap<>();
		if (last.isPresent()) {
			BookChanges.rules(at(last.get()), inHand()).forEach(c -> c.after().ifPresent(a -> inHand.put(a, c)));
		}
		Set<WrittenRule> kept = new HashSet<>();
		rules.forEach(r -> Optional.ofNullable(inHand.get(r)).flatMap(RuleChange::before).ifPresent(kept::add));
		Map<WrittenRule, List<RuleStep>> steps = last.isPresent() ? Lineage.of(shelf, log(), last.get(), kept) : Map.of();
		List<Answer> answers = new ArrayList<>();
		for (WrittenRule rule : rules) {
			RuleChange change = inHand.getOrDefault(rule, new RuleChange(Optional.empty(), Optional.of(rule), Set.of()));
			answers.add(new Answer(rule, Optional.of(change).filter(c -> c.kind() != RuleChange.Kind.SAME), change.before().map(steps::get)
					.orElse(List.of())));
		}
		return answers;
	}

	/** @param path below the book @param line from 1 @return who answers for the rule or row on that line; empty when none is there */
	public Optional<Answer> answerAt(String path, int line) throws NotDone {
		List<WrittenRule> there = inHand().rules().stream().filter(r -> r.file().equals(path) && r.line() <= line && line <= r.lastLine()).toList();
		return answers(there).stream().findFirst();
	}

	/** @return since when {@code job}, with the answers it has now, comes to what it does in the last edition */
	public Since since(JobCase job, Setting setting) throws NotDone {
		return Since.of(shelf, log(), demandLast(), job, setting);
	}

	// --- restoring ---------------------------------------------------------------------------------------------------

	/**
	 * Puts a rule back to what it was. The result is work in hand, to be looked at and kept.
	 *
	 * @param name of the rule or row as it was called in {@code edition}
	 * @return the path of the file that changed
	 */
	public String restore(Kept edition, String name) throws NotDone {
		BookAt then = at(edition);
		WrittenRule old = then.rule(name).orElseThrow(() -> new NotDone("There was no rule called " + name + " in edition " + edition.id() + ".",
				"See with history what it was called."));
		BookAt hand = inHand();
		Optional<WrittenRule> now = descendant(old, then, hand);
		if (now.isPresent()) {
			for (Answer answer : answers(List.of(now.get()))) {
				if (answer.inHand().isPresent()) {
					throw new NotDone("The rule " + now.get().shown() + " has work that is not kept, and it would be overwritten.",
							"Keep it as an edition first, or undo it.");
				}
			}
			if (RuleChange.between(old, now.get()).isEmpty()) {
				throw new NotDone("The rule " + now.get().shown() + " is as it was in edition " + edition.id() + ".", "Name an earlier edition.");
			}
		}
		return Restoring.rule(repo.folder(), old, now, then, hand);
	}

	/** What {@code old} has become, followed through every edition since, or else found by what is most alike. */
	private Optional<WrittenRule> descendant(WrittenRule old, BookAt then, BookAt hand) throws NotDone {
		for (Answer answer : answers(hand.rules())) {
			for (RuleStep step : answer.steps()) {
				if (step.change().before().filter(old::equals).isPresent() || step.change().after().filter(old::equals).isPresent()) {
					return Optional.of(answer.rule());
				}
			}
		}
		return BookChanges.rules(then, hand).stream().filter(c -> c.before().filter(old::equals).isPresent()).findFirst().flatMap(RuleChange::after);
	}

	/** Makes the folder hold what {@code edition} held, as work in hand. Refuses when anything is not kept. */
	public void restore(Kept edition) throws NotDone {
		WorkInHand work = work();
		work.demandAllKept("go back");
		Restoring.book(repo.folder(), at(edition).content(), work.files());
	}

	// --- lines and signing -------------------------------------------------------------------------------------------

	/** @return lines of work, and other places */
	public OtherLines lines() {
		return new OtherLines(this);
	}

	/** @return who signed what */
	public SignOffs signOffs() throws NotDone {
		return new SignOffs(repo, shelf, log(), List.of());
	}

	/** @return where remarks are read from at {@code commit} */
	public TreeContent remarksAt(String commit) throws NotDone {
		return TreeContent.of(repo, commit);
	}

	@Override
	public void close() {
		repo.close();
	}
}
