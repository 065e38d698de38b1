package org.setwright.workbench.editions;

import java.util.Optional;
import java.util.function.BiConsumer;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CTabFolder;
import org.eclipse.swt.custom.CTabItem;
import org.eclipse.swt.widgets.Button;
import org.setwright.editions.kept.Kept;
import org.setwright.editions.signing.Matter;
import org.setwright.editions.signing.Remark;
import org.setwright.editions.signing.SignedOff;
import org.setwright.workbench.rows.RowTree;

/** How the last edition stands with signing, and what was remarked, settled or not. */
final class ReviewTab {
	private final ListPane pane;
	private final Button answer;
	private final Button settle;
	private final Button compare;

	/**
	 * @param remark asked for a new remark
	 * @param sign asked to sign
	 * @param compare asked to show what changed since the last edition that is signed
	 * @param answers told on which matter more is to be said
	 */
	ReviewTab(CTabFolder tabs, Runnable remark, Runnable sign, Runnable compare, BiConsumer<Matter, Remark.Stand> answers) {
		pane = new ListPane(tabs, Messages.ReviewTab_list, MatterRows.COLUMNS);
		pane.button(Messages.ReviewTab_remark, remark);
		answer = pane.button(Messages.ReviewTab_answer, () -> picked().ifPresent(m -> answers.accept(m, Remark.Stand.OPEN)));
		settle = pane.button(Messages.ReviewTab_settle, () -> picked().ifPresent(m -> answers.accept(m, Remark.Stand.SETTLED)));
		this.compare = pane.button(Messages.ReviewTab_compare, compare);
		pane.button(Messages.ReviewTab_sign, sign);
		pane.tree().viewer().addSelectionChangedListener(e -> enable());
		CTabItem tab = new CTabItem(tabs, SWT.NONE);
		tab.setText(Messages.ReviewTab_title);
		tab.setControl(pane.control());
		enable();
	}

	RowTree tree() {
		return pane.tree();
	}

	/** @param demanded what the book demands, in words */
	void show(Ledger ledger, String demanded) {
		Optional<Kept> last = ledger.last();
		Optional<Kept> signed = ledger.lastSigned();
		String stands = last.isEmpty() ? Messages.ReviewTab_nothingKept
				: signed.isEmpty() ? NLS.bind(Messages.ReviewTab_never, last.get().shown())
						: signed.equals(last) ? NLS.bind(Messages.ReviewTab_signed, last.get().shown(), shown(ledger, last.get()))
								: NLS.bind(Messages.ReviewTab_notSigned, new Object[] { last.get().shown(), signed.get().shown(), shown(ledger, signed.get()) });
		pane.show(stands + " " + NLS.bind(Messages.ReviewTab_open, ledger.open().size(), demanded), MatterRows.of(ledger.matters())); //$NON-NLS-1$
		compare.setEnabled(signed.isPresent() && !signed.equals(last));
		enable();
	}

	private static String shown(Ledger ledger, Kept edition) {
		SignedOff signed = ledger.signed().get(edition.id());
		return signed.shown() + ", " + signed.cases() + (signed.note().isEmpty() ? "" : ": " + signed.note()); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
	}

	private Optional<Matter> picked() {
		return pane.tree().picked().map(Matter.class::cast);
	}

	private void enable() {
		answer.setEnabled(picked().isPresent());
		settle.setEnabled(picked().filter(Matter::open).isPresent());
	}
}
