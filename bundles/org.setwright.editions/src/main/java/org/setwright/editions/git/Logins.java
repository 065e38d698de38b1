package org.setwright.editions.git;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.jgit.transport.CredentialItem;
import org.eclipse.jgit.transport.CredentialsProvider;
import org.eclipse.jgit.transport.URIish;

/** Answers the library's question for a login: from the user's own Git helpers first, then by asking the person. */
final class Logins extends CredentialsProvider {
	private final Repo repo;
	private final Login.Asking asking;
	private Login given;
	private URIish where;
	private int tries;

	Logins(Repo repo, Login.Asking asking) {
		this.repo = repo;
		this.asking = asking;
	}

	@Override
	public boolean isInteractive() {
		return false;
	}

	@Override
	public boolean supports(CredentialItem... items) {
		for (CredentialItem item : items) {
			if (!(item instanceof CredentialItem.Username || item instanceof CredentialItem.Password)) {
				return false;
			}
		}
		return true;
	}

	@Override
	public boolean get(URIish uri, CredentialItem... items) {
		if (!supports(items)) {
			return false;
		}
		where = uri;
		Optional<Login> found = Optional.ofNullable(given);
		if (found.isEmpty() && tries == 0) {
			found = helpers("fill", null).filter(l -> !l.password().isEmpty());
		}
		if (found.isEmpty() && tries <= 1) {
			tries = 1;
			found = asking.login(uri.setUser(null).setPass(null).toString());
		}
		if (found.isEmpty()) {
			return false;
		}
		given = found.get();
		for (CredentialItem item : items) {
			if (item instanceof CredentialItem.Username name) {
				name.setValue(given.user());
			} else if (item instanceof CredentialItem.Password password) {
				password.setValue(given.password().toCharArray());
			}
		}
		return true;
	}

	/** What was given was refused. */
	@Override
	public void reset(URIish uri) {
		if (given != null) {
			helpers("reject", given);
			given = null;
			tries++;
		}
	}

	/** What was given was right: the user's helpers may remember it, as with Git itself. */
	void accepted() {
		if (given != null && where != null) {
			helpers("approve", given);
		}
	}

	private Optional<Login> helpers(String word, Login login) {
		StringBuilder asked = new StringBuilder("protocol=" + where.getScheme() + "\nhost=" + where.getHost()
				+ (where.getPort() > 0 ? ":" + where.getPort() : "") + "\n");
		if (where.getPath() != null) {
			asked.append("path=").append(where.getPath().replaceFirst("^/", "")).append('\n');
		}
		String user = login != null ? login.user() : where.getUser();
		if (user != null) {
			asked.append("username=").append(user).append('\n');
		}
		if (login != null) {
			asked.append("password=").append(login.password()).append('\n');
		}
		try {
			Programs.Said said = Programs.run(List.of("git", "credential", word), asked.append('\n').toString().getBytes(StandardCharsets.UTF_8),
					repo.folder().toFile(), Map.of("GIT_TERMINAL_PROMPT", "0", "GIT_ASKPASS", "", "SSH_ASKPASS", ""));
			return said.exit() == 0 ? Optional.of(new Login(value(said.text(), "username"), value(said.text(), "password"))) : Optional.empty();
		} catch (IOException noGitHere) {
			return Optional.empty();
		}
	}

	private static String value(String said, String key) {
		return said.lines().filter(l -> l.startsWith(key + "=")).map(l -> l.substring(key.length() + 1)).findFirst().orElse("");
	}
}
