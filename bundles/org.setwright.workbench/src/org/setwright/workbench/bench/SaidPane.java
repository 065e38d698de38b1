package org.setwright.workbench.bench;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyleRange;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.widgets.Composite;
import org.setwright.bench.told.Tone;
import org.setwright.book.Position;
import org.setwright.workbench.look.Palette;
import org.setwright.workbench.look.Palette.Ink;
import org.setwright.workbench.look.Repaint;
import org.setwright.workbench.look.Spoken;

/** Shows what was said. A place in the book opens by a click, or by the enter key on its line. */
final class SaidPane {
	private static final int INDENT_IN_CHARACTERS = 3;
	private static final Pattern PLACE = Pattern.compile("([^,:]+\\.(?:drl|yaml|csv))(?::(\\d+))?(?::(\\d+))?.*"); //$NON-NLS-1$
	private final SaidText said = new SaidText();
	private final StyledText text;
	private final Consumer<Position> opened;

	/** @param opened told which place somebody wants to see */
	SaidPane(Composite parent, Consumer<Position> opened) {
		this.opened = opened;
		text = new StyledText(parent, SWT.MULTI | SWT.READ_ONLY | SWT.WRAP | SWT.V_SCROLL | SWT.BORDER);
		text.setMargins(8, 6, 8, 6);
		text.setFont(JFaceResources.getTextFont());
		Spoken.as(text, Messages.SaidPane_name);
		text.addListener(SWT.MouseUp, e -> {
			int offset = text.getOffsetAtPoint(new org.eclipse.swt.graphics.Point(e.x, e.y));
			if (text.getSelectionCount() == 0 && offset >= 0) {
				said.at(offset).filter(l -> offset >= l.link()).ifPresent(this::open);
			}
		});
		text.addListener(SWT.KeyDown, e -> {
			if (e.keyCode == SWT.CR || e.keyCode == SWT.KEYPAD_CR) {
				said.at(text.getCaretOffset()).ifPresent(this::open);
			}
		});
		Repaint.with(text, () -> paint(said.lines()));
	}

	StyledText control() {
		return text;
	}

	/** Adds {@code told} at the end and shows it. */
	void add(Told told) {
		List<SaidText.Line> added = said.add(told);
		if (added.isEmpty()) {
			return;
		}
		text.append(said.text().substring(added.get(0).start()));
		paint(added);
		text.setCaretOffset(added.get(0).start());
		text.setTopIndex(text.getLineAtOffset(added.get(0).start()));
	}

	void clear() {
		said.clear();
		text.setText(""); //$NON-NLS-1$
	}

	private void paint(List<SaidText.Line> lines) {
		Palette palette = Palette.now();
		int character = character();
		for (SaidText.Line line : lines) {
			int number = text.getLineAtOffset(line.start());
			int indent = line.depth() * INDENT_IN_CHARACTERS * character;
			text.setLineIndent(number, 1, indent);
			text.setLineWrapIndent(number, 1, indent + INDENT_IN_CHARACTERS * character);
			int words = line.at().isEmpty() ? line.length() : line.link() - line.start();
			text.setStyleRange(range(line.start(), words, line.tone(), palette));
			if (!line.at().isEmpty()) {
				StyleRange link = new StyleRange(line.link(), line.end() - line.link(), palette.colour(Ink.QUIET), null);
				link.underline = place(line).isPresent();
				text.setStyleRange(link);
			}
		}
	}

	/** @return how wide a character is, in pixels */
	private int character() {
		org.eclipse.swt.graphics.GC gc = new org.eclipse.swt.graphics.GC(text);
		int width = (int) Math.ceil(gc.getFontMetrics().getAverageCharacterWidth());
		gc.dispose();
		return width;
	}

	private static StyleRange range(int start, int length, Optional<Tone> tone, Palette palette) {
		Ink ink = tone.map(SaidPane::ink).orElse(Ink.HEADING);
		boolean bold = tone.isEmpty() || tone.get() == Tone.HEADING || tone.get() == Tone.ALARM;
		return new StyleRange(start, length, palette.colour(ink), null, bold ? SWT.BOLD : SWT.NORMAL);
	}

	private static Ink ink(Tone tone) {
		return switch (tone) {
			case PLAIN, HEADING -> Ink.TEXT;
			case QUIET -> Ink.QUIET;
			case GOOD -> Ink.STRING;
			case ATTENTION, ALARM -> Ink.ANNOTATION;
		};
	}

	private void open(SaidText.Line line) {
		place(line).ifPresent(opened);
	}

	/** @return the first place of the book that {@code line} names */
	private static Optional<Position> place(SaidText.Line line) {
		Matcher place = PLACE.matcher(line.at());
		return place.matches() ? Optional.of(new Position(place.group(1), number(place.group(2)), number(place.group(3)))) : Optional.empty();
	}

	private static int number(String digits) {
		return digits == null ? 0 : Integer.parseInt(digits);
	}
}
