package org.setwright.editions;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.setwright.editions.git.Exchange;
import org.setwright.editions.git.Joining;
import org.setwright.editions.git.Lines;
import org.setwright.editions.git.Login;
import org.setwright.editions.git.Repo;
import org.setwright.editions.joining.JoinPlan;
import org.setwright.editions.kept.Kept;
import org.setwright.editions.kept.NotDone;
import org.setwright.editions.kept.Who;
import org.setwright.editions.signing.SignOffs;

/** Lines of work beside the one that is open, and other places that editions are exchanged with. */
public final class OtherLines {
	private final EditionsOf editions;
	private final Repo repo;

	OtherLines(EditionsOf editions) {
		this.editions = editions;
		repo = editions.repo();
	}

	/**
	 * One line.
	 *
	 * @param open whether it is the open one
	 * @param elsewhere whether it is of another place, as last fetched
	 * @param at empty when it holds no book
	 */
	public record Line(String name, boolean open, boolean elsewhere, Optional<Kept> at) {
	}

	/** @return every line, those of this repository first */
	public List<Line> all() throws NotDone {
		List<Line> lines = new ArrayList<>();
		Optional<String> open = repo.line();
		for (Map.Entry<String, String> line : Lines.all(repo).entrySet()) {
			lines.add(new Line(line.getKey(), open.filter(line.getKey()::equals).isPresent(), false, editions.log().at(line.getValue())));
		}
		for (Map.Entry<String, String> line : Lines.elsewhere(repo).entrySet()) {
			lines.add(new Line(line.getKey(), false, true, editions.log().at(line.getValue())));
		}
		return lines;
	}

	/** Begins a line from here and goes over to it; work in hand comes along. */
	public void begin(String name) throws NotDone {
		Lines.begin(repo, name, null);
	}

	/** Goes over to a line. Refuses where that would overwrite work that is not kept. */
	public void open(String name) throws NotDone {
		Lines.open(repo, name);
	}

	/** @param name of a line or edition @return how it comes together with the open line; nothing is changed yet */
	public JoinPlan join(String name) throws NotDone {
		String commit = repo.commit(name).orElseThrow(() -> new NotDone("There is no line called " + name + ".", "See the lines there are with trial."));
		return JoinPlan.of(repo, name, Joining.of(repo, commit), Map.of());
	}

	/**
	 * Joins the lines.
	 *
	 * @param message for the edition that joins them; not used when the open line simply goes on
	 * @param by empty for whoever Git is told works here
	 * @return the edition that is open then
	 * @throws NotDone when something is undecided, or work in hand is not kept: nothing is changed then
	 */
	public Kept keepJoined(JoinPlan plan, String message, Optional<Who> by) throws NotDone {
		editions.work().demandAllKept("join");
		Joining joining = plan.joining();
		if (joining.nothingNew()) {
			throw new NotDone(plan.name() + " has nothing that is not here.", "There is nothing to join.");
		} else if (!plan.conflicts().isEmpty()) {
			throw new NotDone("Both lines changed " + plan.conflicts().get(0).what() + ", each in its own way.", "Decide which of the two holds, then join.");
		} else if (!repo.tip().equals(Optional.of(joining.ours()))) {
			throw new NotDone("Somebody kept an edition while you were looking, so nothing was joined.", "Look at what is new, then join again.");
		} else if (joining.goesOn()) {
			joining.goOn(repo);
		} else {
			joining.commit(repo, plan.whole(), plan.theirOwn(), message, by.isPresent() ? by.get() : repo.user());
		}
		return editions.demandLast();
	}

	/** @return the address of each other place, by name */
	public Map<String, String> places() {
		return Exchange.places(repo);
	}

	/** Gives another place a name. */
	public void addPlace(String name, String address) throws NotDone {
		Exchange.add(repo, name, address);
	}

	/** Gets what is new at {@code place}, without touching anything here. @return how many lines and marks are new */
	public int fetch(String place, Login.Asking asking) throws NotDone {
		return Exchange.fetch(repo, place, asking);
	}

	/** Fetches, and plans how the same line at {@code place} comes together with the open one. */
	public JoinPlan receive(String place, Login.Asking asking) throws NotDone {
		fetch(place, asking);
		String line = repo.line().orElseThrow(() -> new NotDone("No line of work is open.", "Go over to one first."));
		return join(place + "/" + line);
	}

	/** Sends the open line and every sign-off. Never replaces what is there. @return whether anything was new there */
	public boolean send(String place, Login.Asking asking) throws NotDone {
		return Exchange.send(repo, place, SignOffs.MARKS, asking);
	}
}
