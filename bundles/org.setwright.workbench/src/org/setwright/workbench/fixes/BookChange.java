package org.setwright.workbench.fixes;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.eclipse.core.resources.IFile;
import org.eclipse.ltk.core.refactoring.Change;
import org.eclipse.ltk.core.refactoring.CompositeChange;
import org.eclipse.ltk.core.refactoring.TextFileChange;
import org.eclipse.text.edits.MultiTextEdit;
import org.eclipse.text.edits.ReplaceEdit;
import org.setwright.workbench.folder.BookProject;
import org.setwright.writing.text.TextEdit;

/** Edits to several files of the book as the platform's change, which can be previewed, made and undone in one piece. */
public final class BookChange {
	private BookChange() {
	}

	/** @param edits by path below the book folder; a file that is not there is made of what is added @return the change; nothing is made yet */
	public static Change of(String title, Map<String, List<TextEdit>> edits) {
		CompositeChange all = new CompositeChange(title);
		all.markAsSynthetic();
		new TreeMap<>(edits).forEach((path, made) -> BookProject.place(path).ifPresent(file -> all.add(file.exists() ? inFile(path, file, made)
				: new NewFile(file, TextEdit.apply("", made)))));
		return all;
	}

	/** What was saved before is saved after, what was not, is not. */
	private static Change inFile(String path, IFile file, List<TextEdit> edits) {
		TextFileChange change = new TextFileChange(path, file);
		change.setSaveMode(TextFileChange.KEEP_SAVE_STATE);
		change.setTextType(file.getFileExtension());
		MultiTextEdit root = new MultiTextEdit();
		change.setEdit(root);
		for (TextEdit edit : edits) {
			ReplaceEdit replace = new ReplaceEdit(edit.start(), edit.end() - edit.start(), edit.text());
			root.addChild(replace);
			change.addTextEditGroup(new org.eclipse.text.edits.TextEditGroup(path, replace));
		}
		return change;
	}
}
