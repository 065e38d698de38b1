package org.setwright.editions.git;

import java.io.EOFException;
import java.io.IOException;
import java.net.URISyntaxException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.eclipse.jgit.api.Git;
import org.eclipse.jgit.api.TransportCommand;
import org.eclipse.jgit.api.errors.GitAPIException;
import org.eclipse.jgit.errors.TransportException;
import org.eclipse.jgit.lib.Constants;
import org.eclipse.jgit.lib.Repository;
import org.eclipse.jgit.lib.StoredConfig;
import org.eclipse.jgit.transport.PushResult;
import org.eclipse.jgit.transport.RefSpec;
import org.eclipse.jgit.transport.RemoteRefUpdate;
import org.eclipse.jgit.transport.SshTransport;
import org.eclipse.jgit.transport.TagOpt;
import org.eclipse.jgit.transport.URIish;
import org.setwright.editions.kept.NotDone;

/** Exchanges editions with other places: folders, and servers reached by SSH or HTTPS. */
public final class Exchange {
	private static final int SECONDS = 60;

	private Exchange() {
	}

	/** @return the address of every place that is known here, by its name */
	public static Map<String, String> places(Repo repo) {
		StoredConfig config = repo.git().getConfig();
		Map<String, String> places = new TreeMap<>();
		for (String name : config.getSubsections("remote")) {
			String address = config.getString("remote", name, "url");
			if (address != null) {
				places.put(name, shown(address));
			}
		}
		return places;
	}

	private static String shown(String address) {
		try {
			return new URIish(address).setPass(null).toString();
		} catch (URISyntaxException odd) {
			return address;
		}
	}

	/** Gives another place a name. An address with a password in it is refused. */
	public static void add(Repo repo, String name, String address) throws NotDone {
		try (Repository noted = repo.noted(); Git git = new Git(noted)) {
			URIish uri = new URIish(address);
			if (uri.getPass() != null) {
				throw new NotDone("The address holds a password, and Setwright writes none down.", "Leave it out; you are asked for it when it is needed.");
			} else if (places(repo).containsKey(name)) {
				throw new NotDone("There is a place called " + name + " already.", "Give this one another name.");
			}
			git.remoteAdd().setName(name).setUri(uri).call();
			repo.git().getConfig().setString("remote", name, "url", address);
			repo.git().getConfig().setString("remote", name, "fetch", "+refs/heads/*:refs/remotes/" + name + "/*");
		} catch (URISyntaxException e) {
			throw new NotDone("\"" + address + "\" is no address.", "Write a folder, or an address as your server shows it.", e);
		} catch (GitAPIException | IOException | RuntimeException e) {
			throw Faults.of(e, "note the place " + name, repo);
		}
	}

	/** Gets what is new at {@code place}; the work in hand and the lines here stay as they are. @return how many lines or marks are new */
	public static int fetch(Repo repo, String place, Login.Asking asking) throws NotDone {
		demandKnown(repo, place);
		try (Git git = new Git(repo.git())) {
			Logins logins = new Logins(repo, asking);
			int news = set(git.fetch(), repo, logins).setRemote(place).setTagOpt(TagOpt.FETCH_TAGS).setRefSpecs(heads(place)).call().getTrackingRefUpdates()
					.size();
			logins.accepted();
			return news;
		} catch (GitAPIException | RuntimeException e) {
			throw fault(e, repo, place, "fetch from " + place);
		}
	}

	private static RefSpec heads(String place) {
		return new RefSpec("+refs/heads/*:refs/remotes/" + place + "/*");
	}

	/** Sends the open line and all marks of signing. Never replaces what is there. @return whether anything was new there */
	public static boolean send(Repo repo, String place, String marks, Login.Asking asking) throws NotDone {
		demandKnown(repo, place);
		Keeping.demandALine(repo);
		String line = Constants.R_HEADS + repo.line().orElseThrow();
		try (Git git = new Git(repo.git())) {
			List<RefSpec> specs = new ArrayList<>(List.of(new RefSpec(line + ":" + line)));
			for (String mark : Tag.marked(repo, marks).keySet()) {
				specs.add(new RefSpec(Constants.R_TAGS + mark + ":" + Constants.R_TAGS + mark));
			}
			Logins logins = new Logins(repo, asking);
			boolean news = false;
			for (PushResult result : set(git.push(), repo, logins).setRemote(place).setRefSpecs(specs).call()) {
				for (RemoteRefUpdate update : result.getRemoteUpdates()) {
					news |= sent(update, place, result.getMessages());
				}
			}
			logins.accepted();
			return news;
		} catch (GitAPIException | RuntimeException e) {
			throw fault(e, repo, place, "send to " + place);
		}
	}

