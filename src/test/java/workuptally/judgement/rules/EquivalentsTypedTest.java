package workuptally.judgement.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.examples.SmallBook;
import workuptally.model.FindingCode;

/** A reagent of 50 g/mol beside 10.00 g of S, 100 mmol: 6.00 g are 120 mmol, 1.2 equivalents. */
class EquivalentsTypedTest {
    @ParameterizedTest
    @CsvSource({"1.2, 0", "1.22, 0", "1.25, 1", "1.3, 1", "2.4, 1", "'120 mol %', 0", "12, 1", "'', 0"})
    void equivalentsBesideAMassAreComparedWithIt(String typed, int findings) {
        assertEquals(
                findings,
                count(reagent().but("charges", "Equivalents", typed), FindingCode.STATED_AMOUNT_DIFFERS),
                typed);
    }

    @ParameterizedTest
    @CsvSource({"1.2, equiv, 0", "1.5, equiv, 0", "2.4, equiv, 1", "120, mmol, 0", "240, mmol, 1"})
    void planInEquivalentsOrMillimolesIsComparedWithWhatWasWeighed(String planned, String unit, int findings) {
        assertEquals(
                findings,
                count(
                        reagent().but("charges", "Planned amount", planned).but("charges", "Planned unit", unit),
                        FindingCode.AMOUNT_FAR_FROM_PLAN));
    }

    /** 10 mmol of 100 mmol: catalysts by what they are; a partner that falls short is asked about, and so is a catalyst's 90 mmol. */
    @ParameterizedTest
    @CsvSource({
        "CuI, 0.1, 0",
        "10 % Pd/C, 0.05, 0",
        "85 % H3PO4, 0.5, 0",
        "CuI, 0.9, 1",
        "acetone, 0.5, 1",
        "NaBH4, 0.5, 1"
    })
    void catalystGivenInEquivalentsIsNotShort(String material, String equivalents, int findings) {
        SmallBook book = SmallBook.reaction()
                .row(
                        "charges",
                        "Material",
                        material,
                        "Role",
                        "reagent",
                        "Actual amount",
                        equivalents,
                        "Actual unit",
                        "equiv");
        assertEquals(findings, count(book, FindingCode.BELOW_ONE_EQUIVALENT));
    }

    private static SmallBook reagent() {
        return SmallBook.reaction()
                .row("charges", "Material", "R", "Role", "reagent", "Molar mass", "50", "Coefficient", "1")
                .but("charges", "Actual amount", "6.00")
                .but("charges", "Actual unit", "g");
    }

    private static long count(SmallBook book, FindingCode code) {
        return book.reviewOfRun().findings().stream()
                .filter(f -> List.of(code).contains(f.code()))
                .count();
    }
}
