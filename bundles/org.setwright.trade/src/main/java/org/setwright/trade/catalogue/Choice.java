package org.setwright.trade.catalogue;

import java.util.Arrays;
import java.util.Optional;

/**
 * One of a closed list of answers. Implemented by enums: the constant's name is the word used in rules; label and
 * meaning stand on the constant, in {@link Called}.
 */
public interface Choice {
	/** @return the word used in rules, for example {@code AIR_SOURCE_HEAT_PUMP} */
	String name();

	/** @return what people and files call it, for example "air-source heat pump" */
	default String label() {
		return called().label();
	}

	/** @return the trade's meaning in one sentence */
	default String meaning() {
		return called().meaning();
	}

	private Called called() {
		try {
			return ((Enum<?>) this).getDeclaringClass().getField(name()).getAnnotation(Called.class);
		} catch (NoSuchFieldException impossible) {
			throw new IllegalStateException("an enum has a field for each constant", impossible);
		}
	}

	/** @return the constant of {@code type} whose label or name is {@code text} (any case), or empty */
	static <E extends Enum<E> & Choice> Optional<E> named(Class<E> type, String text) {
		String wanted = text.strip();
		return Arrays.stream(type.getEnumConstants())
				.filter(c -> c.label().equalsIgnoreCase(wanted) || c.name().equalsIgnoreCase(wanted)).findFirst();
	}
}
