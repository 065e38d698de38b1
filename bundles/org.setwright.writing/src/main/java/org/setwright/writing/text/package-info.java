/** The text of a rule file as somebody is typing it: its words, its rules, whole or half-written, and edits to it. */
package org.setwright.writing.text;
