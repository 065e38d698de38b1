package org.setwright.workbench.tests;

import java.lang.reflect.Field;
import java.lang.reflect.Method;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.ToolItem;
import org.eclipse.swt.widgets.Widget;

/** What the operating system tells a screen reader of a control, asked where the screen reader asks: on GTK, of its accessible object. */
final class Heard {
	private static final String INSIDE = "org.eclipse.swt.internal.";

	private Heard() {
	}

	/** @return the names of those parts of {@code control} that take the keyboard; "" for one without a name */
	static List<String> names(Control control) throws ReflectiveOperationException {
		List<String> names = new ArrayList<>();
		for (String part : control instanceof Combo ? List.of("handle", "entryHandle", "buttonHandle") : List.of("handle")) {
			long handle = handle(control, part);
			if (handle != 0) {
				names.add(property(handle, "accessible-name"));
			}
		}
		return names;
	}

	/** @return what is said after the name */
	static String description(Control control) throws ReflectiveOperationException {
		return property(handle(control, "handle"), "accessible-description");
	}

	/** @return what a sign of a tool bar is called */
	static String name(ToolItem item) throws ReflectiveOperationException {
		long child = (long) inside("gtk3.GTK3", "gtk_bin_get_child", long.class).invoke(null, handle(item, "handle"));
		return child == 0 ? "" : property(child, "accessible-name");
	}

	private static long handle(Widget widget, String part) throws ReflectiveOperationException {
		for (Class<?> type = widget.getClass(); type != null; type = type.getSuperclass()) {
			for (Field field : type.getDeclaredFields()) {
				if (field.getName().equals(part) && field.getType() == long.class) {
					field.setAccessible(true);
					return field.getLong(widget);
				}
			}
		}
		return 0;
	}

	private static String property(long handle, String property) throws ReflectiveOperationException {
		long accessible = (long) inside("gtk3.GTK3", "gtk_widget_get_accessible", long.class).invoke(null, handle);
		long[] words = new long[1];
		inside("gtk.OS", "g_object_get", long.class, byte[].class, long[].class, long.class).invoke(null, accessible,
				(property + '\0').getBytes(StandardCharsets.UTF_8), words, 0L);
		return words[0] == 0 ? "" : (String) inside("Converter", "cCharPtrToJavaString", long.class, boolean.class).invoke(null, words[0], true);
	}

	private static Method inside(String type, String name, Class<?>... takes) throws ReflectiveOperationException {
		Method method = Class.forName(INSIDE + type, true, SWT.class.getClassLoader()).getMethod(name, takes);
		method.setAccessible(true);
		return method;
	}
}
