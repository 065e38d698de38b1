package org.setwright.landing.plan;

import org.setwright.trade.catalogue.CautionKind;

/** Something to heed. @param source the rule or document behind it, or "common practice" */
public record Warning(CautionKind kind, String sentence, String source) {
}
