package org.setwright.book;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.setwright.book.yaml.YamlNode;
import org.setwright.book.yaml.YamlNode.Mapping;
import org.setwright.book.yaml.YamlNode.Scalar;
import org.setwright.trade.catalogue.Catalogue;
import org.setwright.trade.catalogue.Setting;
import org.setwright.trade.catalogue.Value;

/** Reads what a job case expects its settings to come to. */
final class Expectations {
	static final String GAP = "gap";
	static final String DISPUTE = "dispute";
	static final String NOT_NEEDED = "not needed";
	private final Catalogue catalogue;
	private final ProblemList problems;

	Expectations(Catalogue catalogue, ProblemList problems) {
		this.catalogue = catalogue;
		this.problems = problems;
	}

	/** @return by setting, in file order */
	Map<Setting, JobCase.Expectation> read(YamlNode written) {
		Map<Setting, JobCase.Expectation> expected = new LinkedHashMap<>();
		if (written instanceof Mapping mapping) {
			for (YamlNode.Entry entry : Keys.of(mapping, problems).entries()) {
				setting(entry.key()).ifPresent(s -> expectation(s, entry.value()).ifPresent(e -> expected.put(s, e)));
			}
		} else {
			problems.error(written.start(), "Settings and their values are expected after \"expect:\".",
					"Write each on a line of its own, indented, as \"setting: value\".");
		}
		return expected;
	}

	private Optional<Setting> setting(Scalar key) {
		String name = Keys.normal(key.text());
		Optional<Setting> setting = catalogue.settingLabelled(name);
		if (setting.isEmpty()) {
			List<String> labels = catalogue.settings().stream().map(Setting::label).toList();
			Optional<String> near = catalogue.settings().stream().filter(s -> s.id().equalsIgnoreCase(name)).map(Setting::label)
					.findFirst().or(() -> Nearest.to(name, labels));
			problems.error(key.start(), "There is no setting " + Misfit.quoted(key.text()) + ".",
					near.map(n -> "Write \"" + n + "\".").orElse("Write one of: " + String.join(", ", labels) + "."));
		}
		return setting;
	}

	private Optional<JobCase.Expectation> expectation(Setting setting, YamlNode written) {
		Position at = problems.at(written.start());
		if (!(written instanceof Scalar scalar) || scalar.saysNothing()) {
			problems.error(written.start(), "One value of " + setting.label() + " is expected here.",
					"Write " + setting.domain().allowed() + "; or gap, dispute or not needed.");
			return Optional.empty();
		} else if (problems.refusedLines(scalar, setting.label())) {
			return Optional.empty();
		}
		return switch (Keys.normal(scalar.text())) {
			case GAP -> Optional.of(new JobCase.Gap(at));
			case DISPUTE -> Optional.of(new JobCase.Dispute(at));
			case NOT_NEEDED -> Optional.of(new JobCase.NotNeeded(at));
			default -> settled(setting, scalar).map(value -> new JobCase.Settled(value, at));
		};
	}

	private Optional<Value> settled(Setting setting, Scalar written) {
		Optional<Value> value = written.text().length() > JobKeys.LONGEST_VALUE || JobKeys.says(JobKeys.UNKNOWN, written.text())
				? Optional.empty()
				: setting.domain().read(written.text());
		if (value.isEmpty()) {
			Misfit misfit = Misfit.of(setting.label(), written.text(), setting.domain());
			problems.error(written.start(), misfit.what(), misfit.remedy());
		}
		return value;
	}
}
