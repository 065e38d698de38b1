package org.setwright.trade.catalogue;

/**
 * One thing known about a job. Implemented by records only: the record is described once, by {@link About}, each of its
 * components by {@link Asked}, and everything that lists facts (rules, forms, completion, files, reports) reads that.
 * Every component is an {@link Answer}.
 */
public interface Fact {
}
