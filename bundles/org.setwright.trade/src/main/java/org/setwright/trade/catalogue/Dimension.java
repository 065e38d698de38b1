package org.setwright.trade.catalogue;

/** What kind of quantity a unit measures; only units of one dimension convert into each other. */
public enum Dimension {
	NONE("plain number"), TEMPERATURE("temperature"), TEMPERATURE_DIFFERENCE("temperature difference"),
	HEAT_FLOW("heat flow"), APPARENT_POWER("apparent power"), VOLTAGE("voltage"), CURRENT("current"), LENGTH("length"),
	AREA("area"), AIRFLOW("airflow"), DURATION("duration"), SHARE("share"), CYCLE_RATE("cycle rate"),
	WIRE_GAUGE("wire gauge");

	private final String label;

	Dimension(String label) {
		this.label = label;
	}

	/** @return what people call it */
	public String label() {
		return label;
	}
}
