package org.setwright.engine.explaining;

import java.util.List;
import java.util.stream.Stream;
import org.setwright.engine.language.Operand;
import org.setwright.engine.language.Test;

/** Sorts what a pattern wants of one fact by how it is said. */
final class Wants {
	private Wants() {
	}

	/** @return the tests of {@code test} one by one; that an answer is known goes without saying where it is tested too */
	static List<Test> of(Test test) {
		if (!(test instanceof Test.AllOf all)) {
			return List.of(test);
		}
		List<Test> flat = all.tests().stream().flatMap(t -> t instanceof Test.AllOf ? of(t).stream() : Stream.of(t)).toList();
		return flat.stream().filter(t -> !(t instanceof Test.Bind bind && asked(bind, flat))).toList();
	}

	/** @return whether {@code test} is said as something the fact does, so that several such can stand together */
	static boolean plain(Test test) {
		return test instanceof Test.Compare || test instanceof Test.Among || test instanceof Test.Matches;
	}

	/** @return whether both are the ends of one range: at least and at most of the same field */
	static boolean range(Test.OfField one, Test.OfField other) {
		return one.field().equals(other.field()) && end(one) * end(other) < 0;
	}

	/** Which end of a range a test is: 1 the lower, -1 the upper, 0 none. */
	private static int end(Test.OfField test) {
		if (!(test instanceof Test.Compare compare && compare.right() instanceof Operand.Literal)) {
			return 0;
		}
		return switch (compare.comparison()) {
			case MORE, AT_LEAST -> 1;
			case LESS, AT_MOST -> -1;
			case EQUAL, NOT_EQUAL -> 0;
		};
	}

	private static boolean asked(Test.Bind bind, List<Test> tests) {
		return tests.stream().anyMatch(t -> plain(t) && ((Test.OfField) t).field().equals(bind.field()) || compared(t, bind.variable()));
	}

	private static boolean compared(Test test, String variable) {
		return test instanceof Test.Compare compare && compare.right() instanceof Operand.Bound bound && bound.variable().equals(variable);
	}
}
