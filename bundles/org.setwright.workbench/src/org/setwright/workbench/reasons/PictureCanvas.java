package org.setwright.workbench.reasons;

import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.eclipse.jface.resource.FontDescriptor;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.resource.LocalResourceManager;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.setwright.picture.Derivation;
import org.setwright.picture.Node;
import org.setwright.picture.Picture;
import org.setwright.picture.TextMeasure;
import org.setwright.workbench.look.Repaint;
import org.setwright.workbench.look.Spoken;

/**
 * Shows a picture of reasons, as much of it as can still be read. Arrow keys go from box to box, Enter or a double click opens
 * what a box stands for, Ctrl with plus, minus or the wheel changes the size, Ctrl with zero makes it fit again.
 */
final class PictureCanvas {
	private static final double STEP = 1.2;
	private static final double SMALLEST = 0.3;
	private static final double LARGEST = 3;
	/** Smaller than this nobody wants to read, so the rest of the picture is scrolled to. */
	private static final double LEGIBLE = 0.7;
	private final ScrolledComposite scroll;
	private final Canvas canvas;
	private final Consumer<Node> opened;
	private final Font plain;
	private final Font strong;
	private Optional<PictureWalk> walk = Optional.empty();
	private String otherwise = ""; //$NON-NLS-1$
	private double zoom = 1;
	private boolean fits = true;

	PictureCanvas(Composite parent, Consumer<Node> opened) {
		this.opened = opened;
		scroll = new ScrolledComposite(parent, SWT.H_SCROLL | SWT.V_SCROLL | SWT.BORDER);
		canvas = new Canvas(scroll, SWT.DOUBLE_BUFFERED);
		scroll.setContent(canvas);
		scroll.setExpandHorizontal(true);
		scroll.setExpandVertical(true);
		LocalResourceManager fonts = new LocalResourceManager(JFaceResources.getResources(), canvas);
		plain = fonts.create(FontDescriptor.createFrom(JFaceResources.getDialogFont()));
		strong = fonts.create(FontDescriptor.createFrom(JFaceResources.getDialogFont()).setStyle(SWT.BOLD));
		canvas.setData(Spoken.KEY, Messages.PictureCanvas_name);
		canvas.getAccessible().addAccessibleListener(new AccessibleAdapter() {
			@Override
			public void getName(AccessibleEvent event) {
				event.result = spoken();
			}
		});
		canvas.addListener(SWT.Paint, e -> paint(e.gc));
		canvas.addListener(SWT.KeyDown, this::key);
		canvas.addListener(SWT.MouseDown, e -> pick(e, false));
		canvas.addListener(SWT.MouseDoubleClick, e -> pick(e, true));
		canvas.addListener(SWT.MouseWheel, e -> {
			if ((e.stateMask & SWT.MOD1) != 0) {
				zoom(e.count > 0 ? zoom * STEP : zoom / STEP);
				e.doit = false;
			}
		});
		canvas.addListener(SWT.Traverse, e -> e.doit = e.detail == SWT.TRAVERSE_TAB_NEXT || e.detail == SWT.TRAVERSE_TAB_PREVIOUS);
		canvas.addListener(SWT.FocusIn, e -> canvas.redraw());
		canvas.addListener(SWT.FocusOut, e -> canvas.redraw());
		scroll.addListener(SWT.Resize, e -> fit());
		Repaint.with(canvas, canvas::redraw);
	}

	Control control() {
		return scroll;
	}

	void setFocus() {
		canvas.setFocus();
	}

	/** @param derivation what to draw; empty when there is nothing @param words what is said then */
	void show(Optional<Derivation> derivation, String words) {
		otherwise = words;
		walk = derivation.map(d -> new PictureWalk(Picture.of(d, new InItsType())));
		fit();
		sized();
		walk.ifPresent(w -> reveal());
	}

	/** Makes the whole picture visible, unless somebody has chosen a size, or it could not be read any more. */
	private void fit() {
		var size = scroll.getSize();
		int frame = 2 * (scroll.getBorderWidth() + 1);
		if (fits && walk.isPresent() && size.x > frame && size.y > frame) {
			double wanted = Math.min((size.x - frame) / walk.get().picture().width(), (size.y - frame) / walk.get().picture().height());
			zoom = Math.max(LEGIBLE, Math.min(1, wanted));
			sized();
		}
	}

