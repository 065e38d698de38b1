package org.setwright.editions.git;

import java.io.ByteArrayOutputStream;
import java.io.File;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;

/** Runs the user's own Git, SSH and signing programs. */
final class Programs {
	private Programs() {
	}

	/** What a program said. @param exit its exit code @param out what it wrote out @param err what it complained of */
	record Said(int exit, byte[] out, String err) {
		String text() {
			return new String(out, StandardCharsets.UTF_8);
		}
	}

	/** @param folder where it runs; null for here @throws IOException when there is no such program, or it was cut off */
	static Said run(List<String> words, byte[] input, File folder) throws IOException {
		return run(words, input, folder, Map.of());
	}

	/** @param environment what is added to this program's own */
	static Said run(List<String> words, byte[] input, File folder, Map<String, String> environment) throws IOException {
		ProcessBuilder builder = new ProcessBuilder(words).directory(folder);
		builder.environment().putAll(environment);
		Process process = builder.start();
		ByteArrayOutputStream complaints = new ByteArrayOutputStream();
		Thread reader = new Thread(() -> {
			try {
				process.getErrorStream().transferTo(complaints);
			} catch (IOException cutOff) {
				complaints.writeBytes(" (cut off)".getBytes(StandardCharsets.UTF_8));
			}
		}, "complaints of " + words.get(0));
		reader.start();
		try {
			try (OutputStream to = process.getOutputStream()) {
				to.write(input);
			} catch (IOException itDoesNotRead) {
				if (process.isAlive() && input.length > 0) {
					throw itDoesNotRead;
				}
			}
			byte[] out = process.getInputStream().readAllBytes();
			int exit = process.waitFor();
			reader.join();
			return new Said(exit, out, complaints.toString(StandardCharsets.UTF_8));
		} catch (InterruptedException e) {
			process.destroy();
			Thread.currentThread().interrupt();
			throw new IOException(words.get(0) + " was interrupted", e);
		}
	}
}
