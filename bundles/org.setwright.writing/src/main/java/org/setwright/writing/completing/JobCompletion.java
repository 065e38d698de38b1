package org.setwright.writing.completing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.setwright.book.ExpectationText;
import org.setwright.book.ItemList;
import org.setwright.book.JobReader;
import org.setwright.trade.catalogue.Catalogue;
import org.setwright.trade.catalogue.CautionKind;
import org.setwright.trade.catalogue.Choice;
import org.setwright.trade.catalogue.Domain;
import org.setwright.trade.catalogue.FactKind;
import org.setwright.trade.catalogue.Field;
import org.setwright.trade.catalogue.Setting;
import org.setwright.trade.catalogue.StartUpPhase;
import org.setwright.writing.Manuscript;
import org.setwright.writing.completing.Offer.Offered;
import org.setwright.writing.uses.Mention;
import org.setwright.writing.uses.Thing;
import org.setwright.writing.uses.Uses;

/** Offers what may be written next in the text of a job. */
public final class JobCompletion {
	private static final String COLON = ": ";
	private static final Offer UNKNOWN = new Offer("unknown", "", "Nobody has looked that up.");
	private static final Offer NONE = new Offer("none", "", "Somebody made sure that there is none.");
	private static final Offer FITTED = new Offer("fitted", "", "There is one, and nothing more is known of it.");
	private static final Offer EVERYTHING_ELSE = new Offer("everything else", "", "None of every kind the job does not mention.");
	private final Manuscript manuscript;
	private final Catalogue catalogue;

	/** @param manuscript the book the job belongs to */
	public JobCompletion(Manuscript manuscript) {
		this.manuscript = manuscript;
		catalogue = manuscript.book().catalogue();
	}

	/** @return what may be written at {@code offset} of {@code text}, which may be half-written */
	public Offered at(String text, int offset) {
		return YamlPlace.at(text, offset).map(p -> Offered.of(p.start(), p.typed(), offers(p))).orElse(Offered.NOTHING);
	}

	private List<Offer> offers(YamlPlace place) {
		if (place.names().isEmpty()) {
			return JobReader.names(catalogue).stream().map(n -> new Offer(n + COLON, "", catalogue.kindCalled(n).map(FactKind::meaning).orElse(""))).toList();
		}
		String group = place.names().get(0).toLowerCase(Locale.ROOT);
		List<String> inside = place.names().subList(1, place.names().size());
		return switch (group) {
			case "not fitted" -> Stream.concat(kinds().filter(k -> !k.always()).map(k -> new Offer(k.key(), "", k.meaning())), Stream.of(EVERYTHING_ELSE)).toList();
			case "expect" -> expected(inside, place.value());
			default -> catalogue.kindCalled(group).filter(k -> !k.calculated()).map(k -> fact(k, inside, place.value())).orElse(List.of());
		};
	}

	private Stream<FactKind> kinds() {
		return catalogue.kinds().stream().filter(k -> !k.calculated());
	}

	private static List<Offer> fact(FactKind kind, List<String> inside, boolean value) {
		if (value && inside.isEmpty()) {
			return kind.always() ? List.of(UNKNOWN) : kind.many() ? List.of(UNKNOWN, NONE) : List.of(UNKNOWN, NONE, FITTED);
		} else if (value) {
			return kind.fieldLabelled(inside.get(inside.size() - 1)).map(f -> values(f.domain(), f.meaning(), Stream.of(UNKNOWN))).orElse(List.of());
		}
		return kind.fields().stream().filter(f -> f.calculation().isEmpty()).map(f -> new Offer(f.label() + COLON, "", meaning(f))).toList();
	}

	private static String meaning(Field field) {
		return field.meaning() + " Write " + field.domain().allowed() + ".";
	}

	private static List<Offer> values(Domain domain, String meaning, Stream<Offer> others) {
		Stream<Offer> listed = domain instanceof Domain.Choices choices ? choices.options().stream().map(o -> new Offer(o.label(), "", o.meaning()))
				: domain.listed().stream().map(v -> new Offer(v.text(), "", meaning));
		String allowed = meaning + " Write " + domain.allowed() + ".";
		return Stream.concat(listed, others.map(o -> domain.listed().isEmpty() ? new Offer(o.word(), "", allowed + " " + o.word() + COLON + o.meaning()) : o)).toList();
	}

	private List<Offer> expected(List<String> inside, boolean value) {
		if (inside.isEmpty()) {
			Stream<Offer> settings = catalogue.settings().stream()
					.map(s -> new Offer(s.label() + COLON, "", s.meaning() + " Write " + s.domain().allowed() + "; or gap, dispute, not needed or not set."));
			return Stream.concat(settings, Arrays.stream(ItemList.values()).map(l -> new Offer(l.key() + COLON, "", "What has to be " + l.state() + "."))).toList();
		}
		Optional<ItemList> list = ItemList.called(inside.get(0).toLowerCase(Locale.ROOT));
		Optional<Setting> setting = catalogue.settingLabelled(inside.get(0));
		if (list.isPresent()) {
			return items(list.get());
		} else if (setting.isEmpty()) {
			return List.of();
		} else if (inside.size() == 1 && !value) {
			return List.of(new Offer("is" + COLON, "", "The value it has to come to."), new Offer("by" + COLON, "", "The rule that has to decide it."));
		} else if (inside.get(inside.size() - 1).equalsIgnoreCase("by")) {
			return rules();
		}
		return values(setting.get().domain(), setting.get().meaning(), ExpectationText.noValues().stream().map(w -> new Offer(w, "", "")));
	}

	private List<Offer> rules() {
		return things(Thing.OfRule.class).map(r -> new Offer(r.name(), "", "")).filter(o -> !o.word().contains(", row ")).toList();
	}

	private List<Offer> items(ItemList list) {
		List<Offer> offers = new ArrayList<>(switch (list.topic()) {
			case CAUTIONS -> choices(CautionKind.values());
			case START_UP -> choices(StartUpPhase.values());
			case FINDINGS -> things(Thing.OfFinding.class).map(f -> new Offer(f.name().toLowerCase(Locale.ROOT).replace('_', ' '), "", "")).toList();
		});
		offers.add(new Offer("any", "", ""));
		if (!list.appears()) {
			offers.add(new Offer("any other", "", "All that the job does not name."));
		}
		return offers;
	}

	private static List<Offer> choices(Choice[] choices) {
		return Arrays.stream(choices).map(c -> new Offer(c.label(), "", c.meaning())).toList();
	}

	private <T extends Thing> Stream<T> things(Class<T> sort) {
		return Uses.in(manuscript).all().stream().filter(Mention::defines).map(Mention::thing).filter(sort::isInstance).map(sort::cast).distinct();
	}
}
