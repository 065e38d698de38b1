package org.setwright.workbench.counts;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.function.Consumer;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.ITextViewer;
import org.eclipse.jface.text.codemining.AbstractCodeMiningProvider;
import org.eclipse.jface.text.codemining.ICodeMining;
import org.eclipse.jface.text.codemining.LineHeaderCodeMining;
import org.eclipse.jface.text.source.ISourceViewer;
import org.eclipse.jface.text.source.ISourceViewerExtension5;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.PlatformUI;
import org.setwright.workbench.desk.Desk;
import org.setwright.writing.live.Tally;
import org.setwright.writing.text.RuleBlock;
import org.setwright.writing.text.RuleText;

/** Writes above every rule of an editor what becomes of it on the saved jobs; a click shows which. */
public final class RuleCounts extends AbstractCodeMiningProvider {
	private final Desk desk = PlatformUI.getWorkbench().getService(Desk.class);
	private final Consumer<Tally> listener = this::counted;
	private volatile ITextViewer viewer;
	private CountMargin margin;

	/** Made by the editor. */
	public RuleCounts() {
		desk.addTallyListener(listener);
	}

	@Override
	public CompletableFuture<List<? extends ICodeMining>> provideCodeMinings(ITextViewer shown, IProgressMonitor monitor) {
		if (viewer != shown) {
			viewer = shown;
			Display.getDefault().asyncExec(() -> counted(desk.tally()));
		}
		IDocument document = shown.getDocument();
		return CompletableFuture.completedFuture(document == null ? List.of() : lines(document, desk.tally()));
	}

	private List<ICodeMining> lines(IDocument document, Tally tally) {
		List<ICodeMining> lines = new ArrayList<>();
		for (RuleBlock block : RuleText.of(document.get()).blocks()) {
			Optional<String> words = TallyWords.line(tally, block.called());
			try {
				if (words.isPresent()) {
					lines.add(new Line(document.getLineOfOffset(block.start()), document, block.called(), words.get()));
				}
			} catch (BadLocationException typedMeanwhile) {
				return List.of();
			}
		}
		return lines;
	}

	/** A line above a rule. */
	private final class Line extends LineHeaderCodeMining {
		Line(int line, IDocument document, String rule, String words) throws BadLocationException {
			super(line, document, RuleCounts.this, click -> JobsOfRule.show(PlatformUI.getWorkbench().getActiveWorkbenchWindow(), rule));
			setLabel(words);
		}
	}

	private void counted(Tally tally) {
		ITextViewer shown = viewer;
		if (shown == null || shown.getTextWidget() == null || shown.getTextWidget().isDisposed()) {
			return;
		}
		if (shown instanceof ISourceViewerExtension5 lines) {
			lines.updateCodeMinings();
		}
		if (margin == null && shown instanceof ISourceViewer source) {
			margin = new CountMargin(source);
		}
		if (margin != null) {
			margin.show(tally);
		}
	}

	@Override
	public void dispose() {
		desk.removeTallyListener(listener);
		super.dispose();
	}
}
