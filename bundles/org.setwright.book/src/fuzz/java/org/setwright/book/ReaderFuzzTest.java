package org.setwright.book;

import com.code_intelligence.jazzer.api.FuzzedDataProvider;
import com.code_intelligence.jazzer.junit.FuzzTest;
import org.setwright.trade.Trade;

/**
 * Hands whatever a fuzzer thinks of to the readers. An ordinary test run tries the inputs kept beside the tests; with
 * {@code JAZZER_FUZZ=1} in the environment the fuzzer looks for new ones.
 */
class ReaderFuzzTest {
	@FuzzTest(maxDuration = "2m")
	void noJobTextBreaksTheReader(FuzzedDataProvider data) {
		JobReader.read("jobs/a.yaml", data.consumeRemainingAsString(), Trade.catalogue());
	}

	@FuzzTest(maxDuration = "2m")
	void noTableTextBreaksTheReader(FuzzedDataProvider data) {
		TableReader.read("tables/a.csv", data.consumeRemainingAsString());
	}

	@FuzzTest(maxDuration = "2m")
	void noBytesBreakTheDecoder(byte[] bytes) {
		FileContents.decode("book.yaml", bytes).text().ifPresent(BookDetails::read);
	}

	@FuzzTest(maxDuration = "2m")
	void noTextBreaksTheReaderOfSettings(FuzzedDataProvider data) {
		ShopSettingsReader.read(data.consumeRemainingAsString(), Trade.catalogue());
	}
}
