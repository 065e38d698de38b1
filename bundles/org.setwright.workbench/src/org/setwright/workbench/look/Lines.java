package org.setwright.workbench.look;

/** Breaks sentences into lines, for places that do not do it themselves. */
public final class Lines {
	private static final int WIDTH_IN_CHARACTERS = 72;

	private Lines() {
	}

	/** @return {@code text} with lines of at most 72 characters, broken between words where that is possible */
	public static String broken(String text) {
		StringBuilder broken = new StringBuilder();
		for (String line : text.split("\n", -1)) { //$NON-NLS-1$
			broken.append(broken.isEmpty() ? "" : "\n"); //$NON-NLS-1$ //$NON-NLS-2$
			int width = 0;
			for (String word : line.split(" ")) { //$NON-NLS-1$
				boolean fits = width == 0 || width + 1 + word.length() <= WIDTH_IN_CHARACTERS;
				broken.append(width == 0 ? "" : fits ? " " : "\n").append(word); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
				width = fits && width > 0 ? width + 1 + word.length() : word.length();
			}
		}
		return broken.toString();
	}
}
