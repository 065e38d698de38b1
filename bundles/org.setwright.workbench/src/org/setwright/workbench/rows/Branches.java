package org.setwright.workbench.rows;

import java.util.List;
import java.util.function.Function;
import org.eclipse.jface.viewers.ITreeContentProvider;

/**
 * What a tree shows: a list of lines, and the lines below each.
 *
 * @param <T> the lines that can have others below them
 */
public class Branches<T> implements ITreeContentProvider {
	private final Class<T> lines;
	private final Function<T, List<?>> below;

	/** @param lines those that can have others below them; any other has none @param below the lines below one; never null */
	public Branches(Class<T> lines, Function<T, List<?>> below) {
		this.lines = lines;
		this.below = below;
	}

	@Override
	public final Object[] getElements(Object all) {
		return ((List<?>) all).toArray();
	}

	@Override
	public final Object[] getChildren(Object line) {
		return lines.isInstance(line) ? below.apply(lines.cast(line)).toArray() : new Object[0];
	}

	/** @return the line above; null when it is not known */
	@Override
	public Object getParent(Object line) {
		return null;
	}

	@Override
	public final boolean hasChildren(Object line) {
		return lines.isInstance(line) && !below.apply(lines.cast(line)).isEmpty();
	}
}
