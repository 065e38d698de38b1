package org.setwright.book.yaml;

import java.util.ArrayList;
import java.util.List;
import org.setwright.book.text.SourceText;
import org.setwright.book.yaml.YamlNode.Mapping;
import org.setwright.book.yaml.YamlNode.Scalar;
import org.setwright.book.yaml.YamlNode.Sequence;
import org.setwright.book.yaml.YamlNode.Style;

/** Finds the comments of a YAML text. */
public final class Comments {
	private final SourceText source;
	private final List<int[]> values = new ArrayList<>();
	private final List<Comment> found = new ArrayList<>();

	private Comments(SourceText source) {
		this.source = source;
	}

	/** One comment. @param text from its # to the end of its line */
	public record Comment(String text, int start) {
		/** @return where it ends */
		public int end() {
			return start + text.stripTrailing().length();
		}
	}

	/** @param root of the tree read from {@code source} @return every comment, in text order */
	public static List<Comment> of(SourceText source, YamlNode root) {
		Comments comments = new Comments(source);
		comments.collect(root);
		comments.scan();
		return comments.found;
	}

	private void collect(YamlNode node) {
		if (node instanceof Scalar scalar) {
			int from = scalar.style() == Style.BLOCK ? source.lineEnd(scalar.start()) : scalar.start();
			if (scalar.end() > from) {
				values.add(new int[] { from, scalar.end() });
			}
		} else if (node instanceof Mapping mapping) {
			mapping.entries().forEach(e -> {
				collect(e.key());
				collect(e.value());
			});
		} else {
			((Sequence) node).items().forEach(this::collect);
		}
	}

	private void scan() {
		String text = source.text();
		int next = 0;
		for (int at = text.indexOf('#'); at >= 0; at = text.indexOf('#', at + 1)) {
			while (next < values.size() && values.get(next)[1] <= at) {
				next++;
			}
			boolean inValue = next < values.size() && values.get(next)[0] <= at;
			if (!inValue && (at == 0 || Character.isWhitespace(text.charAt(at - 1)))) {
				int end = source.lineEnd(at);
				found.add(new Comment(text.substring(at, end).stripTrailing(), at));
				at = end - 1;
			}
		}
	}
}
