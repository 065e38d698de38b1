package org.setwright.workbench.reasons;

import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Transform;
import org.eclipse.swt.widgets.Display;
import org.setwright.picture.Node;
import org.setwright.picture.Outlines;
import org.setwright.picture.Picture;
import org.setwright.picture.Picture.Box;
import org.setwright.picture.Picture.Point;
import org.setwright.workbench.look.Palette;
import org.setwright.workbench.look.Palette.Ink;

/** Draws a picture of reasons; shapes, dashes and words say everything that colours do. */
final class PicturePainter {
	private static final int[] DASHES = { 5, 3 };
	private static final int ARROW = 7;
	private static final int MARGIN = 12;
	private final GC gc;
	private final Font plain;
	private final Font strong;
	private final double zoom;
	private final Palette palette = Palette.now();

	PicturePainter(GC gc, Font plain, Font strong, double zoom) {
		this.gc = gc;
		this.plain = plain;
		this.strong = strong;
		this.zoom = zoom;
	}

	/** Says {@code words} where there is no picture. */
	static void say(GC gc, String words) {
		ground(gc);
		gc.setForeground(Palette.now().colour(Ink.QUIET));
		gc.drawText(words, MARGIN, MARGIN, true);
	}

	private static void ground(GC gc) {
		gc.setBackground(Display.getCurrent().getSystemColor(SWT.COLOR_LIST_BACKGROUND));
		gc.fillRectangle(gc.getClipping());
	}

	void paint(PictureWalk walk, boolean focus) {
		ground(gc);
		gc.setAntialias(SWT.ON);
		Transform scale = new Transform(gc.getDevice());
		scale.scale((float) zoom, (float) zoom);
		gc.setTransform(scale);
		Picture picture = walk.picture();
		picture.lines().forEach(l -> line(l, picture.boxes().get(l.link().from()).node().faint()));
		picture.boxes().forEach(b -> box(b, b == walk.box(), focus));
		gc.setTransform(null);
		scale.dispose();
	}

	private void line(Picture.Line line, boolean faint) {
		gc.setForeground(palette.colour(Ink.QUIET));
		gc.setBackground(palette.colour(Ink.QUIET));
		gc.setLineWidth(1);
		dashed(faint);
		gc.drawPolyline(numbers(line.points()));
		Point end = line.points().get(line.points().size() - 1);
		gc.fillPolygon(new int[] { (int) end.x(), (int) end.y(), (int) end.x() - ARROW, (int) end.y() - ARROW / 2, (int) end.x() - ARROW,
				(int) end.y() + ARROW / 2 + 1 });
	}

	private void box(Box box, boolean picked, boolean focus) {
		int[] corners = numbers(Outlines.of(box));
		gc.setBackground(palette.colour(picked ? Ink.CHANGED_GROUND : Ink.BAND_GROUND));
		gc.fillPolygon(corners);
		gc.setForeground(palette.colour(Ink.HEADING));
		gc.setLineWidth((box.node().sort() == Node.Sort.SETTING ? 3 : 1) + (picked && focus ? 1 : 0));
		dashed(box.node().faint());
		gc.drawPolygon(corners);
		for (int i = 0; i < box.words().size(); i++) {
			gc.setFont(i > 0 && i <= box.titleLines() ? strong : plain);
			gc.setForeground(palette.colour(i == 0 ? Ink.QUIET : Ink.TEXT));
			String words = box.words().get(i);
			int left = (int) (box.x() + (box.width() - gc.stringExtent(words).x) / 2);
			gc.drawString(words, left, (int) (box.y() + Picture.PADDING + i * box.lineHeight()), true);
		}
	}

	private void dashed(boolean faint) {
		if (faint) {
			gc.setLineDash(DASHES);
		} else {
			gc.setLineStyle(SWT.LINE_SOLID);
		}
	}

	private static int[] numbers(List<Point> points) {
		return points.stream().flatMapToInt(p -> java.util.stream.IntStream.of((int) Math.round(p.x()), (int) Math.round(p.y()))).toArray();
	}
}
