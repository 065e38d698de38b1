package org.setwright.writing.uses;

import org.setwright.trade.catalogue.FactKind;
import org.setwright.trade.catalogue.Field;
import org.setwright.trade.catalogue.Setting;

/** Something a word in a book stands for. */
public sealed interface Thing {
	/** @return what it is called, for a heading */
	String called();

	/** A setting of the catalogue. */
	record OfSetting(Setting setting) implements Thing {
		@Override
		public String called() {
			return setting.label() + " (setting)";
		}
	}

	/** A kind of fact of the catalogue. */
	record OfKind(FactKind kind) implements Thing {
		@Override
		public String called() {
			return kind.label();
		}
	}

	/** A field of a kind of fact. */
	record OfField(FactKind kind, Field field) implements Thing {
		@Override
		public String called() {
			return kind.label() + ": " + field.label();
		}
	}

	/** Something rules conclude. */
	record OfFinding(String name) implements Thing {
		@Override
		public String called() {
			return name + " (finding)";
		}
	}

	/** Words the shop has chosen for a field that takes any, such as the name of a maker. */
	record OfValue(FactKind kind, Field field, String value) implements Thing {
		@Override
		public String called() {
			return "\"" + value + "\" (" + kind.label() + ": " + field.label() + ")";
		}
	}

	/** A rule. */
	record OfRule(String name) implements Thing {
		@Override
		public String called() {
			return "rule \"" + name + "\"";
		}
	}
}
