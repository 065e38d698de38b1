package org.setwright.workbench.fixes;

import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.contentassist.ICompletionProposal;
import org.eclipse.jface.text.contentassist.IContextInformation;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.Point;
import org.eclipse.ui.PlatformUI;
import org.setwright.workbench.look.Icon;
import org.setwright.workbench.look.Lines;
import org.setwright.writing.fix.Fix;

/** A fix in the list that a key opens in the editor. */
final class FixProposal implements ICompletionProposal {
	private final String path;
	private final Fix fix;

	FixProposal(String path, Fix fix) {
		this.path = path;
		this.fix = fix;
	}

	@Override
	public void apply(IDocument document) {
		FixDone.on(PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage(), path, fix);
	}

	@Override
	public Point getSelection(IDocument document) {
		return null;
	}

	@Override
	public String getAdditionalProposalInfo() {
		return fix.detail().isEmpty() ? null : Lines.broken(fix.detail());
	}

	@Override
	public String getDisplayString() {
		return fix.title();
	}

	@Override
	public Image getImage() {
		return Icon.WRITE.image();
	}

	@Override
	public IContextInformation getContextInformation() {
		return null;
	}
}
