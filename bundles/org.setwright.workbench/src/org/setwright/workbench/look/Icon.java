package org.setwright.workbench.look;

import java.net.URL;
import java.util.Locale;
import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.jface.resource.ImageRegistry;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.graphics.Image;

/** Every sign used in the window. Each differs from the others in shape, not in colour alone. */
public enum Icon {
	ADD, AS_EXPECTED, BOOK, CALCULATED, CHECK_AT_START_UP, CONDITION, DANGER, DIFFERS, DISPUTED, DOES_NOT_RUN, FACT, FINDING, FOLDER,
	GAP, HELD_OPEN, JOB, KNOWN, LICENSED_WORK, NONE, NOT_NEEDED, NOTE, NOTHING_EXPECTED, OPEN, OUTRANKED, PARTLY_KNOWN,
	PERHAPS, PROBLEM, REASONS, REMOVE, REVIEW, RULE, SETTLED, SETTLED_SO_FAR, SETUP, SETWRIGHT, STOP, TABLE, UNKNOWN,
	VERIFY, WRITE;

	/** @return its drawing */
	public URL drawing() {
		return Icon.class.getResource("/icons/" + name().toLowerCase(Locale.ROOT).replace('_', '-') + ".svg"); //$NON-NLS-1$ //$NON-NLS-2$
	}

	/** @return a description from which the platform makes images */
	public ImageDescriptor descriptor() {
		return ImageDescriptor.createFromURL(drawing());
	}

	/** @return the image, shared by all and never to be disposed; call in the window's thread */
	public Image image() {
		ImageRegistry registry = JFaceResources.getImageRegistry();
		String key = Icon.class.getName() + name();
		if (registry.getDescriptor(key) == null) {
			registry.put(key, descriptor());
		}
		return registry.get(key);
	}

	/** @return the sign of a choice such as a kind of caution or a standing; there must be one of its name */
	public static Icon of(Enum<?> choice) {
		return valueOf(choice.name());
	}
}
