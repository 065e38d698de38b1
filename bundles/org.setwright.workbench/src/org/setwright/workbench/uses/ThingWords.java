package org.setwright.workbench.uses;

import java.util.Optional;
import org.eclipse.osgi.util.NLS;
import org.setwright.trade.catalogue.Choice;
import org.setwright.writing.uses.Thing;

/** Says in words what something of the catalogue means, and what it may be. */
public final class ThingWords {
	private ThingWords() {
	}

	/** @return its name, meaning, and what it may be, lines apart; empty for what the catalogue does not list */
	public static Optional<String> of(Thing thing) {
		if (thing instanceof Thing.OfKind of) {
			return Optional.of(line(of.kind().label(), of.kind().meaning()));
		} else if (thing instanceof Thing.OfField of) {
			return Optional.of(NLS.bind(Messages.ThingWords_field,
					new Object[] { of.field().label(), of.field().meaning(), of.field().domain().allowed() }));
		} else if (thing instanceof Thing.OfSetting of) {
			return Optional.of(NLS.bind(Messages.ThingWords_setting,
					new Object[] { of.setting().label(), of.setting().meaning(), of.setting().domain().allowed() }));
		} else if (thing instanceof Thing.OfChoice of) {
			return Optional.of(line(of.option().label(), of.option().meaning()));
		} else if (thing instanceof Thing.OfSettingChoice of) {
			return Optional.of(line(of.option().label(), of.option().meaning()));
		}
		return thing instanceof Thing.OfAuthority of ? Optional.of(of(of.authority())) : Optional.empty();
	}

	/** @return the label and meaning of one of a closed list */
	public static String of(Choice choice) {
		return line(choice.label(), choice.meaning());
	}

	/** @return the same for anything that is called so and means that */
	public static String line(String label, String meaning) {
		return meaning.isEmpty() ? label : NLS.bind(Messages.ThingWords_line, label, meaning);
	}
}
