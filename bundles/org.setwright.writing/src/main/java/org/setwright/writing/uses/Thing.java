package org.setwright.writing.uses;

import org.setwright.trade.catalogue.Authority;
import org.setwright.trade.catalogue.Domain;
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

	/** One answer of the closed list of a field. */
	record OfChoice(FactKind kind, Field field, Domain.Choices.Option option) implements Thing {
		@Override
		public String called() {
			return "\"" + option.label() + "\" (" + kind.label() + ": " + field.label() + ")";
		}
	}

	/** One value of the closed list of a setting. */
	record OfSettingChoice(Setting setting, Domain.Choices.Option option) implements Thing {
		@Override
		public String called() {
			return "\"" + option.label() + "\" (" + setting.label() + ")";
		}
	}

	/** The weight of what a rule or a row says. */
	record OfAuthority(Authority authority) implements Thing {
		@Override
		public String called() {
			return authority.label() + " (authority)";
		}
	}

	/** A rule; or, called "table NAME" and perhaps ", row NUMBER", what a table says. */
	record OfRule(String name) implements Thing {
		@Override
		public String called() {
			return "rule \"" + name + "\"";
		}
	}
}