	private static boolean sent(RemoteRefUpdate update, String place, String messages) throws NotDone {
		return switch (update.getStatus()) {
			case OK -> true;
			case UP_TO_DATE -> false;
			case REJECTED_NODELETE, REJECTED_NONFASTFORWARD, REJECTED_REMOTE_CHANGED -> throw new NotDone(
					place + " has editions that are not here, so nothing was sent.",
					"Fetch them, join them to yours, look at the result, then send again.");
			default -> throw new NotDone(place + " did not take what was sent"
					+ (update.getMessage() == null ? "" : " (" + update.getMessage() + ")") + ". " + messages.strip().replaceAll("\\s+", " "),
					"Mend what it complains of, then send again. Nothing is lost here.");
		};
	}

	private static <C extends TransportCommand<C, ?>> C set(C command, Repo repo, Logins logins) {
		return command.setCredentialsProvider(logins).setTimeout(SECONDS).setTransportConfigCallback(transport -> {
			if (transport instanceof SshTransport ssh) {
				ssh.setSshSessionFactory(OwnSsh.of(repo));
			}
		});
	}

	private static void demandKnown(Repo repo, String place) throws NotDone {
		Map<String, String> places = places(repo);
		if (!places.containsKey(place)) {
			throw new NotDone("There is no place called " + place + " to exchange editions with.",
					places.isEmpty() ? "Name one first, with its address." : "There are: " + String.join(", ", places.keySet()) + ".");
		}
	}

	private static NotDone fault(Exception e, Repo repo, String place, String doing) {
		String all = "";
		boolean cutOff = false;
		boolean onTheWay = false;
		for (Throwable cause = e; cause != null; cause = cause.getCause()) {
			if (cause instanceof NotDone told) {
				return told;
			}
			// the library asks a program on the way how it ended, which may be a moment too early
			cutOff |= cause instanceof EOFException || cause instanceof IllegalThreadStateException;
			onTheWay |= cause instanceof TransportException;
			all += " " + String.valueOf(cause.getMessage()).toLowerCase(Locale.ROOT);
		}
		String untouched = " Nothing is lost here.";
		if (all.contains("not authorized") || all.contains("auth") || all.contains("permission denied (")) {
			return new NotDone(place + " does not let you in.", "Check name and password or key, with your Git or SSH set-up." + untouched, e);
		} else if (all.contains("certificat") || all.contains("pkix") || all.contains("secure connection")) {
			return new NotDone(place + " cannot prove who it is, so Setwright did not " + doing + ".", "Ask whoever runs that server about its certificate."
					+ untouched, e);
		} else if (all.contains("refused") || all.contains("unknownhost") || all.contains("unknown host") || all.contains("timed out")
				|| all.contains("not found") || all.contains("no such") || all.contains("unreachable") || all.contains("invalid remote")
				|| all.contains("cannot open") || all.contains("remote end hung up") || all.contains("could not resolve")
				|| all.contains("broken pipe") || all.contains("stream closed") || all.contains("connection reset") || cutOff) {
			return new NotDone(place + " cannot be reached, so Setwright did not " + doing + ".", "Check the network and the address, then try again."
					+ untouched, e);
		}
		String said = String.valueOf(e.getMessage()).strip().replaceAll("\\s+", " ");
		Optional<NotDone> known = Faults.anyKnown(e, doing, repo);
		return known.isEmpty() && onTheWay ? new NotDone(place + " cannot be reached, so Setwright did not " + doing + " (" + said + ").",
				"Check the network, the address and how it is reached, then try again." + untouched, e) : known.orElseGet(() -> Faults.of(e, doing, repo));
	}
}
