package org.setwright.book.history;

import java.io.IOException;

/**
 * An import stopped when some of its files were in their place already, and they could not be moved back. It is finished by
 * {@link UnfinishedImports} as soon as the disk allows.
 */
public final class ImportCutOff extends IOException {
	ImportCutOff(Exception cause) {
		super(cause.getMessage(), cause);
	}
}
