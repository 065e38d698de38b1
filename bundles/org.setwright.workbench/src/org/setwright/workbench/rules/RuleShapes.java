package org.setwright.workbench.rules;

import org.eclipse.jface.text.templates.GlobalTemplateVariables;
import org.eclipse.jface.text.templates.TemplateContextType;

/** Where the shapes of rules may be used: between rules. */
public final class RuleShapes extends TemplateContextType {

	/** Made by the platform. */
	public RuleShapes() {
		addResolver(new GlobalTemplateVariables.Cursor());
		addResolver(new GlobalTemplateVariables.Dollar());
	}
}
