package org.setwright.workbench.fixes;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.ltk.core.refactoring.Change;
import org.eclipse.ltk.core.refactoring.RefactoringStatus;
import org.eclipse.ltk.core.refactoring.resource.DeleteResourceChange;
import org.eclipse.osgi.util.NLS;

/** A file of the book that is made; undoing removes it. */
final class NewFile extends Change {
	private final IFile file;
	private final String text;

	NewFile(IFile file, String text) {
		this.file = file;
		this.text = text;
	}

	@Override
	public Object getModifiedElement() {
		return file;
	}

	@Override
	public void initializeValidationData(IProgressMonitor monitor) {
		// what matters is whether the file is there when it is made
	}

	@Override
	public RefactoringStatus isValid(IProgressMonitor monitor) {
		return file.exists() ? RefactoringStatus.createFatalErrorStatus(NLS.bind(Messages.NewFile_there, file.getName())) : new RefactoringStatus();
	}

	@Override
	public String getName() {
		return NLS.bind(Messages.NewFile_name, file.getName());
	}

	@Override
	public Change perform(IProgressMonitor monitor) throws CoreException {
		file.create(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)), false, monitor);
		return new DeleteResourceChange(file.getFullPath(), true);
	}
}
