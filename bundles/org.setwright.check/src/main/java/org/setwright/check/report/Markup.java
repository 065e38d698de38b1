package org.setwright.check.report;

import java.io.StringWriter;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/** Writes XML, or HTML that is XML too. Whatever is given as text or attribute is escaped; nothing else gets in. */
public final class Markup {
	private final StringWriter written = new StringWriter();
	private final XMLStreamWriter xml;

	/** Begins with nothing. */
	public Markup() {
		try {
			xml = XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(written);
		} catch (XMLStreamException impossible) {
			throw new IllegalStateException(impossible);
		}
	}

	/** Something that may go wrong in the writer and cannot with a string. */
	private interface Writing {
		void run() throws XMLStreamException;
	}

	/** Opens an element. @param attributes names and values in turn; one whose value is null is left out */
	public Markup open(String element, String... attributes) {
		return writing(() -> {
			xml.writeStartElement(element);
			attributes(attributes);
		});
	}

	/** Writes an element without content. @param attributes as for {@link #open} */
	public Markup empty(String element, String... attributes) {
		return writing(() -> {
			xml.writeEmptyElement(element);
			attributes(attributes);
		});
	}

	/** Writes an element that holds {@code text}. @param attributes as for {@link #open} */
	public Markup element(String element, String text, String... attributes) {
		return open(element, attributes).text(text).close();
	}

	/** Writes words. */
	public Markup text(String text) {
		return writing(() -> xml.writeCharacters(legal(text)));
	}

	/** Closes the innermost open element. */
	public Markup close() {
		return writing(xml::writeEndElement);
	}

	/** Begins a new line, for people who read the source. */
	public Markup line() {
		return writing(() -> xml.writeCharacters("\n"));
	}

	private void attributes(String... attributes) throws XMLStreamException {
		for (int i = 0; i < attributes.length; i += 2) {
			if (attributes[i + 1] != null) {
				xml.writeAttribute(attributes[i], legal(attributes[i + 1]));
			}
		}
	}

	private Markup writing(Writing writing) {
		try {
			writing.run();
			return this;
		} catch (XMLStreamException impossible) {
			throw new IllegalStateException(impossible);
		}
	}

	/** XML 1.0 has no place for most control characters and for halves of characters. */
	private static String legal(String text) {
		StringBuilder legal = new StringBuilder(text.length());
		text.codePoints().forEach(c -> legal.appendCodePoint(c == '\t' || c == '\n' || c == '\r' || c >= 0x20 && c <= 0xD7FF
				|| c >= 0xE000 && c <= 0xFFFD || c >= 0x10000 ? c : 0xFFFD));
		return legal.toString();
	}

	/** @return everything written */
	@Override
	public String toString() {
		writing(xml::flush);
		return written.toString();
	}
}
