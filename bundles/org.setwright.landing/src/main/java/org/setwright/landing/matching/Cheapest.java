package org.setwright.landing.matching;

import java.util.LinkedHashSet;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jgrapht.alg.interfaces.MatchingAlgorithm.Matching;
import org.jgrapht.alg.matching.KuhnMunkresMinimalWeightBipartitePerfectMatching;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.jgrapht.graph.SimpleWeightedGraph;

/** The cheapest way to give each row a column of its own, or the row's way to go without. */
final class Cheapest {
	private Cheapest() {
	}

	/**
	 * @param costs for each row the cost of each column, and last the cost of going without
	 * @param forbidden cost of what must not be
	 * @return for each row the index of its cost
	 */
	static int[] columns(double[][] costs, double forbidden) {
		int rows = costs.length;
		int columns = rows == 0 ? 0 : costs[0].length - 1;
		int size = rows + columns;
		SimpleWeightedGraph<Integer, DefaultWeightedEdge> graph = new SimpleWeightedGraph<>(DefaultWeightedEdge.class);
		IntStream.range(0, 2 * size).forEach(graph::addVertex);
		for (int row = 0; row < size; row++) {
			for (int column = 0; column < size; column++) {
				graph.setEdgeWeight(graph.addEdge(row, size + column), cost(costs, forbidden, row, column));
			}
		}
		return chosen(graph, rows, columns, size);
	}

	/** Columns after the real ones belong to one row each, for going without; rows after the real ones take what is left. */
	private static double cost(double[][] costs, double forbidden, int row, int column) {
		if (row >= costs.length) {
			return 0;
		}
		int real = costs[row].length - 1;
		return column < real ? costs[row][column] : column - real == row ? costs[row][real] : forbidden;
	}

	private static int[] chosen(SimpleWeightedGraph<Integer, DefaultWeightedEdge> graph, int rows, int columns, int size) {
		int[] chosen = new int[rows];
		if (rows == 0) {
			return chosen;
		}
		Matching<Integer, DefaultWeightedEdge> matching = new KuhnMunkresMinimalWeightBipartitePerfectMatching<>(graph, vertices(0, size),
				vertices(size, 2 * size)).getMatching();
		for (DefaultWeightedEdge edge : matching.getEdges()) {
			int row = Math.min(graph.getEdgeSource(edge), graph.getEdgeTarget(edge));
			int column = Math.max(graph.getEdgeSource(edge), graph.getEdgeTarget(edge)) - size;
			if (row < rows) {
				chosen[row] = Math.min(column, columns);
			}
		}
		return chosen;
	}

	private static Set<Integer> vertices(int from, int to) {
		return IntStream.range(from, to).boxed().collect(Collectors.toCollection(LinkedHashSet::new));
	}
}
