package org.setwright.workbench.jobform;

import java.util.Locale;
import java.util.Optional;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.setwright.trade.catalogue.FactKind;
import org.setwright.workbench.jobform.FormNode.Expectations;
import org.setwright.workbench.jobform.FormNode.OfKind;
import org.setwright.workbench.jobform.FormNode.Page;
import org.setwright.workbench.look.Palette;
import org.setwright.workbench.look.Type;

/** Where one page of the form is shown, under its heading and meaning. */
final class PageArea {
	private static final int LEAST_WIDTH = 300;
	private final ScrolledComposite scrolled;
	private Composite content;
	private Optional<FormPage> page = Optional.empty();
	private String meaning = ""; //$NON-NLS-1$

	PageArea(Composite parent) {
		scrolled = new ScrolledComposite(parent, SWT.V_SCROLL | SWT.H_SCROLL);
		scrolled.setExpandHorizontal(true);
		scrolled.setExpandVertical(true);
		scrolled.setShowFocusedControl(true);
	}

	Optional<FormPage> page() {
		return page;
	}

	/** @return what the page is about, in a sentence */
	String meaning() {
		return meaning;
	}

	void enable(boolean enabled) {
		if (content != null) {
			content.setEnabled(enabled);
		}
	}

	void turnTo(Page wanted, JobDocument job, FormDesk desk) {
		if (content != null) {
			content.dispose();
		}
		content = new Composite(scrolled, SWT.NONE);
		GridLayoutFactory.fillDefaults().margins(12, 6).spacing(0, 10).applyTo(content);
		FormPage made = made(wanted, job, desk);
		made.show(job.read().job());
		page = Optional.of(made);
		content.setEnabled(job.read().sound());
		scrolled.setContent(content);
		content.addListener(SWT.Resize, e -> fit());
		fit();
		scrolled.layout(true, true);
	}

	private void fit() {
		int least = Math.max(LEAST_WIDTH, content.computeSize(SWT.DEFAULT, SWT.DEFAULT).x);
		int width = Math.max(least, scrolled.getClientArea().width);
		scrolled.setMinSize(least, content.computeSize(width, SWT.DEFAULT).y);
	}

	private FormPage made(Page wanted, JobDocument job, FormDesk desk) {
		if (wanted instanceof OfKind of) {
			FactKind kind = of.kind();
			heading(of.item().isPresent() ? FormOutline.title(kind, of.item().get(),
					job.read().job().job().entry(kind).facts().get(of.item().get())) : kind.key(), kind.meaning());
			if (of.item().isPresent()) {
				return new FactPage(FormGrid.in(content), kind, of.item().get(), desk);
			}
			return kind.many() ? new ListPage(content, kind, desk) : new KindPage(content, kind, desk);
		} else if (wanted instanceof Expectations) {
			heading(Messages.FormOutline_expected, Messages.PageArea_expectations);
			return new ExpectPage(content, job::catalogue, desk);
		}
		heading(Messages.FormOutline_job, Messages.PageArea_about);
		return new AboutPage(content, desk);
	}

	private void heading(String title, String means) {
		meaning = means;
		Label heading = new Label(content, SWT.NONE);
		heading.setText(title.substring(0, 1).toUpperCase(Locale.ROOT) + title.substring(1));
		Type.ink(heading, Palette.Ink.HEADING);
		Type.heading(heading, 2);
		Label explained = new Label(content, SWT.WRAP);
		explained.setText(means);
		Type.ink(explained, Palette.Ink.QUIET);
		GridDataFactory.fillDefaults().grab(true, false).hint(LEAST_WIDTH - 40, SWT.DEFAULT).applyTo(explained);
	}
}
