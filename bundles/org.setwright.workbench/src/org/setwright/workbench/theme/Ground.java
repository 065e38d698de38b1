package org.setwright.workbench.theme;

import java.lang.reflect.Method;
import java.util.Locale;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.swt.SWT;

/** Light or dark: asks the operating system to draw its own controls that way. */
public enum Ground {
	LIGHT, DARK;

	private static final String PREFIX = "org.setwright.workbench."; //$NON-NLS-1$

	/** @return the ground the person chose last; light to begin with */
	public static Ground chosen() {
		String id = InstanceScope.INSTANCE.getNode("org.eclipse.e4.ui.css.swt.theme").get("themeid", LIGHT.themeId()); //$NON-NLS-1$ //$NON-NLS-2$
		return id.equals(DARK.themeId()) ? DARK : LIGHT;
	}

	/** @return the name of its style sheet in the registry */
	public String themeId() {
		return PREFIX + name().toLowerCase(Locale.ROOT);
	}

	/** Has the controls drawn this way from now on. The platform offers no public call for it; failing leaves them as they are. */
	public void draw() {
		String system = SWT.getPlatform();
		String method = "gtk".equals(system) ? "setDarkThemePreferred" : "setTheme"; //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
		try {
			Class<?> os = Class.forName("org.eclipse.swt.internal." + system + ".OS"); //$NON-NLS-1$ //$NON-NLS-2$
			Method set = os.getDeclaredMethod(method, boolean.class);
			set.setAccessible(true);
			set.invoke(null, this == DARK);
		} catch (ReflectiveOperationException | LinkageError notOffered) {
			ILog.of(Ground.class).info("controls keep the ground the system gives them", notOffered); //$NON-NLS-1$
		}
	}
}
