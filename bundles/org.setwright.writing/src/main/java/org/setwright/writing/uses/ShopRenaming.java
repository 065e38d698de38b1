package org.setwright.writing.uses;

import java.util.List;
import java.util.Optional;
import org.setwright.book.JobCase;
import org.setwright.book.JobWord;
import org.setwright.book.Misfit;
import org.setwright.book.ShopSetting;
import org.setwright.book.ShopWords;
import org.setwright.trade.catalogue.Catalogue;
import org.setwright.trade.catalogue.Domain;
import org.setwright.trade.catalogue.Domain.Choices.Option;
import org.setwright.trade.catalogue.Setting;
import org.setwright.writing.Manuscript;
import org.setwright.writing.text.TextEdit;

/**
 * Gives a setting of the shop's own, or one of its values, another name: as a name in files and for people, as a word in rules.
 *
 * @param option the value; empty when it is the setting itself
 */
record ShopRenaming(Manuscript manuscript, Setting setting, Optional<Option> option) {
	private static final String ARROW = "=>";

	/** @return the renaming of {@code thing}; empty when it is nothing that the shop has added */
	static Optional<ShopRenaming> of(Manuscript manuscript, Thing thing) {
		Optional<ShopRenaming> renaming = thing instanceof Thing.OfSetting of ? Optional.of(new ShopRenaming(manuscript, of.setting(), Optional.empty()))
				: thing instanceof Thing.OfSettingChoice of ? Optional.of(new ShopRenaming(manuscript, of.setting(), Optional.of(of.option())))
				: Optional.empty();
		return renaming.filter(r -> manuscript.book().settings().own(r.setting()).isPresent());
	}

	/** @return what it is called now */
	String name() {
		return option.map(Option::label).orElse(setting.label());
	}

	/** @return why it cannot be called {@code name}, in sentences; empty when it can */
	Optional<String> refusal(String name) {
		Optional<Misfit> refused = option.isPresent() ? ShopWords.refusalOfValue(name, others()) : ShopWords.refusal(name, withoutIt());
		return refused.map(r -> r.what() + " " + r.remedy());
	}

	private List<String> others() {
		return ((Domain.Choices) setting.domain()).options().stream().filter(o -> !o.equals(option.orElseThrow())).map(Option::label).toList();
	}

	private Catalogue withoutIt() {
		return manuscript.book().settings().trade().with(manuscript.book().settings().own().stream().map(ShopSetting::setting)
				.filter(s -> !s.equals(setting)).toList());
	}

	/** @return what stands in place of {@code mention}, which is not in a job */
	String written(Mention mention, String name) {
		if (mention.path().endsWith(".drl")) {
			return ShopWords.word(name);
		}
		String before = manuscript.text(mention.path()).substring(mention.start(), mention.end());
		boolean heading = option.isEmpty() && before.startsWith(ARROW);
		return heading ? before.substring(0, before.length() - before.substring(ARROW.length()).strip().length()) + name : name;
	}

	/** @return the edits that rename it in {@code job} */
	List<TextEdit> inJob(JobCase job, String name) {
		return JobWord.all(manuscript.text(job.path()), manuscript.book().catalogue()).stream().filter(JobWord.OfSetting.class::isInstance)
				.map(JobWord.OfSetting.class::cast).filter(w -> w.setting().equals(setting)).filter(this::isIt)
				.map(w -> new TextEdit(w.start(), w.end(), name)).toList();
	}

	private boolean isIt(JobWord.OfSetting word) {
		return option.isEmpty() ? word.written().isEmpty()
				: word.written().filter(w -> w.equalsIgnoreCase(option.get().label()) || w.equalsIgnoreCase(option.get().id())).isPresent();
	}
}
