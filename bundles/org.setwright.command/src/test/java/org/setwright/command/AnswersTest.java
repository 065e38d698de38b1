package org.setwright.command;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every word's answer about the sample books, in every form, is the accepted one. */
class AnswersTest {

	@ParameterizedTest(name = "{1}: {3}")
	@CsvSource(delimiter = '|', textBlock = """
			elm    | jobs.txt             | 0 | jobs
			elm    | jobs.json            | 0 | jobs --as json
			elm    | jobs.csv             | 0 | jobs --as csv
			elm    | check.txt            | 1 | check
			elm    | check.json           | 1 | check --as json
			elm    | check-mill.txt       | 1 | check mill
			elm    | check-larch.txt      | 0 | check larch new
			elm    | check.csv            | 1 | check --as csv
			broken | check-broken.txt     | 1 | check
			broken | check-broken.json    | 1 | check --as json
			broken | check-broken.csv     | 1 | check --as csv
			broken | setup-broken.txt     | 1 | setup Bad
			elm    | setup-larch.txt      | 0 | setup larch
			elm    | setup-reasons.txt    | 0 | setup larch-lane-14 --reasons
			elm    | setup-mill.txt       | 1 | setup mill
			elm    | setup-new.txt        | 0 | setup new
			elm    | setup-all.txt        | 1 | setup --all
			elm    | setup-all.json       | 1 | setup --all --as json
			elm    | setup-all.csv        | 1 | setup --all --as csv
			elm    | startup-larch.txt    | 0 | startup larch --reasons
			elm    | startup-mill.txt     | 0 | startup mill --units si
			elm    | startup-new.txt      | 0 | startup new --units ip
			elm    | startup-larch.json   | 0 | startup larch --as json
			elm    | startup-new.csv      | 0 | startup new --as csv
			elm    | why-valve.txt        | 0 | why larch VALVE
			elm    | why-mill.txt         | 0 | why mill
			elm    | why-new.txt          | 0 | why new
			elm    | why-not-needed.txt   | 0 | why mill heater
			elm    | why-larch.json       | 0 | why larch --as json
			elm    | why-mill.json        | 0 | why mill --as json
			elm    | why-sign.txt         | 0 | why mill sign
			elm    | why-sign.json        | 0 | why mill sign --as json
			elm    | why-valve.svg        | 0 | why mill valve --as svg
			elm    | why-not-needed.json  | 0 | why mill heater --as json
			elm    | why-new.json         | 0 | why new --as json
			elm    | why-larch.csv        | 0 | why larch --as csv
			elm    | silent-mill.txt      | 0 | silent mill
			elm    | silent-heater.txt    | 0 | silent mill together
			elm    | silent-new.csv       | 0 | silent new together --as csv
			elm    | instead-mill.txt     | 0 | instead mill spare 1
			elm    | instead-mill.json    | 0 | instead mill spare 1 --as json
			elm    | matters-larch.txt    | 0 | matters larch
			elm    | apart.txt            | 0 | apart larch mill
			elm    | read.txt             | 0 | read
			elm    | read-stages.json     | 0 | read stages --as json
			elm    | read-valve.csv       | 0 | read valve --as csv
			walls  | landing-four.txt     | 0 | landing four
			walls  | landing-four.json    | 0 | landing four --as json
			walls  | landing-four.csv     | 0 | landing four --as csv
			walls  | landing-spare.txt    | 0 | landing spare
			walls  | landing-pump.txt     | 0 | landing pump
			walls  | landing-open.txt     | 0 | landing open
			walls  | landing-line.txt     | 0 | landing line
			walls  | landing-two.txt      | 0 | landing two
			walls  | landing-pile.txt     | 0 | landing thermopile
			walls  | landing-more.txt     | 0 | landing sensor
			walls  | landing-more.csv     | 0 | landing sensor --as csv
			elm    | coverage.txt         | 0 | coverage
			elm    | coverage.json        | 0 | coverage --as json
			elm    | coverage.csv         | 0 | coverage --as csv
			elm    | strength.txt         | 0 | strength
			elm    | strength-search.txt  | 0 | strength --search
			elm    | words.txt            | 0 | words
			elm    | words-pump.txt       | 0 | words pump
			elm    | words.json           | 0 | words --as json
			elm    | words-stages.csv     | 0 | words stages --as csv
			elm    | bench-heater.txt     | 0 | bench larch --script ../../scripts/heater.txt
			elm    | bench-heater.json    | 0 | bench larch --script ../../scripts/heater.txt --as json
			elm    | bench-heater.csv     | 0 | bench larch --script ../../scripts/heater.txt --as csv
			elm    | bench-slip.txt       | 1 | bench --script ../../scripts/slip.txt
			""")
	void isAsAccepted(String book, String file, int exit, String words) throws IOException {
		Typed typed = Typed.inSampleBook(book).type(words.split(" "));
		assertEquals("", typed.err());
		Golden.check(file, typed.out());
		assertEquals(exit, typed.exit());
	}

	@ParameterizedTest(name = "{1}: {2}")
	@CsvSource(delimiter = '|', textBlock = """
			120 | wide-setup-mill.txt   | setup mill
			120 | wide-words.txt        | words stages
			60  | narrow-setup-mill.txt | setup mill
			""")
	void fitsOtherWidths(int columns, String file, String words) throws IOException {
		Golden.check(file, Typed.inSampleBook("elm").columns(columns).type(words.split(" ")).out());
	}

	@ParameterizedTest(name = "{0}")
	@CsvSource({ "mill", "new" })
	void showsColourAndPlainAsciiWhereTold(String job) throws IOException {
		Golden.check("colour-setup-" + job + ".txt", Typed.inSampleBook("elm").inColour().type("setup", job).out());
		Golden.check("ascii-setup-" + job + ".txt", Typed.inSampleBook("elm").inAsciiOnly().type("setup", job).out());
	}
}
