package org.setwright.editions.reading;

import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;
import org.setwright.book.ShopSettings;
import org.setwright.editions.git.Content;
import org.setwright.editions.kept.NotDone;

/** The files of a book, but the settings of the shop's own as another holds them. */
record OtherSettings(Content book, Content settings, Map<String, String> names) implements Content {

	static OtherSettings of(Content book, Content settings) {
		Map<String, String> names = new TreeMap<>(book.names());
		names.remove(ShopSettings.FILE);
		String other = settings.names().get(ShopSettings.FILE);
		if (other != null) {
			names.put(ShopSettings.FILE, other);
		}
		return new OtherSettings(book, settings, Collections.unmodifiableMap(names));
	}

	@Override
	public byte[] bytes(String path) throws NotDone {
		return (path.equals(ShopSettings.FILE) ? settings : book).bytes(path);
	}
}
