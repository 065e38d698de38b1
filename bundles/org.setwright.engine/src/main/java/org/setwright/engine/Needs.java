package org.setwright.engine;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.setwright.book.Mend;
import org.setwright.book.Position;
import org.setwright.book.Problem;
import org.setwright.book.ShopSetting;
import org.setwright.book.ShopSettings;
import org.setwright.engine.language.Condition;
import org.setwright.engine.language.RuleParser;
import org.setwright.trade.catalogue.Catalogue;
import org.setwright.trade.catalogue.Setting;

/** Under which conditions a job needs each setting. */
final class Needs {
	private Needs() {
	}

	/** @return what must hold for a job to need each setting; nothing for those needed always or never, and for faulty conditions */
	static Map<Setting, List<Condition>> of(Catalogue catalogue) {
		Map<Setting, List<Condition>> needs = new LinkedHashMap<>();
		for (Setting setting : catalogue.settings()) {
			boolean unconditional = setting.requiredWhen().equals(Setting.ALWAYS) || setting.requiredWhen().equals(Setting.OPTIONAL);
			needs.put(setting, unconditional ? List.of() : RuleParser.conditions("", setting.requiredWhen(), catalogue).conditions());
		}
		return Collections.unmodifiableMap(needs);
	}

	/** @return what is wrong with the conditions that the shop has written for its own settings */
	static List<Problem> faults(ShopSettings settings) {
		List<Problem> faults = new ArrayList<>();
		for (ShopSetting own : settings.own()) {
			own.neededAt().ifPresent(at -> RuleParser.conditions(at.file(), own.setting().requiredWhen(), settings.catalogue()).problems()
					.forEach(p -> faults.add(new Problem(p.severity(), moved(p.at(), at, own.setting().requiredWhen().length()), p.what(), p.remedy(),
							p.mend().filter(Mend.Replace.class::isInstance)))));
		}
		return faults;
	}

	/** The conditions stand on one line, somewhere in the file; what is missing at their end has no place there. */
	private static Position moved(Position inConditions, Position at, int length) {
		return new Position(at.file(), at.line(), inConditions.line() == 1 ? at.column() + inConditions.column() - 1 : at.column() + length);
	}
}
