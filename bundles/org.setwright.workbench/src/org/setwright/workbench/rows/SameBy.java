package org.setwright.workbench.rows;

import java.util.function.Function;
import org.eclipse.jface.viewers.IElementComparer;

/**
 * Which line of what is shown now is a line of what was shown before, so that what is picked or unfolded outlives new results.
 *
 * @param <T> the lines compared; anything else is the same when it is equal
 */
public final class SameBy<T> implements IElementComparer {
	private final Class<T> lines;
	private final Function<T, ?> key;

	/** @param key what is equal for two lines that are the same; never null */
	public SameBy(Class<T> lines, Function<T, ?> key) {
		this.lines = lines;
		this.key = key;
	}

	@Override
	public boolean equals(Object a, Object b) {
		return lines.isInstance(a) && lines.isInstance(b) ? key(a).equals(key(b)) : a.equals(b);
	}

	/** The whole list is looked up, too, and would be slow to go through. */
	@Override
	public int hashCode(Object element) {
		return lines.isInstance(element) ? key(element).hashCode() : System.identityHashCode(element);
	}

	private Object key(Object line) {
		return key.apply(lines.cast(line));
	}
}
