package org.setwright.engine;

/** What has become of one rule on one job. */
public enum Standing {
	/** It spoke, and nothing it proposed was outranked or is in dispute. A rule that only finds or warns stands when it speaks. */
	STANDS,
	/** It spoke, and a stronger authority proposes another value for something it proposed. */
	OUTRANKED,
	/** It spoke, and a rule of equal authority proposes another value for something it proposed. */
	DISPUTED,
	/** It neither spoke nor can be ruled out: something nobody has looked up decides. */
	HELD_OPEN,
	/** Its conditions do not hold. */
	SILENT
}
