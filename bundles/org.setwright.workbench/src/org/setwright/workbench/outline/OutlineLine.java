package org.setwright.workbench.outline;

import java.util.ArrayList;
import java.util.List;
import org.eclipse.osgi.util.NLS;
import org.setwright.trade.catalogue.Catalogue;
import org.setwright.trade.catalogue.Setting;
import org.setwright.writing.text.Piece;
import org.setwright.writing.text.RuleBlock;
import org.setwright.writing.text.RuleBlock.Says;
import org.setwright.writing.text.RuleText;

/**
 * One line of the outline of a rule file.
 *
 * @param rule whether it is a rule, and not something a rule says
 * @param text what it says
 * @param start offset of what it stands for
 * @param word offset of the word it is about: the name of a rule, a setting, a finding
 * @param inside what the rule says; empty for other lines
 */
record OutlineLine(boolean rule, String text, int start, int word, List<OutlineLine> inside) {
	OutlineLine {
		inside = List.copyOf(inside);
	}

	/** @return a line for each rule of {@code rules}, whole or half-written, in order */
	static List<OutlineLine> of(String rules, Catalogue catalogue) {
		List<OutlineLine> lines = new ArrayList<>();
		for (RuleBlock block : RuleText.of(rules).blocks()) {
			List<OutlineLine> says = block.says().stream().map(s -> said(s, catalogue)).toList();
			lines.add(new OutlineLine(true, block.called().isBlank() ? Messages.OutlineLine_unnamed : block.called(), block.start(),
					block.name().map(n -> n.start() + 1).orElse(block.start()), says));
		}
		return lines;
	}

	private static OutlineLine said(Says says, Catalogue catalogue) {
		String first = says.first().map(Piece::text).orElse(""); //$NON-NLS-1$
		String what = says.word().equals("propose") ? catalogue.setting(first).map(Setting::label).orElse(first) : first; //$NON-NLS-1$
		String more = says.word().equals("propose") ? value(says) : ""; //$NON-NLS-1$ //$NON-NLS-2$
		return new OutlineLine(false, NLS.bind(Messages.OutlineLine_says, new Object[] { says.word(), what, more }).strip(), says.start(),
				says.first().map(Piece::start).orElse(says.start()), List.of());
	}

	private static String value(Says says) {
		StringBuilder value = new StringBuilder();
		boolean behind = false;
		for (Piece piece : says.pieces()) {
			boolean ends = piece.is(")") || piece.is(";");
			value.append(behind && !ends ? piece.text() : ""); //$NON-NLS-1$
			behind |= piece.is(",");
		}
		return value.toString();
	}
}
