package org.setwright.writing.uses;

/**
 * One place where something stands.
 *
 * @param path of the file, below the book folder
 * @param start offset of its first character in the text of the file
 * @param end offset behind its last character
 * @param defines whether it comes from here: a finding that is made, a setting that is proposed, the name of a rule
 * @param where the rule, row or job in which it stands, for people
 */
public record Mention(Thing thing, String path, int start, int end, boolean defines, String where) {
}
