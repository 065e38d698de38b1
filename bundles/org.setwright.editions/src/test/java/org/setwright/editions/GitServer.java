package org.setwright.editions;

import com.sun.net.httpserver.BasicAuthenticator;
import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import com.sun.net.httpserver.HttpsConfigurator;
import com.sun.net.httpserver.HttpsServer;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.KeyStore;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.zip.GZIPInputStream;
import javax.net.ssl.KeyManagerFactory;
import javax.net.ssl.SSLContext;

/** Serves the repositories of a folder through command-line Git's own server program, to whoever knows a name and password. */
final class GitServer implements AutoCloseable {
	private final HttpServer server;
	private final ExecutorService threads = Executors.newCachedThreadPool();
	private final Path folder;
	private final String scheme;

	private GitServer(HttpServer server, String scheme, Path folder, String user, String password) {
		this.server = server;
		this.scheme = scheme;
		this.folder = folder;
		server.createContext("/", this::serve).setAuthenticator(new BasicAuthenticator("editions") {
			@Override
			public boolean checkCredentials(String name, String word) {
				return name.equals(user) && word.equals(password);
			}
		});
		server.setExecutor(threads);
		server.start();
	}

	static GitServer plain(Path folder, String user, String password) throws IOException {
		return new GitServer(HttpServer.create(local(), 0), "http", folder, user, password);
	}

	/** With a certificate that nobody vouches for. */
	static GitServer secure(Path folder, String user, String password) throws IOException {
		Path store = folder.resolve("keys.p12");
		Shop.run(folder, Map.of(), List.of("keytool", "-genkeypair", "-keyalg", "EC", "-alias", "server", "-dname", "CN=localhost", "-storetype", "PKCS12",
				"-keystore", store.toString(), "-storepass", "testing", "-validity", "10"));
		try (InputStream in = Files.newInputStream(store)) {
			KeyStore keys = KeyStore.getInstance("PKCS12");
			keys.load(in, "testing".toCharArray());
			KeyManagerFactory factory = KeyManagerFactory.getInstance(KeyManagerFactory.getDefaultAlgorithm());
			factory.init(keys, "testing".toCharArray());
			SSLContext context = SSLContext.getInstance("TLS");
			context.init(factory.getKeyManagers(), null, null);
			HttpsServer server = HttpsServer.create(local(), 0);
			server.setHttpsConfigurator(new HttpsConfigurator(context));
			return new GitServer(server, "https", folder, user, password);
		} catch (GeneralSecurityException e) {
			throw new IOException(e);
		}
	}

	private static InetSocketAddress local() {
		return new InetSocketAddress(InetAddress.getLoopbackAddress(), 0);
	}

	String address(String repository) {
		return scheme + "://localhost:" + server.getAddress().getPort() + "/" + repository;
	}

	private void serve(HttpExchange exchange) throws IOException {
		ProcessBuilder builder = new ProcessBuilder("git", "http-backend");
		Map<String, String> environment = builder.environment();
		environment.put("GIT_PROJECT_ROOT", folder.toString());
		environment.put("GIT_HTTP_EXPORT_ALL", "1");
		environment.put("PATH_INFO", exchange.getRequestURI().getPath());
		environment.put("QUERY_STRING", exchange.getRequestURI().getRawQuery() == null ? "" : exchange.getRequestURI().getRawQuery());
		environment.put("REQUEST_METHOD", exchange.getRequestMethod());
		environment.put("REMOTE_USER", exchange.getPrincipal().getUsername());
		environment.put("CONTENT_TYPE", String.valueOf(exchange.getRequestHeaders().getFirst("Content-Type")));
		InputStream in = exchange.getRequestBody();
		byte[] asked = ("gzip".equals(exchange.getRequestHeaders().getFirst("Content-Encoding")) ? new GZIPInputStream(in) : in).readAllBytes();
		environment.put("CONTENT_LENGTH", Integer.toString(asked.length));
		Process process = builder.start();
		try (OutputStream to = process.getOutputStream()) {
			to.write(asked);
		}
		byte[] all = process.getInputStream().readAllBytes();
		String text = new String(all, StandardCharsets.ISO_8859_1);
		int head = text.indexOf("\r\n\r\n");
		int status = 200;
		for (String line : text.substring(0, head).split("\r\n")) {
			String[] parts = line.split(": ", 2);
			if (parts[0].equals("Status")) {
				status = Integer.parseInt(parts[1].substring(0, 3));
			} else {
				exchange.getResponseHeaders().add(parts[0], parts[1]);
			}
		}
		exchange.sendResponseHeaders(status, all.length - head - 4 == 0 ? -1 : all.length - head - 4);
		try (OutputStream out = exchange.getResponseBody()) {
			out.write(all, head + 4, all.length - head - 4);
		}
	}

	@Override
	public void close() {
		server.stop(0);
		threads.shutdownNow();
	}
}
