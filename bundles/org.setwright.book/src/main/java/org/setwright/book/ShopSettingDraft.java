package org.setwright.book;

/**
 * A setting of the shop's own as somebody fills it in; nothing need be right yet.
 *
 * @param name what people call it
 * @param group the heading it stands under; blank for that of the shop's own settings
 * @param meaning what it does, in a sentence
 * @param values what may be set: names with commas between them, or as {@link ValuesText} reads it
 * @param needed the conditions, in the rule language, under which a job needs it; "always"; blank when only a rule makes it
 */
public record ShopSettingDraft(String name, String group, String meaning, String values, String needed) {
}
