package org.setwright.editions.git;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.eclipse.jgit.api.CommitCommand;
import org.eclipse.jgit.api.errors.GitAPIException;
import org.eclipse.jgit.lib.CommitBuilder;
import org.eclipse.jgit.lib.GpgConfig;
import org.eclipse.jgit.lib.GpgSignature;
import org.eclipse.jgit.lib.PersonIdent;
import org.eclipse.jgit.lib.Repository;
import org.eclipse.jgit.lib.Signer;
import org.eclipse.jgit.transport.CredentialsProvider;
import org.setwright.editions.kept.Who;

/** Signs with the program that the user's own Git is set up to sign with; no key is ever read here. */
final class OwnSigner implements Signer {
	private final boolean ssh;
	private final String program;

	private OwnSigner(GpgConfig config) {
		ssh = config.getKeyFormat() == GpgConfig.GpgFormat.SSH;
		String set = config.getProgram();
		program = set != null && !set.isBlank() ? set : ssh ? "ssh-keygen" : "gpg";
	}

	/** Lets {@code commit} be signed when the user's Git signs commits. */
	static void use(Repo repo, CommitCommand commit) {
		GpgConfig config = new GpgConfig(repo.git().getConfig());
		if (config.isSignCommits()) {
			commit.setSign(true).setSigningKey(config.getSigningKey()).setSigner(new OwnSigner(config));
		}
	}

	/** Signs {@code commit} when the user's Git signs commits. */
	static void use(Repo repo, CommitBuilder commit, Who by) throws IOException, GitAPIException {
		GpgConfig config = new GpgConfig(repo.git().getConfig());
		if (config.isSignCommits()) {
			new OwnSigner(config).signObject(repo.git(), config, commit, repo.ident(by), config.getSigningKey(), null);
		}
	}

	/** @return whether the user's Git is set up to sign tags */
	static boolean setUp(Repo repo) {
		GpgConfig config = new GpgConfig(repo.git().getConfig());
		return config.isSignAllTags() || config.isSignAnnotated() || config.isSignCommits() || config.getSigningKey() != null;
	}

	static OwnSigner of(Repo repo) {
		return new OwnSigner(new GpgConfig(repo.git().getConfig()));
	}

	@Override
	public GpgSignature sign(Repository repository, GpgConfig config, byte[] data, PersonIdent committer, String signingKey,
			CredentialsProvider credentials) throws IOException {
		String key = signingKey != null ? signingKey : config.getSigningKey();
		return new GpgSignature(ssh ? ssh(data, key) : gpg(data, key != null ? key : committer.getEmailAddress()));
	}

	private byte[] gpg(byte[] data, String key) throws IOException {
		return run(List.of(program, "--status-fd=2", "-bsau", key), data);
	}

	private byte[] ssh(byte[] data, String key) throws IOException {
		if (key == null) {
			throw new IOException("Git is told to sign with SSH, but user.signingkey names no key");
		}
		Path text = Files.createTempFile("setwright", ".signing");
		try {
			Files.write(text, data);
			List<String> words = new ArrayList<>(List.of(program, "-Y", "sign", "-n", "git", "-f", key.replaceFirst("^~(?=/)", home())));
			words.add(text.toString());
			run(words, new byte[0]);
			return Files.readAllBytes(Path.of(text + ".sig"));
		} finally {
			Files.deleteIfExists(text);
			Files.deleteIfExists(Path.of(text + ".sig"));
		}
	}

	private static String home() {
		return System.getProperty("user.home").replace("\\", "\\\\");
	}

	private static byte[] run(List<String> words, byte[] input) throws IOException {
		Programs.Said said = Programs.run(words, input, null);
		if (said.exit() != 0 || said.out().length == 0 && words.contains("-bsau")) {
			throw new IOException("the signing program " + words.get(0) + " said: " + said.err().strip().replaceAll("\\s+", " "));
		}
		return said.out().length == 0 ? new byte[0] : new String(said.out(), StandardCharsets.US_ASCII).getBytes(StandardCharsets.US_ASCII);
	}

	@Override
	public boolean canLocateSigningKey(Repository repository, GpgConfig config, PersonIdent committer, String signingKey,
			CredentialsProvider credentials) {
		return true;
	}
}
