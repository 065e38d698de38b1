package org.setwright.landing.need;

import java.util.List;
import java.util.Optional;
import org.setwright.engine.outcome.Finding;

/**
 * A way to do without a conductor that the shop's own rules allow on this job, by a finding of that name. The book
 * decides whether; what it takes and what is lost is said here.
 *
 * @param duty the duty that goes without a conductor
 * @param with the duty whose conductor it then shares
 * @param how what to do at the equipment
 * @param loses what the occupants lose by it
 * @param source the rule that allows it
 */
public record Economy(Duty duty, Duty with, String how, String loses, String source) {
	/** The finding by which a book lets the fan go without a conductor. */
	public static final String FAN = "FAN_CONDUCTOR_MAY_GO";
	/** The findings by which a book lets a later step share the conductor of the one before. */
	public static final String HEAT_STEPS = "HEAT_STEPS_MAY_BE_JOINED";
	public static final String COMPRESSOR_STEPS = "COMPRESSOR_STEPS_MAY_BE_JOINED";
	public static final String AUXILIARY_STEPS = "AUXILIARY_STEPS_MAY_BE_JOINED";
	/** The finding by which a book lets emergency heat share the conductor of auxiliary heat. */
	public static final String EMERGENCY = "EMERGENCY_MAY_JOIN_AUXILIARY";
	private static final int WEIGHT = 30;

	/** @return how {@code need} can do without a conductor of its own on this job; empty when it cannot */
	public static Optional<Economy> of(SetUp setUp, Need need, List<Need> needs) {
		return switch (need.duty()) {
			case FAN -> needs.stream().anyMatch(n -> n.duty() == Duty.COMPRESSOR)
					? allowed(setUp, FAN, need, Duty.COMPRESSOR, "join G to Y at the equipment, so that the fan runs with the compressor; in heat the equipment runs its fan by itself",
							"the occupants can no longer run the fan by itself, and the controller can neither circulate air nor ventilate with it")
					: Optional.empty();
			case COMPRESSOR_2 -> joined(setUp, COMPRESSOR_STEPS, need, Duty.COMPRESSOR, "Y2", "Y", "the compressor runs at full capacity on every call");
			case HEAT_2 -> joined(setUp, HEAT_STEPS, need, Duty.HEAT, "W2", "W", "both steps of heat run on every call, unless the equipment's own board delays the second");
			case HEAT_3 -> joined(setUp, HEAT_STEPS, need, Duty.HEAT_2, "W3", "W2", "the third step runs with the second");
			case AUXILIARY_2 -> joined(setUp, AUXILIARY_STEPS, need, Duty.AUXILIARY, "W2", "the auxiliary terminal", "both steps of auxiliary heat come on together");
			case EMERGENCY -> allowed(setUp, EMERGENCY, need, Duty.AUXILIARY, "set the emergency heat output to the auxiliary output, and leave E at the equipment empty",
					"the equipment's own emergency relay is not used");
			default -> Optional.empty();
		};
	}

	/** @return what it weighs, against the weights of needs left without a conductor */
	public int weight() {
		return duty == Duty.FAN ? 2 * WEIGHT : WEIGHT;
	}

	private static Optional<Economy> joined(SetUp setUp, String finding, Need need, Duty with, String later, String earlier, String loses) {
		return allowed(setUp, finding, need, with, "join " + later + " to " + earlier + " at the equipment, where its maker's diagram allows it", loses);
	}

	private static Optional<Economy> allowed(SetUp setUp, String finding, Need need, Duty with, String how, String loses) {
		return setUp.finding(finding).map(Finding::madeBy).map(by -> new Economy(need.duty(), with, how, loses, SetUp.source(by.get(0).rule())));
	}
}
