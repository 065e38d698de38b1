package org.setwright.workbench.jobform;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.setwright.book.JobCase;
import org.setwright.book.JobCase.Expectation;
import org.setwright.book.JobEdit;
import org.setwright.book.Position;
import org.setwright.trade.catalogue.Catalogue;
import org.setwright.trade.catalogue.JobField;
import org.setwright.trade.catalogue.Setting;
import org.setwright.workbench.look.Icon;
import org.setwright.workbench.look.Spoken;

/** What the job is expected to come to, setting by setting. */
final class ExpectPage implements FormPage {
	private final Catalogue catalogue;
	private final FormDesk desk;
	private final Composite lines;
	private final Combo more;
	private Map<Setting, String> shown;

	ExpectPage(Composite parent, Catalogue catalogue, FormDesk desk) {
		this.catalogue = catalogue;
		this.desk = desk;
		lines = FormGrid.in(parent);
		Composite adding = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(2).spacing(12, 0).applyTo(adding);
		new Label(adding, SWT.NONE).setText(Messages.ExpectPage_more);
		more = new Combo(adding, SWT.READ_ONLY | SWT.DROP_DOWN);
		more.setVisibleItemCount(20);
		Spoken.as(more, Messages.ExpectPage_more);
		more.addListener(SWT.MouseVerticalWheel, e -> e.doit = false);
		more.addListener(SWT.Selection, e -> catalogue.settingLabelled(more.getText())
				.ifPresent(s -> desk.edit(new JobEdit.Expected(s, new JobCase.Gap(Position.whole("")))))); //$NON-NLS-1$
	}

	@Override
	public void show(JobCase job) {
		Map<Setting, String> now = new LinkedHashMap<>();
		job.expected().forEach((setting, expectation) -> now.put(setting, expectation.text()));
		if (!now.equals(shown)) {
			shown = now;
			for (Control old : lines.getChildren()) {
				old.dispose();
			}
			now.forEach(this::line);
			more.setItems(catalogue.settings().stream().filter(s -> !now.containsKey(s)).map(Setting::label).toArray(String[]::new));
			lines.requestLayout();
		}
	}

	private void line(Setting setting, String expected) {
		FormGrid.ask(lines, setting.label(), setting.meaning());
		List<String> offered = Expecting.offered(setting);
		boolean listed = !setting.domain().listed().isEmpty();
		Combo value = new Combo(lines, SWT.DROP_DOWN | (listed ? SWT.READ_ONLY : SWT.NONE));
		value.setItems(offered.toArray(String[]::new));
		value.setText(expected);
		Spoken.as(value, NLS.bind(Messages.ExpectPage_spoken, setting.label()));
		value.addListener(SWT.MouseVerticalWheel, e -> e.doit = false);
		value.addListener(SWT.FocusIn, e -> desk.say(NLS.bind(Messages.FactPage_help, setting.meaning(), setting.domain().allowed()), false));
		for (int taken : new int[] { SWT.Selection, SWT.DefaultSelection, SWT.FocusOut }) {
			value.addListener(taken, e -> take(setting, expected, value.getText()));
		}
		FormGrid.field(value);
		Button remove = new Button(lines, SWT.PUSH | SWT.FLAT);
		remove.setImage(Icon.REMOVE.image());
		remove.setText(Messages.ListPage_remove);
		remove.addListener(SWT.Selection, e -> desk.edit(new JobEdit.NotExpected(setting)));
	}

	private void take(Setting setting, String before, String text) {
		if (text.strip().equals(before)) {
			return;
		}
		Expecting.read(setting, text).ifPresentOrElse((Expectation e) -> desk.edit(new JobEdit.Expected(setting, e)),
				() -> desk.say(NLS.bind(Messages.FieldReading_refused, text, setting.domain().allowed()), true));
	}

	@Override
	public void focus(JobField field) {
		lines.setFocus();
	}
}
