package org.setwright.workbench.desk;

import org.eclipse.ui.services.AbstractServiceFactory;
import org.eclipse.ui.services.IServiceLocator;

/** Gives the window its one {@link Desk}. */
public final class DeskFactory extends AbstractServiceFactory {
	private final Desk desk = new Desk();

	@Override
	public Object create(@SuppressWarnings("rawtypes") Class service, IServiceLocator parent, IServiceLocator locator) {
		return service == Desk.class ? desk : null;
	}
}
