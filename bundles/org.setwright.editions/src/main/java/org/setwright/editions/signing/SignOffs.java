package org.setwright.editions.signing;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.setwright.book.Book;
import org.setwright.book.SignOff;
import org.setwright.check.Progress;
import org.setwright.editions.compare.BookChanges;
import org.setwright.editions.git.Content;
import org.setwright.editions.git.EditionLog;
import org.setwright.editions.git.Repo;
import org.setwright.editions.git.Tag;
import org.setwright.editions.kept.Kept;
import org.setwright.editions.kept.NotDone;
import org.setwright.editions.kept.Who;
import org.setwright.editions.reading.BookAt;
import org.setwright.editions.reading.Shelf;

/** Signs editions off, and tells which are. A sign-off holds for what an edition holds, on whatever line that is. */
public final class SignOffs {
	/** What the names of all marks of signing begin with. */
	public static final String MARKS = "signed-off/";
	private final Repo repo;
	private final Shelf shelf;
	private final EditionLog log;
	private final List<SignedOff> all;

	/** @param log reaching everything that is signed @param arriving names of marks that are not listed yet */
	public SignOffs(Repo repo, Shelf shelf, EditionLog log, Collection<String> arriving) throws NotDone {
		this.repo = repo;
		this.shelf = shelf;
		this.log = log;
		List<Tag> tags = new ArrayList<>(Tag.all(repo, MARKS));
		Tag.arriving(repo, arriving).stream().filter(t -> t.name().startsWith(MARKS)).forEach(tags::add);
		List<SignedOff> found = new ArrayList<>();
		tags.forEach(tag -> log.at(tag.commit()).ifPresent(edition -> found.add(signedOff(edition, tag))));
		found.sort(Comparator.comparing((SignedOff s) -> s.on().toInstant()).thenComparing(SignedOff::mark).reversed());
		all = List.copyOf(found);
	}

	private static SignedOff signedOff(Kept edition, Tag tag) {
		return new SignedOff(edition, tag.name(), tag.by(), tag.on(), head(tag.message(), "cases"), head(tag.message(), "note"), tag.signature());
	}

	private static String head(String message, String key) {
		return message.lines().filter(l -> l.startsWith(key + ": ")).map(l -> l.substring(key.length() + 2)).findFirst().orElse("");
	}

	/** @return every sign-off, the newest first */
	public List<SignedOff> all() {
		return all;
	}

	/** @return the last sign-off of what {@code edition} holds */
	public Optional<SignedOff> of(Kept edition) {
		return all.stream().filter(s -> s.edition().content().equals(edition.content())).findFirst();
	}

	/** @return the newest signed edition that {@code edition} came from, or itself */
	public Optional<SignedOff> before(Kept edition) {
		return log.leadingTo(edition.id()).stream().map(this::of).flatMap(Optional::stream).findFirst();
	}

	/** @param matters as they are now @return what there is to look at before {@code edition} is signed */
	public Review review(Kept edition, List<Matter> matters) throws NotDone {
		Optional<SignedOff> last = before(edition);
		BookAt before = last.isPresent() ? shelf.at(last.get().edition()) : BookAt.NOTHING;
		return new Review(edition, last, BookChanges.between(shelf, before, shelf.at(edition)), matters);
	}

	/**
	 * Signs an edition with an annotated tag that holds what its job cases came to.
	 *
	 * @param remarks where the remarks are read from
	 * @param note may be empty; one line
	 * @throws NotDone when the book has errors, when a matter is open, or when it demands all cases met and they are not
	 */
	public SignedOff sign(Kept edition, Content remarks, Who by, String note, Progress progress) throws NotDone {
		BookAt book = shelf.at(edition);
		Cases cases = Cases.of(shelf, book, progress);
		List<Matter> matters = Remarks.in(remarks);
		List<Lack> lacks = new ArrayList<>();
		if (cases.check().isEmpty()) {
			lacks.add(new Lack("Edition " + edition.id() + " has errors and cannot be signed.", "Mend what check finds, and keep that as an edition."));
		}
		open(matters).ifPresent(lacks::add);
		if (shelf.book(book).signOff() != SignOff.NOT_DEMANDED) {
			notMet(cases).ifPresent(lacks::add);
			if (shelf.book(book).signOff() == SignOff.FROM_A_SECOND_PERSON) {
				ownWork(edition, by).ifPresent(lacks::add);
			}
		}
		if (!lacks.isEmpty()) {
			throw new NotDone(lacks.get(0).what(), lacks.get(0).remedy());
		}
		String message = "Signed off: " + shelf.book(book).name() + "\n\nedition: " + edition.id().hash() + "\ncases: " + cases.words() + "\nremarks: "
				+ matters.size()
				+ " settled, 0 open\nproof: none was run\n" + (note.isBlank() ? "" : "note: " + note.strip().replaceAll("\\s+", " ") + "\n");
		return signedOff(edition, Tag.make(repo, mark(edition), edition.id().hash(), message, by));
	}

