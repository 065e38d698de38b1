package org.setwright.writing.drafts;

/**
 * The text of a file as somebody typed it without saving.
 *
 * @param path of the file, below the book folder
 * @param text all of it
 */
public record Draft(String path, String text) {
}
