package org.setwright.workbench.landing;

import java.util.Map;
import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.jface.resource.ImageRegistry;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.PaletteData;
import org.setwright.trade.wiring.Wire.Colour;

/** A patch of the colour of a conductor's insulation, with a border that shows on light and dark grounds. Its name always stands beside it. */
final class Swatch {
	private static final int SIZE = 16;
	private static final int MARGIN = 3;
	private static final int BORDER = 0x808488;
	private static final Map<Colour, Integer> COLOURS = Map.ofEntries(Map.entry(Colour.RED, 0xc8202a), Map.entry(Colour.WHITE, 0xffffff),
			Map.entry(Colour.YELLOW, 0xf4d03f), Map.entry(Colour.GREEN, 0x2e8b45), Map.entry(Colour.BLUE, 0x1f4fae), Map.entry(Colour.LIGHT_BLUE, 0x8ec6ee),
			Map.entry(Colour.ORANGE, 0xee8522), Map.entry(Colour.BROWN, 0x7a4a25), Map.entry(Colour.BLACK, 0x101214), Map.entry(Colour.PURPLE, 0x7b3fa0),
			Map.entry(Colour.PINK, 0xf2a7bd), Map.entry(Colour.TAN, 0xd2b48c), Map.entry(Colour.GREY, 0x9a9ea3), Map.entry(Colour.OTHER, 0x808488));

	private Swatch() {
	}

	/** @return the patch, shared by all and never to be disposed; call in the window's thread */
	static Image of(Colour colour) {
		ImageRegistry registry = JFaceResources.getImageRegistry();
		String key = Swatch.class.getName() + colour.name();
		if (registry.getDescriptor(key) == null) {
			registry.put(key, ImageDescriptor.createFromImageDataProvider(zoom -> drawn(COLOURS.get(colour), SIZE * zoom / 100)));
		}
		return registry.get(key);
	}

	/** @param size of the image, in pixels @return a filled square with a border, transparent around it */
	static ImageData drawn(int rgb, int size) {
		ImageData data = new ImageData(size, size, 24, new PaletteData(0xff0000, 0xff00, 0xff));
		data.alphaData = new byte[size * size];
		int margin = MARGIN * size / SIZE;
		int line = Math.max(1, size / SIZE);
		for (int y = margin; y < size - margin; y++) {
			for (int x = margin; x < size - margin; x++) {
				boolean border = Math.min(x, y) < margin + line || Math.max(x, y) >= size - margin - line;
				data.setPixel(x, y, border ? BORDER : rgb);
				data.setAlpha(x, y, 255);
			}
		}
		return data;
	}
}
