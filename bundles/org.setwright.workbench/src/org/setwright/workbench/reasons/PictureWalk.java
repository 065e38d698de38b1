package org.setwright.workbench.reasons;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.eclipse.osgi.util.NLS;
import org.setwright.picture.Node;
import org.setwright.picture.Picture;
import org.setwright.picture.Picture.Box;

/** A picture with the box that is picked, and the ways from box to box. Immutable. @param picked the number of the box */
record PictureWalk(Picture picture, int picked) {

	/** Begins at the setting. */
	PictureWalk(Picture picture) {
		this(picture, picture.boxes().size() - 1);
	}

	Box box() {
		return picture.boxes().get(picked);
	}

	Node node() {
		return box().node();
	}

	/** @return at the nearest of what this rests on */
	PictureWalk left() {
		return nearest(picture.lines().stream().filter(l -> l.link().to() == picked).map(l -> l.link().from()).toList());
	}

	/** @return at the nearest of what rests on this */
	PictureWalk right() {
		return nearest(picture.lines().stream().filter(l -> l.link().from() == picked).map(l -> l.link().to()).toList());
	}

	/** @return at the next box above, one of the same column first */
	PictureWalk up() {
		return nearest(numbers(i -> box().y() - picture.boxes().get(i).y()));
	}

	/** @return at the next box below, one of the same column first */
	PictureWalk down() {
		return nearest(numbers(i -> picture.boxes().get(i).y() - box().y()));
	}

	/** @return at the first box */
	PictureWalk first() {
		return new PictureWalk(picture, 0);
	}

	/** @return at the setting */
	PictureWalk last() {
		return new PictureWalk(picture);
	}

	/** @return at the box that holds the point, or where it was */
	PictureWalk at(double x, double y) {
		return IntStream.range(0, picture.boxes().size()).filter(i -> picture.boxes().get(i).holds(x, y)).boxed().findFirst()
				.map(i -> new PictureWalk(picture, i)).orElse(this);
	}

	/** @return the picked box for those who hear the picture */
	String spoken() {
		long on = picture.lines().stream().filter(l -> l.link().to() == picked).count();
		return on == 0 ? node().spoken() : NLS.bind(Messages.PictureWalk_restsOn, node().spoken(), on);
	}

	private List<Integer> numbers(ToDoubleFunction<Integer> ahead) {
		List<Integer> all = IntStream.range(0, picture.boxes().size()).boxed().filter(i -> ahead.applyAsDouble(i) > 0).toList();
		List<Integer> column = all.stream().filter(i -> sameColumn(picture.boxes().get(i))).toList();
		return column.isEmpty() ? all : column;
	}

	private boolean sameColumn(Box other) {
		return other.x() < box().x() + box().width() && box().x() < other.x() + other.width();
	}

	private PictureWalk nearest(List<Integer> numbers) {
		Optional<Integer> next = numbers.stream().min(Comparator.comparingDouble(i -> distance(picture.boxes().get(i))));
		return next.map(n -> new PictureWalk(picture, n)).orElse(this);
	}

	private double distance(Box other) {
		return Math.hypot(other.x() + other.width() / 2 - box().x() - box().width() / 2, other.y() + other.height() / 2 - box().y() - box().height() / 2);
	}
}
