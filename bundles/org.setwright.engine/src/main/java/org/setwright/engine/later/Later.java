package org.setwright.engine.later;

import java.util.Objects;
import java.util.function.Supplier;

/**
 * Something that is worked out when it is first asked for, and once. A run keeps all that its reasons need, but puts them into
 * words only for those that somebody reads. Thread-safe; two are equal when what they come to is.
 */
public final class Later<T> implements Supplier<T> {
	private Supplier<T> work;
	private T done;

	/** @param work never gives null */
	public Later(Supplier<T> work) {
		this.work = Objects.requireNonNull(work);
	}

	@Override
	public synchronized T get() {
		if (work != null) {
			done = Objects.requireNonNull(work.get());
			work = null;
		}
		return done;
	}

	@Override
	public boolean equals(Object other) {
		return this == other || other instanceof Later<?> later && get().equals(later.get());
	}

	@Override
	public int hashCode() {
		return get().hashCode();
	}

	@Override
	public String toString() {
		return get().toString();
	}
}
