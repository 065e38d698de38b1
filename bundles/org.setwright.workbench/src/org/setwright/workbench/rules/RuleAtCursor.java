package org.setwright.workbench.rules;

import java.util.Collection;
import java.util.Optional;
import org.eclipse.core.resources.IFile;
import org.eclipse.jface.text.ITextSelection;
import org.eclipse.jface.viewers.ISelection;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.ISelectionListener;
import org.eclipse.ui.IWorkbenchPart;
import org.setwright.engine.language.Rule;
import org.setwright.workbench.desk.Desk;
import org.setwright.workbench.folder.BookProject;

/** Takes note of the rule, or row of a table, in which the cursor of an editor stands. */
public final class RuleAtCursor implements ISelectionListener {
	private final Desk desk;

	/** @param desk where the rule is put to be looked at */
	public RuleAtCursor(Desk desk) {
		this.desk = desk;
	}

	@Override
	public void selectionChanged(IWorkbenchPart part, ISelection selection) {
		if (part instanceof IEditorPart editor && selection instanceof ITextSelection cursor) {
			Optional.ofNullable(editor.getEditorInput().getAdapter(IFile.class)).flatMap(file -> BookProject.path(file.getFullPath()))
					.flatMap(path -> desk.state().latest().flatMap(e -> e.rules().edition())
							.flatMap(edition -> at(edition.rules(), path, cursor.getStartLine() + 1)))
					.ifPresent(rule -> desk.pickRule(rule.name()));
		}
	}

	/** @param line from 1 @return the rule that stands on this line of the file at {@code path} */
	static Optional<Rule> at(Collection<Rule> rules, String path, int line) {
		return rules.stream().filter(r -> r.at().file().equals(path) && r.at().line() <= line
				&& line < r.at().line() + Math.max(1, r.text().strip().lines().count())).findFirst();
	}
}
