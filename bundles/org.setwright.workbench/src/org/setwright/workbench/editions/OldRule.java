package org.setwright.workbench.editions;

import org.setwright.editions.kept.Kept;

/** A rule as it was. @param name as it was called at {@code edition} */
record OldRule(Kept edition, String name) {
}
