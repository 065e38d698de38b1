package org.setwright.check.junit;

/**
 * Stands for the rule book that the configuration parameter {@code setwright.book} names, wherever tests are picked by
 * class: build tools that look for classes need one to begin with. It holds nothing itself; every class that extends it
 * stands for the book as well.
 */
public class RuleBookTest {
}
