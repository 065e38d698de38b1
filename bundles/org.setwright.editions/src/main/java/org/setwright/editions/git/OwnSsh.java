package org.setwright.editions.git;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.eclipse.jgit.transport.CredentialsProvider;
import org.eclipse.jgit.transport.RemoteSession;
import org.eclipse.jgit.transport.SshSessionFactory;
import org.eclipse.jgit.transport.URIish;
import org.eclipse.jgit.util.FS;

/** Reaches other places through the user's own SSH program, with its keys, agent, known hosts and settings, as Git does. */
final class OwnSsh extends SshSessionFactory {
	private final String command;

	private OwnSsh(String command) {
		this.command = command;
	}

	static OwnSsh of(Repo repo) {
		String said = System.getenv("GIT_SSH_COMMAND");
		String set = repo.git().getConfig().getString("core", null, "sshCommand");
		return new OwnSsh(said != null && !said.isBlank() ? said : set != null && !set.isBlank() ? set : "ssh");
	}

	@Override
	public RemoteSession getSession(URIish uri, CredentialsProvider credentials, FS files, int milliseconds) {
		return new RemoteSession() {
			private Process process;

			@Override
			public Process exec(String asked, int seconds) throws IOException {
				process = new ProcessBuilder(words(uri, asked)).start();
				return process;
			}

			@Override
			public void disconnect() {
				if (process != null) {
					process.destroy();
				}
			}
		};
	}

	private List<String> words(URIish uri, String asked) {
		List<String> words = new ArrayList<>(command.equals("ssh") ? List.of("ssh") : List.of("sh", "-c", command + " \"$@\"", command));
		if (uri.getPort() > 0) {
			words.addAll(List.of("-p", Integer.toString(uri.getPort())));
		}
		String host = uri.getUser() == null ? uri.getHost() : uri.getUser() + "@" + uri.getHost();
		words.addAll(List.of("--", host, asked));
		if (!command.equals("ssh")) {
			words.remove("--");
		}
		return words;
	}

	@Override
	public String getType() {
		return "own";
	}
}
