package org.setwright.workbench.drafts;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IFolder;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IPath;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.core.runtime.Status;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.IDocument;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.statushandlers.StatusManager;
import org.setwright.workbench.fixes.FixDone;
import org.setwright.workbench.folder.BookProject;
import org.setwright.workbench.folder.BookTexts;
import org.setwright.workbench.folder.Places;
import org.setwright.writing.drafts.Draft;
import org.setwright.writing.text.TextEdit;

/** Asks what is to become of drafts, and puts them back into their editors. */
final class DraftOffer {
	/** What a person decides. */
	enum Answer {
		PUT_BACK, THROW_AWAY, LATER
	}

	private DraftOffer() {
	}

	static Answer ask(Shell shell, List<Draft> drafts) {
		String files = drafts.stream().map(Draft::path).collect(Collectors.joining("\n")); //$NON-NLS-1$
		String[] buttons = { Messages.DraftOffer_putBack, Messages.DraftOffer_later, Messages.DraftOffer_throwAway };
		int pressed = new MessageDialog(shell, Messages.DraftOffer_title, null, NLS.bind(Messages.DraftOffer_question, files), MessageDialog.QUESTION, 0,
				buttons).open();
		return pressed == 0 ? Answer.PUT_BACK : pressed == 2 ? Answer.THROW_AWAY : Answer.LATER;
	}

	/** Opens the editor of the file and puts the text there, not saved. A file that is gone is made again. @return whether it is there now */
	static boolean putBack(IWorkbenchPage page, Draft draft) {
		try {
			if (BookProject.file(draft.path()).isEmpty()) {
				makeAgain(draft);
				return true;
			}
			Places.openJob(page, draft.path());
			Optional<IDocument> document = BookTexts.document(draft.path());
			if (document.isPresent()) {
				FixDone.type(document.get(), List.of(TextEdit.between(document.get().get(), draft.text())));
				return true;
			}
			tell(draft, null);
		} catch (CoreException | BadLocationException refused) {
			tell(draft, refused);
		}
		return false;
	}

	private static void tell(Draft draft, Exception why) {
		StatusManager.getManager().handle(new Status(IStatus.WARNING, DraftOffer.class, NLS.bind(Messages.DraftOffer_notPutBack, draft.path()), why),
				StatusManager.SHOW);
	}

	private static void makeAgain(Draft draft) throws CoreException {
		IFolder folder = BookProject.linked().orElseThrow();
		IFile file = folder.getFile(IPath.fromPortableString(draft.path()));
		file.create(new ByteArrayInputStream(draft.text().getBytes(StandardCharsets.UTF_8)), false, new NullProgressMonitor());
	}
}
