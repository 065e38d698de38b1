package org.setwright.workbench.jobform;

import org.setwright.workbench.look.ColouredText;

/** Colours names, quoted words and comments of the other files that are written like a job. */
public final class YamlColours extends ColouredText {

	/** Made by the editor. */
	public YamlColours() {
		super(JobTextColours::in);
	}
}