	/** @return what the picture shows, one box a line */
	String text() {
		return walk.map(w -> w.picture().boxes().stream().map(b -> b.node().spoken()).collect(Collectors.joining(System.lineSeparator())))
				.orElse(""); //$NON-NLS-1$
	}

	private String spoken() {
		return walk.map(PictureWalk::spoken).orElse(otherwise.isEmpty() ? Messages.PictureCanvas_name : otherwise);
	}

	/** How much room text takes in the type that is set, however large. */
	private final class InItsType implements TextMeasure {
		@Override
		public double width(String line, boolean bold) {
			return extent(line, bold).x;
		}

		@Override
		public double lineHeight() {
			return Math.max(Picture.LINE_HEIGHT, extent("", true).y + 1); //$NON-NLS-1$
		}

		private Point extent(String line, boolean bold) {
			GC gc = new GC(canvas);
			gc.setFont(bold ? strong : plain);
			Point extent = gc.stringExtent(line);
			gc.dispose();
			return extent;
		}
	}

	private void sized() {
		int width = walk.map(w -> (int) Math.ceil(w.picture().width() * zoom)).orElse(0);
		int height = walk.map(w -> (int) Math.ceil(w.picture().height() * zoom)).orElse(0);
		scroll.setMinSize(width, height);
		canvas.redraw();
	}

	private void zoom(double wanted) {
		fits = false;
		zoom = Math.max(SMALLEST, Math.min(LARGEST, wanted));
		sized();
		reveal();
	}

	private void paint(GC gc) {
		if (walk.isPresent()) {
			new PicturePainter(gc, plain, strong, zoom).paint(walk.get(), canvas.isFocusControl());
		} else {
			PicturePainter.say(gc, otherwise);
		}
	}

	private void key(Event event) {
		boolean control = (event.stateMask & SWT.MOD1) != 0;
		if (control && (event.character == '+' || event.character == '=' || event.keyCode == SWT.KEYPAD_ADD || event.keyCode == '+')) {
			zoom(zoom * STEP);
		} else if (control && (event.keyCode == '-' || event.keyCode == SWT.KEYPAD_SUBTRACT)) {
			zoom(zoom / STEP);
		} else if (control && (event.keyCode == '0' || event.keyCode == SWT.KEYPAD_0)) {
			fits = true;
			fit();
		} else if (event.keyCode == SWT.CR || event.keyCode == SWT.KEYPAD_CR) {
			walk.ifPresent(w -> opened.accept(w.node()));
		} else {
			go(event.keyCode);
		}
	}

	private void go(int keyCode) {
		walk = walk.map(w -> switch (keyCode) {
			case SWT.ARROW_LEFT -> w.left();
			case SWT.ARROW_RIGHT -> w.right();
			case SWT.ARROW_UP -> w.up();
			case SWT.ARROW_DOWN -> w.down();
			case SWT.HOME -> w.first();
			case SWT.END -> w.last();
			default -> w;
		});
		picked();
	}

	private void pick(Event event, boolean open) {
		canvas.setFocus();
		walk = walk.map(w -> w.at(event.x / zoom, event.y / zoom));
		picked();
		if (open) {
			walk.filter(w -> w.box().holds(event.x / zoom, event.y / zoom)).ifPresent(w -> opened.accept(w.node()));
		}
	}

	private void picked() {
		canvas.getAccessible().sendEvent(ACC.EVENT_NAME_CHANGED, null);
		canvas.redraw();
		reveal();
	}

	private void reveal() {
		walk.ifPresent(w -> {
			Picture.Box box = w.box();
			int left = (int) (box.x() * zoom);
			int top = (int) (box.y() * zoom);
			int right = (int) ((box.x() + box.width()) * zoom);
			int bottom = (int) ((box.y() + box.height()) * zoom);
			var area = scroll.getClientArea();
			var origin = scroll.getOrigin();
			int x = right > origin.x + area.width ? right - area.width : Math.min(origin.x, left);
			int y = bottom > origin.y + area.height ? bottom - area.height : Math.min(origin.y, top);
			scroll.setOrigin(Math.max(0, Math.min(x, left)), Math.max(0, Math.min(y, top)));
		});
	}
}
