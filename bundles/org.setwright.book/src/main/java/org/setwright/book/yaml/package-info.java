/**
 * YAML read with nothing but names, values and lists, every one with its place in the text. Aliases, tags and several
 * documents in a file are refused, and nesting is limited, so that no file can make the reader grow or hang.
 */
package org.setwright.book.yaml;
