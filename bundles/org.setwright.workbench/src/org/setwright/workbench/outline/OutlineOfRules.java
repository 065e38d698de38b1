package org.setwright.workbench.outline;

import java.util.Optional;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.runtime.IAdapterFactory;
import org.eclipse.ui.texteditor.ITextEditor;
import org.eclipse.ui.views.contentoutline.IContentOutlinePage;

/** Gives editors of rules their outline. */
public final class OutlineOfRules implements IAdapterFactory {
	private static final String RULES = "drl"; //$NON-NLS-1$

	@Override
	public <T> T getAdapter(Object editor, Class<T> wanted) {
		if (wanted == IContentOutlinePage.class && editor instanceof ITextEditor text && text.getEditorInput() != null) {
			return Optional.ofNullable(text.getEditorInput().getAdapter(IFile.class)).filter(f -> RULES.equals(f.getFileExtension()))
					.map(f -> wanted.cast(new RuleOutline(text))).orElse(null);
		}
		return null;
	}

	@Override
	public Class<?>[] getAdapterList() {
		return new Class<?>[] { IContentOutlinePage.class };
	}
}
