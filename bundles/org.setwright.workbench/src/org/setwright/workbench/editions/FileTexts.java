package org.setwright.workbench.editions;

/**
 * What a file was and is.
 *
 * @param path below the book, as it is, or as it was when it is gone
 * @param before empty when it is new
 * @param after empty when it is gone
 */
record FileTexts(String path, String before, String after) {
}
