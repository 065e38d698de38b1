package org.setwright.engine.outcome;

import java.util.List;
import org.setwright.trade.catalogue.CautionKind;

/** A warning. @param raisedBy every firing that raises this same sentence */
public record Caution(CautionKind kind, String sentence, List<Firing> raisedBy) {
	public Caution {
		raisedBy = List.copyOf(raisedBy);
	}
}
