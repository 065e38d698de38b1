package org.setwright.workbench.rules;

import java.io.IOException;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.jface.text.IRegion;
import org.eclipse.jface.text.ITextViewer;
import org.eclipse.jface.text.contentassist.ICompletionProposal;
import org.eclipse.jface.text.templates.Template;
import org.eclipse.jface.text.templates.TemplateCompletionProcessor;
import org.eclipse.jface.text.templates.TemplateContextType;
import org.eclipse.jface.text.templates.persistence.TemplateStore;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.editors.text.templates.ContributionContextTypeRegistry;
import org.eclipse.ui.editors.text.templates.ContributionTemplateStore;
import org.eclipse.ui.preferences.ScopedPreferenceStore;
import org.eclipse.ui.statushandlers.StatusManager;
import org.setwright.workbench.look.Icon;
import org.setwright.writing.text.RuleText;

/** Offers the common shapes of a rule between rules, with the places to fill in. */
public final class RuleTemplates extends TemplateCompletionProcessor {
	private static final String CONTEXT = "org.setwright.workbench.rule"; //$NON-NLS-1$
	private static final String KEY = "org.setwright.workbench.templates"; //$NON-NLS-1$
	private static TemplateStore store;
	private static ContributionContextTypeRegistry contexts;

	private static synchronized TemplateStore store() {
		if (store == null) {
			contexts = new ContributionContextTypeRegistry();
			contexts.addContextType(CONTEXT);
			store = new ContributionTemplateStore(contexts, new ScopedPreferenceStore(InstanceScope.INSTANCE, "org.setwright.workbench"), KEY); //$NON-NLS-1$
			try {
				store.load();
			} catch (IOException unreadable) {
				StatusManager.getManager().handle(new Status(IStatus.WARNING, RuleTemplates.class, Messages.RuleTemplates_unreadable, unreadable));
			}
		}
		return store;
	}

	/** Asked in the background; what is selected can only be seen in the window's thread. */
	@Override
	public ICompletionProposal[] computeCompletionProposals(ITextViewer viewer, int offset) {
		ICompletionProposal[][] offered = new ICompletionProposal[1][];
		Display.getDefault().syncExec(() -> offered[0] = viewer.getTextWidget() == null || viewer.getTextWidget().isDisposed() ? new ICompletionProposal[0]
				: super.computeCompletionProposals(viewer, offset));
		return offered[0];
	}

	/** A shape of a rule makes no sense inside of one. */
	@Override
	protected TemplateContextType getContextType(ITextViewer viewer, IRegion region) {
		store();
		boolean inside = RuleText.of(viewer.getDocument().get()).blocks().stream()
				.anyMatch(b -> b.start() < region.getOffset() && region.getOffset() <= b.end() && b.name().isPresent());
		return inside ? null : contexts.getContextType(CONTEXT);
	}

	@Override
	protected Template[] getTemplates(String contextType) {
		return store().getTemplates(contextType);
	}

	@Override
	protected Image getImage(Template template) {
		return Icon.RULE.image();
	}
}
