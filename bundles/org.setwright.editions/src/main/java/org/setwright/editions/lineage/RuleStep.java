package org.setwright.editions.lineage;

import org.setwright.editions.compare.RuleChange;
import org.setwright.editions.kept.Kept;

/** An edition that made or changed a rule. @param change from the edition before it */
public record RuleStep(Kept edition, RuleChange change) {
}
