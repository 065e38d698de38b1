package org.setwright.workbench.cases;

import java.util.Locale;
import org.setwright.check.cases.CheckedJob;
import org.setwright.check.cases.Point;

/** A line of the list: a job, or one of its points. */
sealed interface CaseLine {
	/** @return the job it is or belongs to */
	CheckedJob checked();

	/** @return what it is recognised by when results are new */
	String key();

	/** A job. */
	record OfJob(CheckedJob checked) implements CaseLine {
		@Override
		public String key() {
			return checked.job().path();
		}
	}

	/** A point of a job. */
	record OfPoint(CheckedJob checked, Point point) implements CaseLine {
		@Override
		public String key() {
			return checked.job().path() + '\n' + point.what();
		}

		/** @return everything a search looks at, lower case */
		String searched() {
			return String.join("\n", checked.job().name(), point.what(), point.expected(), point.came()).toLowerCase(Locale.ROOT); //$NON-NLS-1$
		}
	}
}
