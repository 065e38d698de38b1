package org.setwright.picture;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.setwright.picture.Picture.Box;
import org.setwright.picture.Picture.Point;

/** Writes a picture as SVG that stands alone, light or dark as whoever looks at it prefers. */
public final class SvgText {
	private static final String STYLE = """
			svg{background:#fff}.sort{fill:#5c6670}path{fill:#5c6670}
			@media(prefers-color-scheme:dark){svg{background:#1f2327}text{fill:#e4e7ea}.sort{fill:#a9b2bc}
			polygon{fill:#2b3036;stroke:#a5d3e8}polyline{stroke:#a9b2bc}path{fill:#a9b2bc}}
			""";
	private final StringBuilder out = new StringBuilder();

	private SvgText() {
	}

	/** @param title what the picture shows, for those who cannot see it @return the picture as an SVG file */
	public static String of(Picture picture, String title) {
		SvgText text = new SvgText();
		text.write(picture, title);
		return text.out.toString();
	}

	private void write(Picture picture, String title) {
		String width = number(picture.width());
		String height = number(picture.height());
		out.append("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" width=\"").append(width)
				.append("\" height=\"").append(height).append("\" viewBox=\"0 0 ").append(width).append(' ').append(height).append("\">\n");
		out.append("<title>").append(harmless(title)).append("</title>\n<style>\n").append(STYLE).append("</style>\n");
		out.append("<defs><marker id=\"arrow\" markerWidth=\"8\" markerHeight=\"8\" refX=\"7\" refY=\"4\" orient=\"auto\">")
				.append("<path d=\"M0,0 L8,4 L0,8 z\"/></marker></defs>\n");
		for (Picture.Line line : picture.lines()) {
			boolean faint = picture.boxes().get(line.link().from()).node().faint();
			out.append("<polyline points=\"").append(points(line.points()))
					.append("\" fill=\"none\" stroke=\"#5c6670\"").append(faint ? " stroke-dasharray=\"5 3\"" : "").append(" marker-end=\"url(#arrow)\"/>\n");
		}
		picture.boxes().forEach(this::box);
		out.append("</svg>\n");
	}

	private void box(Box box) {
		Node node = box.node();
		out.append("<g><title>").append(harmless(node.spoken())).append("</title><polygon points=\"").append(points(Outlines.of(box)))
				.append("\" fill=\"#f6f8fa\" stroke=\"#1f4e6b\" stroke-width=\"").append(node.sort() == Node.Sort.SETTING ? "3" : "1.2").append("\"")
				.append(node.faint() ? " stroke-dasharray=\"5 3\"" : "").append("/>");
		for (int i = 0; i < box.words().size(); i++) {
			String style = i == 0 ? " class=\"sort\"" : "";
			out.append("<text text-anchor=\"middle\" font-family=\"sans-serif\" font-size=\"").append(i == 0 ? "11\"" : "13\"")
					.append(i > 0 && i <= box.titleLines() ? " font-weight=\"bold\"" : "").append(" fill=\"#23282e\"").append(style).append(" x=\"").append(number(box.x() + box.width() / 2)).append("\" y=\"")
					.append(number(box.y() + Picture.PADDING + i * box.lineHeight() + 13)).append("\">").append(harmless(box.words().get(i)))
					.append("</text>");
		}
		out.append("</g>\n");
	}

	private static String points(List<Point> points) {
		return points.stream().map(p -> number(p.x()) + "," + number(p.y())).collect(Collectors.joining(" "));
	}

	private static String number(double pixels) {
		return String.format(Locale.ROOT, "%.1f", pixels);
	}

	/** Nothing a person wrote can end an element or steer a terminal. */
	private static String harmless(String text) {
		return text.replaceAll("[\\p{Cc}\\p{Cf}]", "?").replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
	}
}
