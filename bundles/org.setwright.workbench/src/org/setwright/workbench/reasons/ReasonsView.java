package org.setwright.workbench.reasons;

import java.util.List;
import org.eclipse.jface.action.Action;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CTabFolder;
import org.eclipse.swt.custom.CTabItem;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.actions.ActionFactory;
import org.eclipse.ui.part.ViewPart;
import org.setwright.workbench.desk.Desk;
import org.setwright.workbench.desk.DeskListener;
import org.setwright.workbench.desk.DeskState;
import org.setwright.workbench.folder.Places;
import org.setwright.workbench.look.Spoken;
import org.setwright.workbench.reasons.ReasonNode.InJob;
import org.setwright.workbench.reasons.ReasonNode.InRules;

/** Why this? Why not that? One tab for each way to ask; all follow the job, setting and rule being looked at. */
public final class ReasonsView extends ViewPart {
	/** Its name in the registry. */
	public static final String ID = "org.setwright.workbench.reasons"; //$NON-NLS-1$
	private final DeskListener listener = this::deskChanged;
	private Desk desk;
	private CTabFolder folder;
	private List<Tab> tabs;

	@Override
	public void createPartControl(Composite parent) {
		desk = getSite().getService(Desk.class);
		GridLayoutFactory.fillDefaults().margins(4, 4).applyTo(parent);
		folder = new CTabFolder(parent, SWT.TOP | SWT.FLAT);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(folder);
		Spoken.as(folder, Messages.ReasonsView_tabs);
		WhyTab why = new WhyTab(folder, this::open);
		WhyNotTab whyNot = new WhyNotTab(folder, desk, this::open);
		tabs = List.of(why, new PictureTab(folder, this::open), whyNot, new ChangeTab(folder, whyNot::question, this::open),
				new CompareTab(folder, desk, this::open));
		for (Tab tab : tabs) {
			CTabItem item = new CTabItem(folder, SWT.NONE);
			item.setText(tab.title());
			item.setControl(tab.control());
		}
		folder.setSelection(0);
		folder.addListener(SWT.Selection, e -> front().show(desk.state()));
		getSite().setSelectionProvider(why.viewer());
		copyAsText();
		desk.addListener(listener);
		front().show(desk.state());
	}

	private void copyAsText() {
		Action copy = new Action(Messages.ReasonsView_copy) {
			@Override
			public void run() {
				String text = front().text();
				if (!text.isEmpty()) {
					Clipboard clipboard = new Clipboard(folder.getDisplay());
					clipboard.setContents(new Object[] { text }, new Transfer[] { TextTransfer.getInstance() });
					clipboard.dispose();
				}
			}
		};
		copy.setToolTipText(Messages.ReasonsView_copyExplained);
		getViewSite().getActionBars().setGlobalActionHandler(ActionFactory.COPY.getId(), copy);
		getViewSite().getActionBars().getToolBarManager().add(copy);
	}

	private Tab front() {
		return tabs.get(Math.max(0, folder.getSelectionIndex()));
	}

	private void deskChanged(DeskState before, DeskState now) {
		if (before.latest() != now.latest() || !before.job().equals(now.job()) || !before.setting().equals(now.setting())
				|| !before.rule().equals(now.rule())) {
			front().show(now);
		}
	}

	private void open(ReasonNode.Place place) {
		if (place instanceof InRules rules) {
			Places.open(getSite().getPage(), rules.at());
		} else if (place instanceof InJob job) {
			desk.state().job().ifPresent(path -> Places.openJob(getSite().getPage(), path, job.field()));
		}
	}

	@Override
	public void setFocus() {
		front().setFocus();
	}

	@Override
	public void dispose() {
		desk.removeListener(listener);
		super.dispose();
	}
}
