package org.setwright.trade.catalogue;

/** How serious a caution is. */
public enum CautionKind implements Choice {
	STOP("stop", "Do not go on until this is cleared."),
	DANGER("danger", "People or equipment can come to harm; the sentence says who may do the work."),
	LICENSED_WORK("licensed work", "Only a person licensed for it may do this part."),
	CHECK_AT_START_UP("check at start-up", "Prove it by running the equipment before leaving."),
	NOTE("note", "Worth knowing; nobody comes to harm.");

	private final String label;
	private final String meaning;

	CautionKind(String label, String meaning) {
		this.label = label;
		this.meaning = meaning;
	}

	@Override
	public String label() {
		return label;
	}

	@Override
	public String meaning() {
		return meaning;
	}
}
