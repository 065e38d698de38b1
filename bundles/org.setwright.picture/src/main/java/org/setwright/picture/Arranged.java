package org.setwright.picture;

import java.util.ArrayList;
import java.util.List;
import org.eclipse.elk.alg.layered.LayeredLayoutProvider;
import org.eclipse.elk.alg.layered.options.LayeredMetaDataProvider;
import org.eclipse.elk.alg.layered.options.LayeredOptions;
import org.eclipse.elk.core.data.LayoutMetaDataService;
import org.eclipse.elk.core.math.ElkPadding;
import org.eclipse.elk.core.options.Direction;
import org.eclipse.elk.core.options.EdgeRouting;
import org.eclipse.elk.core.util.BasicProgressMonitor;
import org.eclipse.elk.graph.ElkEdge;
import org.eclipse.elk.graph.ElkEdgeSection;
import org.eclipse.elk.graph.ElkNode;
import org.eclipse.elk.graph.util.ElkGraphUtil;

/** Boxes arranged in layers, so that every line runs from left to right; the only class that knows the layout library. */
final class Arranged {
	private static final double BESIDE = 14;
	private static final double BETWEEN = 42;
	private static final double MARGIN = 16;

	static {
		LayoutMetaDataService.getInstance().registerLayoutMetaDataProviders(new LayeredMetaDataProvider());
	}

	private Arranged() {
	}

	/** @param boxes with their sizes; their places are not looked at @return the same boxes in their places, with lines between */
	static Picture leftToRight(List<Picture.Box> boxes, List<Derivation.Link> links) {
		ElkNode graph = ElkGraphUtil.createGraph();
		graph.setProperty(LayeredOptions.DIRECTION, Direction.RIGHT);
		graph.setProperty(LayeredOptions.EDGE_ROUTING, EdgeRouting.ORTHOGONAL);
		graph.setProperty(LayeredOptions.SPACING_NODE_NODE, BESIDE);
		graph.setProperty(LayeredOptions.SPACING_NODE_NODE_BETWEEN_LAYERS, BETWEEN);
		graph.setProperty(LayeredOptions.PADDING, new ElkPadding(MARGIN));
		List<ElkNode> nodes = new ArrayList<>();
		for (Picture.Box box : boxes) {
			ElkNode node = ElkGraphUtil.createNode(graph);
			node.setDimensions(box.width(), box.height());
			nodes.add(node);
		}
		List<ElkEdge> edges = new ArrayList<>();
		links.forEach(l -> edges.add(ElkGraphUtil.createSimpleEdge(nodes.get(l.from()), nodes.get(l.to()))));
		new LayeredLayoutProvider().layout(graph, new BasicProgressMonitor());
		return picture(graph, nodes, edges, boxes, links);
	}

	private static Picture picture(ElkNode graph, List<ElkNode> nodes, List<ElkEdge> edges, List<Picture.Box> boxes,
			List<Derivation.Link> links) {
		List<Picture.Box> placed = new ArrayList<>();
		for (int i = 0; i < boxes.size(); i++) {
			Picture.Box box = boxes.get(i);
			placed.add(new Picture.Box(box.node(), nodes.get(i).getX(), nodes.get(i).getY(), box.width(), box.height(), box.words(), box.titleLines()));
		}
		List<Picture.Line> lines = new ArrayList<>();
		for (int i = 0; i < links.size(); i++) {
			lines.add(new Picture.Line(links.get(i), points(edges.get(i).getSections().get(0))));
		}
		return new Picture(graph.getWidth(), graph.getHeight(), placed, lines);
	}

	private static List<Picture.Point> points(ElkEdgeSection section) {
		List<Picture.Point> points = new ArrayList<>();
		points.add(new Picture.Point(section.getStartX(), section.getStartY()));
		section.getBendPoints().forEach(b -> points.add(new Picture.Point(b.getX(), b.getY())));
		points.add(new Picture.Point(section.getEndX(), section.getEndY()));
		return points;
	}
}
