package org.setwright.workbench.fixes;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.jface.dialogs.Dialog;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.setwright.book.ShopSettingDraft;
import org.setwright.trade.catalogue.Setting;
import org.setwright.workbench.look.EvenHead;
import org.setwright.workbench.look.Spoken;
import org.setwright.writing.shop.NewSetting;
import org.setwright.writing.text.TextEdit;

/** Asks what a setting of the shop's own means and may be, and says at once what is still missing. */
final class SettingDialog extends EvenHead.Dialog {
	private static final int WIDTH = 460;
	private static final int ONLY_PROPOSED = 0;
	private static final int ALWAYS = 1;
	private static final int WHERE = 2;
	private final NewSetting adding;
	private final List<String> groups;
	private final ShopSettingDraft known;
	private Text name;
	private Combo group;
	private Text meaning;
	private Text values;
	private Combo need;
	private Text where;
	private NewSetting.Added added;

	/** @param groups headings to offer @param known what is known of it; the rest is blank */
	SettingDialog(Shell shell, NewSetting adding, List<String> groups, ShopSettingDraft known) {
		super(shell);
		this.adding = adding;
		this.groups = List.copyOf(groups);
		this.known = known;
		setShellStyle(getShellStyle() | SWT.RESIZE);
	}

	@Override
	protected void configureShell(Shell shell) {
		super.configureShell(shell);
		shell.setText(Messages.SettingDialog_title);
	}

	@Override
	protected Control createDialogArea(Composite parent) {
		setTitle(Messages.SettingDialog_title);
		setMessage(Messages.SettingDialog_message);
		Composite area = new Composite((Composite) super.createDialogArea(parent), SWT.NONE);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(area);
		GridLayoutFactory.fillDefaults().margins(12, 10).numColumns(2).spacing(10, 8).applyTo(area);
		name = text(area, Messages.SettingDialog_name, known.name());
		meaning = text(area, Messages.SettingDialog_meaning, known.meaning());
		values = text(area, Messages.SettingDialog_values, known.values());
		hint(area, Messages.SettingDialog_valuesHint);
		group = combo(area, Messages.SettingDialog_group, groups, SWT.NONE);
		group.setText(known.group());
		need = combo(area, Messages.SettingDialog_needed,
				List.of(Messages.SettingDialog_onlyProposed, Messages.SettingDialog_always, Messages.SettingDialog_where), SWT.READ_ONLY);
		where = text(area, Messages.SettingDialog_conditions, ""); //$NON-NLS-1$
		hint(area, Messages.SettingDialog_conditionsHint);
		need.select(ONLY_PROPOSED);
		(known.meaning().isBlank() && !known.name().isBlank() ? meaning : name).setFocus();
		changed();
		return area;
	}

	private Text text(Composite area, String label, String text) {
		new Label(area, SWT.NONE).setText(label);
		Text field = new Text(area, SWT.BORDER);
		field.setText(text);
		return listening(field, label, f -> field.addListener(SWT.Modify, e -> changed()));
	}

	private Combo combo(Composite area, String label, List<String> items, int style) {
		new Label(area, SWT.NONE).setText(label);
		Combo field = new Combo(area, SWT.DROP_DOWN | style);
		field.setItems(items.toArray(String[]::new));
		return listening(field, label, f -> field.addListener(SWT.Modify, e -> changed()));
	}

	private static <C extends Control> C listening(C field, String label, Consumer<C> listen) {
		Spoken.as(field, label);
		GridDataFactory.fillDefaults().grab(true, false).hint(WIDTH, SWT.DEFAULT).applyTo(field);
		listen.accept(field);
		return field;
	}

	private static void hint(Composite area, String words) {
		new Label(area, SWT.NONE);
		Label hint = new Label(area, SWT.WRAP);
		hint.setText(words);
		GridDataFactory.fillDefaults().grab(true, false).hint(WIDTH, SWT.DEFAULT).applyTo(hint);
	}

	private ShopSettingDraft draft() {
		String needed = switch (need.getSelectionIndex()) {
			case ALWAYS -> Setting.ALWAYS;
			case WHERE -> where.getText();
			default -> Setting.OPTIONAL;
		};
		return new ShopSettingDraft(name.getText(), group.getText(), meaning.getText(), values.getText(), needed);
	}

	/** An empty field is no mistake yet, so what it lacks is a hint. */
	private void changed() {
		if (where == null) {
			return;
		}
		where.setEnabled(need.getSelectionIndex() == WHERE);
		added = adding.added(draft());
		Optional<String> lacking = name.getText().isBlank() ? Optional.of(Messages.SettingDialog_noName)
				: meaning.getText().isBlank() ? Optional.of(Messages.SettingDialog_noMeaning)
				: values.getText().isBlank() ? Optional.of(Messages.SettingDialog_noValues) : Optional.empty();
		setErrorMessage(lacking.isPresent() ? null : added.refusals().stream().findFirst().orElse(null));
		setMessage(lacking.orElse(Messages.SettingDialog_message));
		Button make = getButton(IDialogConstants.OK_ID);
		if (make != null) {
			make.setEnabled(added.refusals().isEmpty());
		}
	}

	@Override
	protected void createButtonsForButtonBar(Composite parent) {
		createButton(parent, IDialogConstants.OK_ID, Messages.SettingDialog_add, true);
		createButton(parent, IDialogConstants.CANCEL_ID, IDialogConstants.CANCEL_LABEL, false);
		changed();
	}

	/** Asks. @return the edits that add it, by path; empty when the person thought better of it */
	Optional<Map<String, List<TextEdit>>> ask() {
		return open() == Dialog.OK ? Optional.of(added.edits()) : Optional.empty();
	}
}
