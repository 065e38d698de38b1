package org.setwright.check.coverage;

import java.util.List;
import java.util.Map;
import org.setwright.trade.catalogue.Setting;

/**
 * Which values the saved jobs come to for one setting.
 *
 * @param settled on how many jobs each value was settled, as written, the most frequent first
 * @param never the values it could take, where they can be listed, that no job came to
 * @param open on how many jobs it was a gap or disputed
 */
public record SettingCoverage(Setting setting, Map<String, Integer> settled, List<String> never, int open) {
	public SettingCoverage {
		settled = java.util.Collections.unmodifiableMap(new java.util.LinkedHashMap<>(settled));
		never = List.copyOf(never);
	}
}
