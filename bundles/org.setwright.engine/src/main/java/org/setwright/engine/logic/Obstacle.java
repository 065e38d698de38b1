package org.setwright.engine.logic;

import java.util.List;
import java.util.Map;
import org.setwright.engine.language.Condition;
import org.setwright.engine.language.Operand;
import org.setwright.engine.language.Test;
import org.setwright.trade.catalogue.JobField;

/** Why one condition of a rule does not certainly hold on a job. */
public sealed interface Obstacle {
	/** The condition, as written. */
	Condition condition();

	/** The job has no fact of the kind, or nobody has said. @param unsaid whether nobody has said */
	record NoFact(Condition.Pattern condition, boolean unsaid) implements Obstacle {
	}

	/**
	 * No fact of the kind passes.
	 *
	 * @param nearest the one that comes nearest
	 * @param failing the tests it does not pass
	 * @param named where the answers stand that those tests name
	 */
	record Unfit(Condition.Pattern condition, JobFacts.Item nearest, List<Test.OfField> failing,
			Map<Operand.Bound, JobField> named) implements Obstacle {
		public Unfit {
			failing = List.copyOf(failing);
			named = Map.copyOf(named);
		}
	}

	/** What is to be ruled out is there, or cannot be ruled out. @param facts those that stand in the way, if any do */
	record InTheWay(Condition.Not condition, List<JobFacts.Item> facts) implements Obstacle {
		public InTheWay {
			facts = List.copyOf(facts);
		}
	}

	/** No rule has certainly made the finding. */
	record NotFound(Condition.Found condition) implements Obstacle {
	}
}