	private String mark(Kept edition) throws NotDone {
		Set<String> taken = Tag.marked(repo, MARKS).keySet();
		String name = MARKS + edition.on().toLocalDate() + "-" + edition.id();
		String free = name;
		for (int i = 2; taken.contains(free); i++) {
			free = name + "-" + i;
		}
		return free;
	}

	/** @param remarks where the remarks are read from @return whether {@code edition} may go out, its job cases run anew */
	public Verified verify(Kept edition, Content remarks, Progress progress) throws NotDone {
		BookAt at = shelf.at(edition);
		Book book = shelf.book(at);
		Cases cases = Cases.of(shelf, at, progress);
		List<Lack> lacks = new ArrayList<>();
		if (cases.check().isEmpty()) {
			lacks.add(new Lack("Edition " + edition.id() + " has errors.", "Mend what check finds, and keep that as an edition."));
		} else {
			notMet(cases).ifPresent(lacks::add);
		}
		Optional<SignedOff> signed = of(edition);
		if (book.signOff() != SignOff.NOT_DEMANDED) {
			open(Remarks.in(remarks)).ifPresent(lacks::add);
			Optional<Lack> own = book.signOff() == SignOff.FROM_A_SECOND_PERSON ? ownWork(edition) : Optional.empty();
			if (signed.isEmpty()) {
				lacks.add(new Lack("Nobody has signed edition " + edition.id() + ", and the book demands it.", "Review and sign it."));
			} else if (all.stream().anyMatch(s -> s.edition().content().equals(edition.content()) && s.key() == Tag.Signature.NOT_ACCEPTED)) {
				lacks.add(new Lack("The key that signed edition " + edition.id() + " is not accepted.", "Find out with git verify-tag who made the mark "
						+ signed.get().mark() + "."));
			} else {
				own.ifPresent(lacks::add);
			}
		}
		return new Verified(edition, book.signOff(), signed, cases.words(), lacks);
	}

	private static Optional<Lack> notMet(Cases cases) {
		List<String> amiss = cases.amiss();
		return cases.allMet() ? Optional.empty() : Optional.of(new Lack("Not every job comes to what it expects: " + String.join(", ", amiss) + ".",
				"Mend the rules, or accept what is right, and keep that as an edition."));
	}

	private static Optional<Lack> open(List<Matter> matters) {
		List<String> open = matters.stream().filter(Matter::open).map(Matter::thread).toList();
		return open.isEmpty() ? Optional.empty() : Optional.of(new Lack("Remarks are still open: " + String.join(", ", open) + ".",
				"Settle them, and keep that."));
	}

	/** Signed by nobody but those who wrote it. */
	private Optional<Lack> ownWork(Kept edition) {
		List<SignedOff> marks = all.stream().filter(s -> s.edition().content().equals(edition.content())).toList();
		List<Who> writers = writers(edition);
		boolean second = marks.stream().anyMatch(m -> writers.stream().noneMatch(w -> w.same(m.by())));
		return marks.isEmpty() || second ? Optional.empty() : Optional.of(new Lack("Edition " + edition.id() + " is signed only by "
				+ marks.get(0).by().name() + ", who wrote some of it.", "Let somebody sign who wrote none of what is new."));
	}

	private Optional<Lack> ownWork(Kept edition, Who by) {
		return writers(edition).stream().noneMatch(w -> w.same(by)) ? Optional.empty()
				: Optional.of(new Lack(by.name() + " wrote some of what is new, and the book demands a second person.",
						"Let somebody sign who wrote none of it."));
	}

	/** Who wrote something that is new since the last signed editions it came from. */
	private List<Who> writers(Kept edition) {
		Set<Kept> old = new HashSet<>();
		for (SignedOff signed : all) {
			if (!signed.edition().content().equals(edition.content())) {
				old.addAll(log.leadingTo(signed.edition().id()));
			}
		}
		return log.leadingTo(edition.id()).stream().filter(e -> !old.contains(e)).map(Kept::by).toList();
	}
}
