package org.setwright.workbench.bench;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Shell;
import org.setwright.bench.Script;
import org.setwright.bench.told.Tone;
import org.setwright.book.AtomicFile;

/** Lines in files. @param shell above which files are asked for */
record Scripts(Shell shell) {

	/** What a file holds. @param told what to tell of it @param lines to be followed */
	record Read(Told told, List<String> lines) {
	}

	/** @return the file that {@code name} means: below the home folder, unless it says otherwise; empty when it is no name */
	Optional<Path> named(String name) {
		try {
			return Optional.of(Path.of(System.getProperty("user.home", "")).resolve(name)); //$NON-NLS-1$ //$NON-NLS-2$
		} catch (InvalidPathException noName) {
			return Optional.empty();
		}
	}

	/** @return where somebody wants the lines */
	Optional<Path> askWhere() {
		FileDialog dialog = new FileDialog(shell, SWT.SAVE);
		dialog.setText(Messages.Scripts_save);
		dialog.setFileName("trial.txt"); //$NON-NLS-1$
		dialog.setOverwrite(true);
		return Optional.ofNullable(dialog.open()).map(Path::of);
	}

	/** @return which lines somebody wants */
	Optional<Path> askWhich() {
		FileDialog dialog = new FileDialog(shell, SWT.OPEN);
		dialog.setText(Messages.Scripts_replay);
		return Optional.ofNullable(dialog.open()).map(Path::of);
	}

	/** Writes {@code text}. @param instead whether a file that is there may be replaced @return what to tell of {@code line} */
	Told write(String line, Optional<Path> file, String text, boolean instead) {
		if (file.isEmpty()) {
			return Told.sentence(line, Tone.ALARM, Messages.Scripts_noName);
		} else if (Files.exists(file.get()) && !instead) {
			return Told.sentence(line, Tone.ALARM, NLS.bind(Messages.Scripts_there, file.get()));
		}
		try {
			AtomicFile.write(file.get(), text);
			return Told.sentence(line, Tone.GOOD, NLS.bind(Messages.Scripts_saved, file.get()));
		} catch (IOException unwritable) {
			return Told.sentence(line, Tone.ALARM, NLS.bind(Messages.Scripts_unwritable, file.get()));
		}
	}

	/** @return what {@code file} holds */
	Read read(String line, Optional<Path> file) {
		try {
			List<String> lines = file.isEmpty() ? List.of() : Script.lines(Files.readString(file.get(), StandardCharsets.UTF_8));
			return file.isEmpty() ? new Read(Told.sentence(line, Tone.ALARM, Messages.Scripts_noName), List.of())
					: new Read(Told.sentence(line, Tone.QUIET, NLS.bind(Messages.Scripts_replaying, lines.size(), file.get())), lines);
		} catch (IOException unreadable) {
			return new Read(Told.sentence(line, Tone.ALARM, NLS.bind(Messages.Scripts_unreadable, file.get())), List.of());
		}
	}
}
