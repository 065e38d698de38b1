package org.setwright.workbench.jobform;

import java.util.List;
import java.util.regex.Pattern;
import org.eclipse.jface.preference.IPreferenceStore;
import org.eclipse.jface.text.ITextHover;
import org.eclipse.jface.text.contentassist.IContentAssistant;
import org.eclipse.jface.text.presentation.IPresentationReconciler;
import org.eclipse.jface.text.source.ISourceViewer;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.editors.text.TextSourceViewerConfiguration;
import org.setwright.workbench.completing.OfferedWords;
import org.setwright.workbench.desk.Desk;
import org.setwright.workbench.folder.BookTexts;
import org.setwright.workbench.look.ColouredText;
import org.setwright.workbench.look.ColouredText.Stretch;
import org.setwright.workbench.look.Palette.Ink;
import org.setwright.workbench.uses.WordHover;
import org.setwright.writing.completing.JobCompletion;
import org.setwright.writing.completing.Offer.Offered;

/** Colours the text of a job. */
final class JobTextColours extends TextSourceViewerConfiguration {
	private static final Pattern PIECE = Pattern.compile("(?<comment>(?m:^|(?<=\\s))#[^\\n]*)" //$NON-NLS-1$
			+ "|(?<string>\"(?:\\\\.|[^\"\\\\])*+\"|(?<![\\p{L}\\p{N}])'(?:''|[^'])*+')" //$NON-NLS-1$
			+ "|(?<name>(?m:(?<=^|[{,-])\\s*[\\p{L}][^:#\\n,{}\"']*:(?=\\s|$)))"); //$NON-NLS-1$

	JobTextColours(IPreferenceStore preferences) {
		super(preferences);
	}

	@Override
	public IPresentationReconciler getPresentationReconciler(ISourceViewer viewer) {
		return new ColouredText(JobTextColours::in);
	}

	@Override
	public IContentAssistant getContentAssistant(ISourceViewer viewer) {
		return OfferedWords.assistant((text, offset) -> BookTexts.manuscript(PlatformUI.getWorkbench().getService(Desk.class).state())
				.map(m -> new JobCompletion(m).at(text, offset)).orElse(Offered.NOTHING));
	}

	@Override
	public ITextHover getTextHover(ISourceViewer viewer, String contentType) {
		return new WordHover();
	}

	/** @return what is to be coloured, in order */
	static List<Stretch> in(String text) {
		return PIECE.matcher(text).results().map(r -> new Stretch(r.start(), r.end() - r.start(), ink(r.group()))).toList();
	}

	private static Ink ink(String piece) {
		String written = piece.strip();
		return written.startsWith("#") ? Ink.COMMENT : written.endsWith(":") ? Ink.FACT : Ink.STRING; //$NON-NLS-1$ //$NON-NLS-2$
	}
}
