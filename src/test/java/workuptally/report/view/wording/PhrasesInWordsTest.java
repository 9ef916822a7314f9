package workuptally.report.view.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.model.Figure;
import workuptally.model.Phrase;

/** A phrase becomes a sentence in one place: its figures rounded by their own rule, with the reader's decimal mark. */
class PhrasesInWordsTest {
    private static final Wording COMMA = new Wording(',');

    @Test
    void figuresHaveTheReadersMarkAndSoHasWhatWasTyped() {
        Phrase phrase = Phrase.of("read {} g; {} of {}", "12.50", Figure.decimals(3.8238, 3, "g"), "P");
        assertEquals("read 12.50 g; 3.824 g of P", Wording.POINT.of(phrase));
        assertEquals("read 12,50 g; 3,824 g of P", COMMA.of(phrase));
    }

    @Test
    void limitsInOurOwnWordsHaveTheReadersMarkToo() {
        assertEquals(
                "0,5 % of theory at most, not 12,5", COMMA.of(Phrase.of("0.5 % of theory at most, not {}", "12.5")));
    }

    @Test
    void clausesWithinClausesAreToldInTheSameWords() {
        Phrase clause = Phrase.of(", {} of theory", Figure.pair(84.53, 1.86, 1, "%"));
        assertEquals("P, 84,5 ± 1,9 % of theory", COMMA.of(Phrase.of("P{}{}", clause, Phrase.NONE)));
        assertEquals(
                "0,5 %; 1,5 %",
                COMMA.of(Stream.of(Figure.decimals(0.5, 1, "%"), Figure.decimals(1.5, 1, "%"))
                        .collect(Phrase.joining("; "))));
    }

    /** Volumes in L to three figures and masses in kg to four, from ten thousand on; never a power of ten. */
    @ParameterizedTest
    @CsvSource({
        "9999,mL,9999 mL",
        "10000,mL,10.0 L",
        "123456,mL,123 L",
        "12345.6,g,12.35 kg",
        "-20702,g,-20.70 kg",
        "9999.4,g,9999 g",
        "12345,mmol,12345 mmol"
    })
    void largeFiguresAreToldInTheLargerUnit(double value, String unit, String said) {
        assertEquals(said, Wording.POINT.of(Figure.decimals(value, 0, unit)));
    }

    @ParameterizedTest
    @CsvSource({"1234567, 3, 1230000", "0.00001234, 2, 0.000012", "2, 2, 2.0", "0.03, 2, 0.030"})
    void significantDigitsNeverBecomeAPowerOfTen(double value, int digits, String said) {
        assertEquals(said, Wording.POINT.of(Figure.digits(value, digits, "")));
    }

    /** A bound is rounded up, but not by what binary fractions add to it. */
    @ParameterizedTest
    @CsvSource({"0.4801, 0.49", "0.48, 0.48", "0.07240001, 0.073", "10.02, 11", "0.48000000000001, 0.48", "0, 0"})
    void boundsAreRoundedUp(double bound, String said) {
        assertEquals(said, Wording.POINT.of(Figure.bound(bound, "")));
        assertEquals(said, new ReadableNumbers('.').most(bound));
    }

    @Test
    void differencesShowTheirSignAndBriefFiguresNoZeros() {
        assertEquals("+12 g", Wording.POINT.of(Figure.signed(12.4, 0, "g")));
        assertEquals("-12 g", Wording.POINT.of(Figure.signed(-12.4, 0, "g")));
        assertEquals("2.5 %", Wording.POINT.of(Figure.brief(2.50, "%")));
    }

    @Test
    void aPhraseWithAGapTooManyIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> Phrase.of("{} and {}", "one"));
    }

    @Test
    void figureThatIsNoNumberIsADash() {
        for (double value : new double[] {Double.NaN, Double.POSITIVE_INFINITY}) {
            for (String unit : List.of("mL", "g", "%")) {
                assertEquals("– " + unit, Wording.POINT.of(Figure.digits(value, 2, unit)));
                assertEquals("– " + unit, Wording.POINT.of(Figure.decimals(value, 2, unit)));
            }
        }
    }

    @Test
    void phrasesAreEqualByTheirFigures() {
        Phrase one = Phrase.of("layer {}: {}", "A1", Figure.decimals(0.5, 1, "g"));
        assertEquals(one, Phrase.of("layer {}: {}", "A1", Figure.decimals(0.5, 1, "g")));
        assertEquals(
                one.hashCode(),
                Phrase.of("layer {}: {}", "A1", Figure.decimals(0.5, 1, "g")).hashCode());
        assertNotEquals(one, Phrase.of("layer {}: {}", "A1", Figure.decimals(0.51, 1, "g")));
    }

    @Test
    void wholeSentencesAreLeftOutWhereThereIsNoRoom() {
        Phrase action = Phrase.of("Add sat. NaCl. Assay {}. Then go on.", "A1");
        assertEquals("Add sat. NaCl. Assay A1.", Wording.POINT.inShort(action, 25));
        assertEquals("Add sat. NaCl.", Wording.POINT.inShort(action, 5));
        assertEquals(List.of("Add sat. NaCl. Assay A1. Then go on."), List.of(Wording.POINT.inShort(action, 99)));
    }
}
