package org.setwright.workbench.jobform;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.viewers.TreeViewer;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.setwright.book.JobEdit;
import org.setwright.book.JobText;
import org.setwright.book.Problem;
import org.setwright.trade.catalogue.JobField;
import org.setwright.trade.catalogue.UnitSystem;
import org.setwright.workbench.jobform.FormNode.AboutJob;
import org.setwright.workbench.jobform.FormNode.OfKind;
import org.setwright.workbench.jobform.FormNode.Page;
import org.setwright.workbench.look.HelpLine;
import org.setwright.workbench.look.Repaint;
import org.setwright.workbench.look.Spoken;
import org.setwright.workbench.twopage.OwnPage;
import org.setwright.workbench.uses.UseMenu;
import org.setwright.writing.uses.Thing;

/** The form: an outline of everything that is asked for, one page of it, and a line of help below. */
final class JobForm implements FormDesk, OwnPage {
	private static final int[] SHARES = { 32, 68 };
	private final JobDocument job;
	private final Composite whole;
	private final TreeViewer outline;
	private final PageArea area;
	private final HelpLine help;
	private final Consumer<String> named;
	private final ShownUnits units;
	private Page page = new AboutJob();
	private Supplier<Optional<Thing>> pointed = Optional::empty;

	/** @param named told the name of the job */
	JobForm(Composite parent, JobDocument job, Consumer<String> named) {
		this.job = job;
		this.named = named;
		whole = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().margins(8, 8).spacing(0, 6).applyTo(whole);
		units = new ShownUnits(whole, this::unitsChanged);
		SashForm sash = new SashForm(whole, SWT.HORIZONTAL);
		sash.setSashWidth(8);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(sash);
		outline = FormOutlineViewer.in(sash);
		Spoken.as(outline.getControl(), Messages.JobForm_outline);
		area = new PageArea(sash);
		sash.setWeights(SHARES);
		help = new HelpLine(whole);
		outline.addSelectionChangedListener(e -> picked().ifPresent(node -> turnTo(node.page())));
		UseMenu.on(outline.getControl());
		outline.getControl().addListener(SWT.FocusIn, e -> pageIsPointedAt());
		show();
		turnTo(page);
		Repaint.with(whole, () -> {
			outline.refresh();
			area.turnTo(page, job, this);
		});
	}

	private void unitsChanged() {
		area.turnTo(page, job, this);
	}

	@Override
	public UnitSystem units() {
		return units.now();
	}

	@Override
	public Control control() {
		return whole;
	}

	/** What the field with the cursor, or the page, is about. */
	@Override
	public Optional<Thing> pointed() {
		return pointed.get();
	}

	@Override
	public void about(Control question, Control field, Supplier<Thing> thing) {
		Supplier<Optional<Thing>> here = () -> Optional.of(thing.get());
		field.addListener(SWT.FocusIn, e -> pointed = here);
		question.addListener(SWT.MenuDetect, e -> {
			field.setFocus();
			pointed = here;
		});
		question.setMenu(outline.getControl().getMenu());
		// a control takes its menu with it, and this one is shared
		question.addDisposeListener(e -> question.setMenu(null));
	}

	private void pageIsPointedAt() {
		pointed = () -> page instanceof OfKind of ? Optional.of(new Thing.OfKind(of.kind())) : Optional.empty();
	}

	@Override
	public void show() {
		JobText read = job.read();
		named.accept(read.job().name());
		Object[] unfolded = outline.getExpandedElements();
		outline.setInput(FormOutline.of(job.catalogue(), read.job()));
		outline.setExpandedElements(unfolded);
		area.enable(read.sound());
		area.page().ifPresent(p -> p.show(read.job()));
		open(page);
		read.problems().stream().filter(p -> p.severity() == Problem.Severity.ERROR).findFirst().ifPresent(
				p -> say(NLS.bind(Messages.JobForm_unsound, p.at().line(), p.what() + ' ' + p.remedy()), true));
	}

	/** Goes to where {@code field}, or what it is calculated from, is asked and puts the cursor there. */
	void show(JobField field) {
		new AskedFor(job.catalogue()).behind(field).ifPresent(question -> {
			open(OfKind.asking(question));
			area.page().ifPresent(p -> p.focus(question));
		});
	}

	@Override
	public void edit(JobEdit edit) {
		job.edit(List.of(edit)).ifPresent(refused -> say(refused.what() + ' ' + refused.remedy(), true));
	}

	@Override
	public void say(String sentence, boolean mistake) {
		help.say(sentence, mistake);
	}

	@Override
	public void open(Page wanted) {
		turnTo(wanted);
		mark(page);
	}

	/** A fact that is not listed has no page yet; the list has. */
	private Page existing(Page wanted) {
		return wanted instanceof OfKind of && of.item().isPresent()
				&& of.item().get() >= job.read().job().job().entry(of.kind()).facts().size()
						? new OfKind(of.kind(), Optional.empty())
						: wanted;
	}

	private void turnTo(Page asked) {
		Page wanted = existing(asked);
		if (area.page().isEmpty() || !wanted.equals(page)) {
			page = wanted;
			pageIsPointedAt();
			area.turnTo(wanted, job, this);
			say(area.meaning(), false);
		}
	}

	private void mark(Page wanted) {
		Optional<FormNode> node = FormOutlineViewer.node(outline, wanted);
		if (node.isPresent() && !picked().map(FormNode::page).equals(Optional.of(wanted))) {
			outline.setSelection(new StructuredSelection(node.get()), true);
		}
	}

	private Optional<FormNode> picked() {
		return Optional.ofNullable((FormNode) outline.getStructuredSelection().getFirstElement());
	}

	@Override
	public void setFocus() {
		outline.getControl().setFocus();
	}
}
