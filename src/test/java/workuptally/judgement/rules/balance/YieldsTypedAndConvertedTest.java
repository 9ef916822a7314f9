package workuptally.judgement.rules.balance;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.examples.SmallBook;
import workuptally.model.FindingCode;

/** A typed yield or conversion is asked about where it contradicts the weights, and left alone where they agree within their uncertainty. */
class YieldsTypedAndConvertedTest {
    private static long told(SmallBook book, FindingCode code) {
        return book.review().findings().stream().filter(f -> f.code() == code).count();
    }

    /** Two crops of 10.0 g and 6.0 g at 90 % of 20.0 g theory: 50 and 30 % by weight, 45 and 27 % by assay, 72 % together. */
    @ParameterizedTest
    @CsvSource({"50,0", "45,0", "72,0", "85,1", "30,1"})
    void aTypedYieldOfACropMayBeByWeightByAssayOrOfAll(String typed, int findings) {
        SmallBook book = SmallBook.reaction()
                .row("isolated", "Lot", "D1", "Product", "P", "Stage", "purified", "Net", "10.00", "Assay", "90")
                .but("isolated", "Stated yield", typed)
                .row("isolated", "Lot", "D2", "Product", "P", "Stage", "purified", "Net", "6.00", "Assay", "90");
        assertEquals(findings, told(book, FindingCode.STATED_YIELD_DIFFERS));
    }

    /** 19.0 g at 98 % of 20.0 g is 93.1 %, u about 1 %: a conversion of 93 % is the same, one of 85 % is not. */
    @ParameterizedTest
    @CsvSource({"93,0", "92.5,0", "85,1"})
    void aConversionIsBelowTheYieldOnlyBeyondItsUncertainty(String conversion, int findings) {
        SmallBook book = SmallBook.reaction()
                .row("isolated", "Lot", "C1", "Product", "P", "Stage", "crude", "Net", "19.00", "Assay", "98")
                .but("isolated", "Relative standard uncertainty (%)", "1.0")
                .first("runs", "Conversion (%)", conversion);
        assertEquals(findings, told(book, FindingCode.CONVERSION_BELOW_YIELD));
    }

    @ParameterizedTest
    @CsvSource({"19.00,18.00,1", "9.00,8.50,0"})
    void aResolutionAboveHalfIsToldOnceAProduct(String crude, String purified, long findings) {
        SmallBook book = SmallBook.reaction()
                .first("runs", "Kind", "resolution")
                .row("isolated", "Lot", "C1", "Product", "P", "Stage", "crude", "Net", crude, "Assay", "98")
                .row("isolated", "Lot", "D1", "Product", "P", "Stage", "purified", "Net", purified, "Assay", "99")
                .but("isolated", "From", "C1");
        assertEquals(findings, told(book, FindingCode.RESOLUTION_ABOVE_HALF));
    }
}
