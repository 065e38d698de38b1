package org.setwright.engine.throughput;

import java.io.IOException;
import java.io.StringWriter;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import javax.tools.JavaCompiler;
import javax.tools.JavaFileObject;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;

/** Compiles Java sources and loads what comes of them. */
final class Compiled {
	private Compiled() {
	}

	/**
	 * @param sources by the simple name of the class; all in package {@link PlainClasses#PACKAGE}
	 * @param folder empty, for the sources and classes
	 * @return a loader that sees the classes and those of this program
	 */
	static ClassLoader in(Path folder, Map<String, String> sources) throws IOException {
		List<Path> files = new ArrayList<>();
		for (Map.Entry<String, String> source : sources.entrySet()) {
			files.add(Files.writeString(folder.resolve(source.getKey() + ".java"), source.getValue()));
		}
		JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
		StringWriter said = new StringWriter();
		try (StandardJavaFileManager manager = compiler.getStandardFileManager(null, null, null)) {
			Iterable<? extends JavaFileObject> units = manager.getJavaFileObjectsFromPaths(files);
			List<String> options = List.of("-d", folder.toString(), "--release", "17", "-proc:none");
			if (!compiler.getTask(said, manager, null, options, null, units).call()) {
				throw new IllegalStateException("generated Java does not compile: " + said);
			}
		}
		return new URLClassLoader(new URL[] { folder.toUri().toURL() }, Compiled.class.getClassLoader());
	}
}
