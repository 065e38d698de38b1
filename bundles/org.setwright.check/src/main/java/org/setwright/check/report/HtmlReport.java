package org.setwright.check.report;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import org.setwright.check.report.Section.Figure;

/**
 * A report as one HTML file that needs nothing else: no network, no scripts. Light or dark as the reader's system is set;
 * printed, always light.
 */
public final class HtmlReport {
	private static final DateTimeFormatter WHEN = DateTimeFormatter.ofPattern("d MMMM uuuu, HH:mm", Locale.ENGLISH);

	private HtmlReport() {
	}

	/**
	 * @param book what the shop calls the book
	 * @param when it was made
	 * @param sections in the order they are shown
	 * @return the text of the file
	 */
	public static String of(String book, LocalDateTime when, List<Section> sections) {
		Markup html = new Markup();
		html.open("html", "lang", "en").line().open("head").line();
		html.empty("meta", "charset", "utf-8").line();
		html.empty("meta", "name", "viewport", "content", "width=device-width, initial-scale=1").line();
		html.empty("meta", "name", "color-scheme", "content", "light dark").line();
		html.element("title", "Case check: " + book).line().element("style", style()).line().close().line();
		html.open("body").line();
		header(html, book, when, sections);
		html.open("main").line();
		sections.forEach(section -> section(html, section));
		html.close().line();
		html.element("footer", "Made by Setwright. What is entered on a controller is proved by running the equipment; line voltage, fuel gas, "
				+ "refrigerant, electric heat and water pipes that can freeze are for those licensed for them. Local codes and the maker's "
				+ "instructions come before anything shown here.").line();
		return "<!DOCTYPE html>\n" + html.close().line().close().line();
	}

	private static void header(Markup html, String book, LocalDateTime when, List<Section> sections) {
		html.open("header").line().element("h1", book).line();
		html.element("p", "Case check of " + when.format(WHEN), "class", "quiet").line();
		html.open("ul", "class", "figures").line();
		sections.stream().flatMap(s -> s.figures().stream()).forEach(f -> figure(html, f));
		html.close().line().open("nav", "aria-label", "Sections").open("ul").line();
		sections.forEach(s -> html.open("li").element("a", s.title(), "href", "#" + id(s)).close().line());
		html.close().close().line().close().line();
	}

	private static void figure(Markup html, Figure figure) {
		html.open("li", "class", figure.alarming() ? "alarm" : null).element("b", (figure.alarming() ? "\u26a0 " : "") + figure.value())
				.element("span", figure.words()).close().line();
	}

	private static void section(Markup html, Section section) {
		html.open("section", "id", id(section)).line().element("h2", section.title()).line();
		section.write(html);
		html.close().line();
	}

	private static String id(Section section) {
		return section.title().toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
	}

	private static String style() {
		try (InputStream css = HtmlReport.class.getResourceAsStream("report.css")) {
			return new String(css.readAllBytes(), StandardCharsets.UTF_8);
		} catch (IOException impossible) {
			throw new UncheckedIOException(impossible);
		}
	}
}
