package org.setwright.book;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.setwright.book.JobCase.DecidedBy;
import org.setwright.book.JobCase.Settled;
import org.setwright.book.yaml.YamlNode;
import org.setwright.book.yaml.YamlNode.Mapping;
import org.setwright.book.yaml.YamlNode.Scalar;
import org.setwright.trade.catalogue.Catalogue;
import org.setwright.trade.catalogue.Setting;

/** Reads what a job case expects its settings to come to, and what besides. */
final class Expectations {
	private final Catalogue catalogue;
	private final ProblemList problems;
	private final Map<Setting, JobCase.Expectation> settings = new LinkedHashMap<>();
	private final List<ExpectedItem> items = new ArrayList<>();

	Expectations(Catalogue catalogue, ProblemList problems) {
		this.catalogue = catalogue;
		this.problems = problems;
	}

	/** @return by setting, in file order */
	Map<Setting, JobCase.Expectation> settings() {
		return settings;
	}

	/** @return list by list in file order */
	List<ExpectedItem> items() {
		return items;
	}

	Expectations read(YamlNode written) {
		if (written instanceof Mapping mapping) {
			Keys.of(mapping, problems).entries().forEach(this::entry);
		} else {
			problems.error(written.start(), "Settings and their values are expected after \"expect:\".",
					"Write each on a line of its own, indented, as \"setting: value\".");
		}
		return this;
	}

	private void entry(YamlNode.Entry entry) {
		String key = Keys.normal(entry.key().text());
		Optional<ItemList> list = ItemList.called(key);
		if (list.isPresent()) {
			items.addAll(new ExpectedItems(list.get(), problems).read(entry.value()));
		} else {
			setting(entry.key()).ifPresent(s -> expectation(s, entry.value()).ifPresent(e -> settings.put(s, e)));
		}
	}

	private Optional<Setting> setting(Scalar key) {
		String name = Keys.normal(key.text());
		Optional<Setting> setting = catalogue.settingLabelled(name);
		if (setting.isEmpty()) {
			List<String> labels = new ArrayList<>(catalogue.settings().stream().map(Setting::label).toList());
			labels.addAll(ItemList.keys());
			Optional<String> near = catalogue.settings().stream().filter(s -> s.id().equalsIgnoreCase(name)).map(Setting::label)
					.findFirst().or(() -> Nearest.to(name, labels));
			problems.error(key, "There is no setting " + Misfit.quoted(key.text()) + ".",
					near.map(n -> "Write \"" + n + "\".").orElse("Write one of: " + String.join(", ", labels) + "."), Nearest.several(name, labels, 3));
		}
		return setting;
	}

	private Optional<JobCase.Expectation> expectation(Setting setting, YamlNode written) {
		if (written instanceof Mapping mapping) {
			return decided(setting, mapping, problems.at(written.start())).map(d -> d);
		}
		Optional<Scalar> scalar = words(setting, written);
		Optional<JobCase.Expectation> read = scalar.flatMap(s -> ExpectationText.read(setting, s.text(), problems.at(s.start())));
		if (scalar.isPresent() && read.isEmpty()) {
			misfit(setting, scalar.get());
		}
		return read;
	}

	private Optional<Scalar> words(Setting setting, YamlNode written) {
		if (!(written instanceof Scalar scalar) || scalar.saysNothing()) {
			problems.error(written.start(), "One value of " + setting.label() + " is expected here.",
					"Write " + setting.domain().allowed() + "; or gap, dispute, not needed or not set.");
			return Optional.empty();
		}
		return problems.refusedLines(scalar, setting.label()) ? Optional.empty() : Optional.of(scalar);
	}

	private void misfit(Setting setting, Scalar written) {
		Misfit misfit = ExpectationText.badTolerance(setting, written.text())
				.orElseGet(() -> Misfit.of(setting.label(), written.text(), setting.domain()));
		problems.error(written, misfit.what(), misfit.remedy(), Misfit.near(written.text(), setting.domain()));
	}

	/** Between braces stand the value and the rule that has to decide it. */
	private Optional<DecidedBy> decided(Setting setting, Mapping mapping, Position at) {
		Keys keys = Keys.of(mapping, problems);
		for (YamlNode.Entry entry : keys.entries()) {
			if (!List.of(ExpectationText.IS, ExpectationText.BY).contains(Keys.normal(entry.key().text()))) {
				problems.error(entry.key().start(), Misfit.quoted(entry.key().text()) + " says nothing about " + setting.label() + ".",
						"Write \"{ is: <value>, by: <name of the rule> }\".");
				return Optional.empty();
			}
		}
		Optional<YamlNode> is = keys.value(ExpectationText.IS);
		Optional<Settled> settled = is.flatMap(v -> words(setting, v)).flatMap(s -> value(setting, s));
		Optional<String> rule = keys.value(ExpectationText.BY).flatMap(v -> rule(setting, v));
		if (keys.value(ExpectationText.BY).isEmpty()) {
			problems.error(mapping.start(), "The rule that has to decide " + setting.label() + " is missing.",
					"Add \"by: <name of the rule>\", or write the value alone without braces.");
		}
		return is.isPresent() && settled.isEmpty() ? Optional.empty() : rule.map(r -> new DecidedBy(settled, r, at));
	}

	private Optional<Settled> value(Setting setting, Scalar written) {
		Optional<Settled> value = ExpectationText.settled(setting, written.text(), problems.at(written.start()));
		if (value.isEmpty()) {
			misfit(setting, written);
		}
		return value;
	}

	private Optional<String> rule(Setting setting, YamlNode written) {
		if (written instanceof Scalar scalar && !scalar.saysNothing() && scalar.text().length() <= JobKeys.LONGEST_VALUE) {
			return problems.refusedLines(scalar, setting.label()) ? Optional.empty() : Optional.of(scalar.text().strip());
		}
		problems.error(written.start(), "The name of the rule that has to decide " + setting.label() + " is expected here.",
				"Write the rule's name, for example in quotes; for a row of a table, \"table\" and the table's name.");
		return Optional.empty();
	}
}
