package org.setwright.workbench.look;

import java.lang.reflect.Field;
import java.lang.reflect.Method;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.ToolItem;
import org.eclipse.swt.widgets.Widget;

/**
 * Gives a control its name on the accessibility bus of Linux. There SWT hands the answers of accessible listeners on only for
 * controls it paints itself; lists, trees, fields and buttons of the system stay nameless, and so do signs of a tool bar. SWT
 * offers no public call for it; where it cannot be done the listeners have to do. On other systems they do.
 */
final class NativeName {
	private static final String NAME = "accessible-name"; //$NON-NLS-1$
	private static final String DESCRIPTION = "accessible-description"; //$NON-NLS-1$
	/** What a control may consist of; a combo takes the keyboard in its inner parts. */
	private static final List<String> PARTS = List.of("handle", "entryHandle", "buttonHandle"); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$

	private NativeName() {
	}

	/** Has the system call {@code control} {@code name}. */
	static void name(Control control, String name) {
		set(control, NAME, name);
	}

	/** Has the system say {@code words} of {@code control}, after its name. */
	static void describe(Control control, String words) {
		set(control, DESCRIPTION, words);
	}

	/** Has the system call a sign of a tool bar {@code name}. */
	static void name(ToolItem item, String name) {
		if (gtk()) {
			try {
				set(child(handle(item, PARTS.get(0))), NAME, name);
			} catch (ReflectiveOperationException | LinkageError notOffered) {
				// stays as it is, see above
			}
		}
	}

	/** Has the system's own cursor stand in a cell, so that it tells which; the row is the one picked. */
	static void cursor(Table table, int row, TableColumn column) {
		if (gtk()) {
			try {
				long path = (long) inside("gtk.GTK", "gtk_tree_path_new").invoke(null); //$NON-NLS-1$ //$NON-NLS-2$
				inside("gtk.GTK", "gtk_tree_path_append_index", long.class, int.class).invoke(null, path, row); //$NON-NLS-1$ //$NON-NLS-2$
				inside("gtk.GTK", "gtk_tree_view_set_cursor", long.class, long.class, long.class, boolean.class) //$NON-NLS-1$ //$NON-NLS-2$
						.invoke(null, handle(table, PARTS.get(0)), path, handle(column, PARTS.get(0)), false);
				inside("gtk.GTK", "gtk_tree_path_free", long.class).invoke(null, path); //$NON-NLS-1$ //$NON-NLS-2$
			} catch (ReflectiveOperationException | LinkageError notOffered) {
				// the row is told, and the cell in the description of the table
			}
		}
	}

	private static void set(Control control, String property, String words) {
		if (gtk()) {
			try {
				for (String part : PARTS) {
					set(handle(control, part), property, words);
				}
			} catch (ReflectiveOperationException | LinkageError notOffered) {
				// stays as it is, see above
			}
		}
	}

	private static boolean gtk() {
		return "gtk".equals(SWT.getPlatform()); //$NON-NLS-1$
	}

	/** @return 0 when {@code widget} has no such part */
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

	private static long child(long handle) throws ReflectiveOperationException {
		return handle == 0 ? 0 : (long) inside("gtk3.GTK3", "gtk_bin_get_child", long.class).invoke(null, handle); //$NON-NLS-1$ //$NON-NLS-2$
	}

	private static void set(long handle, String property, String words) throws ReflectiveOperationException {
		if (handle != 0) {
			long accessible = (long) inside("gtk3.GTK3", "gtk_widget_get_accessible", long.class).invoke(null, handle); //$NON-NLS-1$ //$NON-NLS-2$
			inside("gtk.OS", "g_object_set", long.class, byte[].class, byte[].class, long.class) //$NON-NLS-1$ //$NON-NLS-2$
					.invoke(null, accessible, ended(property), ended(words), 0L);
		}
	}

	private static byte[] ended(String words) {
		return (words.replace("\0", "") + '\0').getBytes(StandardCharsets.UTF_8); //$NON-NLS-1$ //$NON-NLS-2$
	}

	private static Method inside(String type, String name, Class<?>... takes) throws ReflectiveOperationException {
		Method method = Class.forName("org.eclipse.swt.internal." + type, true, SWT.class.getClassLoader()).getMethod(name, takes); //$NON-NLS-1$
		method.setAccessible(true);
		return method;
	}
}
