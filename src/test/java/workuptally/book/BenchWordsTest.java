package workuptally.book;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.book.words.BookWords;
import workuptally.examples.SmallBook;
import workuptally.measure.MeasuredValue;
import workuptally.model.Charge;
import workuptally.model.FindingCode;
import workuptally.model.Layer;
import workuptally.model.Lot;
import workuptally.model.Severity;
import workuptally.model.Step;

/** Words, portions and decimal commas as benches write them (common practice). */
class BenchWordsTest {
    @ParameterizedTest
    @CsvSource({
        "evaporate, CONCENTRATE",
        "Rotavap, CONCENTRATE",
        "recrystallise, CRYSTALLISE",
        "Recrystallize, CRYSTALLISE",
        "recrystallization, CRYSTALLISE",
        "column, CHROMATOGRAPH",
        "flash chromatography, CHROMATOGRAPH",
        "washed, WASH",
        "re-extract, BACK_EXTRACT",
        "dried in vacuo, DRY_SOLID",
        "washed and dried, ''",
        "not washed, ''",
        "dried in oven at 40 °C, ''",
        "wash?, ''",
        "wash (skipped), ''",
        "wash (cold), WASH",
        "dry in vacuo, DRY_SOLID"
    })
    void operationIsKnownByItsOtherNames(String typed, String operation) {
        assertEquals(
                operation,
                BookWords.find(Step.Operation.values(), typed)
                        .map(Step.Operation::name)
                        .orElse(""));
    }

    @Test
    void otherChoicesAreKnownByTheirOtherNamesToo() {
        assertEquals(Optional.of(Charge.Role.SUBSTRATE), BookWords.find(Charge.Role.values(), "Starting material"));
        assertEquals(Optional.of(Layer.Phase.AQUEOUS), BookWords.find(Layer.Phase.values(), "aq."));
        assertEquals(Optional.of(Layer.Phase.ORGANIC), BookWords.find(Layer.Phase.values(), "fraction"));
        assertEquals(Optional.of(Lot.Stage.PURIFIED), BookWords.find(Lot.Stage.values(), "recrystallised"));
        assertEquals(Optional.empty(), BookWords.find(Lot.Stage.values(), "purified (not yet)"));
        assertEquals(Optional.of(Lot.Stage.CROP), BookWords.find(Lot.Stage.values(), "2nd crop"));
    }

    @Test
    void wordOfOneChoiceMeansNothingInAnother() {
        assertTrue(BookWords.find(Lot.Stage.values(), "rotavap").isEmpty());
        assertTrue(BookWords.find(Step.Operation.values(), "starting material").isEmpty());
    }

    @ParameterizedTest
    @CsvSource({
        "'', 3 x 30 mL, 3, 30",
        "'', 2×25, 2, 25",
        "'', '3 x 12,5 mL', 3, 12.5",
        "3, 3 x 30 mL, 3, 30",
        "3 x, 30 mL, 3, 30",
        "x3, 30, 3, 30"
    })
    void portionsMayStandWithTheirVolumeOrWithATimesSign(String portions, String volume, double count, double each) {
        Step step = step(portions, volume);
        assertEquals(count, step.added().portionCount(), 1e-9);
        assertEquals(
                each, step.added().volumeMillilitres().entered().orElseThrow().value(), 1e-9);
    }

    @ParameterizedTest
    @CsvSource({"wash x 2, '', 2, 0", "wash x 2, 2, 2, 0", "wash x 2, 1, 1, 1", "2x wash, 3, 3, 1"})
    void countBesideTheOperationIsHeldAgainstPortions(String operation, String portions, double count, int findings) {
        SmallBook book = SmallBook.reaction()
                .row("workup", "Step", "1", "Operation", operation, "From", "RM", "Material", "water", "Volume", "25")
                .but("workup", "Portions", portions);
        assertEquals(count, book.run().steps().get(0).added().portionCount(), 1e-9);
        assertEquals(
                findings,
                book.book().findings().stream()
                        .filter(f -> f.code() == FindingCode.PORTIONS_IN_NUMBER)
                        .count());
    }

    @Test
    void portionsThatContradictTheirOwnColumnAreNotRead() {
        assertTrue(step("2", "3 x 30 mL").added().volumeMillilitres().isUnreadable());
    }

    @Test
    void threeDecimalsAreReadByTheDecimalCommaOfTheirTable() {
        SmallBook book = SmallBook.reaction()
                .but("charges", "Actual amount", "\"1,702 g\"")
                .but("charges", "Actual unit", "")
                .row("charges", "Material", "MeOH", "Role", "solvent", "Actual amount", "\"12,5 mL\"");
        assertEquals(1.702, actual(book), 1e-9);
    }

    @Test
    void pointsBetweenThousandsDoNotHideTheDecimalComma() {
        SmallBook book = SmallBook.reaction()
                .but("charges", "Actual amount", "\"6,207\"")
                .row("charges", "Material", "Aceton", "Role", "solvent", "Actual amount", "\"1.250,0 mL\"");
        assertEquals(6.207, actual(book), 1e-9);
    }

    @Test
    void threeDecimalsStayOpenBesideCommasBetweenThousands() {
        SmallBook book = SmallBook.reaction()
                .but("charges", "Actual amount", "\"6,207\"")
                .row("charges", "Material", "A", "Role", "solvent", "Actual amount", "\"1,250,000 mL\"");
        assertTrue(book.run()
                .charges()
                .get(0)
                .quantity()
                .actual()
                .orElseThrow()
                .value()
                .isUnreadable());
    }

    @ParameterizedTest
    @CsvSource({"charges, Actual amount", "layers, Volume", "layers, Net", "isolated, Net", "workup, Volume"})
    void limitIsNoAmount(String table, String heading) {
        SmallBook book = SmallBook.reaction()
                .row("layers", "Layer", "A1", "Phase", "aqueous")
                .row("isolated", "Lot", "P1", "Product", "P")
                .row("workup", "Step", "1", "Operation", "wash", "From", "RM", "Material", "water")
                .but(table, heading, ">5");
        assertEquals(
                List.of("limit-as-amount"),
                book.book().findings().stream().map(f -> f.code().word()).toList());
    }

    @Test
    void limitOfAnAssayOrPHStays() {
        SmallBook book = SmallBook.reaction()
                .row("layers", "Layer", "A1", "Phase", "aqueous", "pH", "<1")
                .row("assays", "Sample", "A1", "Substance", "P", "Method", "HPLC", "Result", "<0.1", "Unit", "mg/mL");
        assertEquals(List.of(), book.book().findings());
    }

    @ParameterizedTest
    @CsvSource({"3 drops, mL", "3, drops", "3, gtt", "3 drops, ''"})
    void dropsAreARoughVolume(String amount, String unit) {
        // 3 x 0.05 mL, 25 % (common practice): 0.0375 mL
        SmallBook book = SmallBook.reaction()
                .row("charges", "Material", "H3PO4", "Formula", "H3PO4", "Density", "1.7", "Actual amount", amount)
                .but("charges", "Actual unit", unit);
        MeasuredValue volume = book.tally().amounts().get(1).volumeMillilitres().orElseThrow();
        assertEquals(0.15, volume.value(), 1e-12);
        assertEquals(0.0375, volume.standardUncertainty(), 1e-9);
        assertTrue(book.book().findings().stream()
                .anyMatch(f -> f.code().word().equals("drops-counted") && f.severity() == Severity.NOTE));
    }

    @Test
    void threeDecimalsStayOpenWhereNothingTellsHowNumbersAreWritten() {
        SmallBook book = SmallBook.reaction()
                .but("charges", "Actual amount", "\"1,702\"")
                .but("charges", "Molar mass", "100");
        assertTrue(book.run()
                .charges()
                .get(0)
                .quantity()
                .actual()
                .orElseThrow()
                .value()
                .isUnreadable());
    }

    @Test
    void threeDecimalsStayOpenWhereCommaAndPointBothOccur() {
        SmallBook book = SmallBook.reaction()
                .but("charges", "Actual amount", "\"1,702\"")
                .row("charges", "Material", "A", "Role", "solvent", "Actual amount", "\"12,5 mL\"")
                .row("charges", "Material", "B", "Role", "solvent", "Actual amount", "12.5 mL");
        assertTrue(book.run()
                .charges()
                .get(0)
                .quantity()
                .actual()
                .orElseThrow()
                .value()
                .isUnreadable());
    }

    private static double actual(SmallBook book) {
        return book.run()
                .charges()
                .get(0)
                .quantity()
                .actual()
                .orElseThrow()
                .value()
                .entered()
                .orElseThrow()
                .value();
    }

    private static Step step(String portions, String volume) {
        return SmallBook.reaction()
                .row("workup", "Step", "1", "Operation", "wash", "From", "RM", "Material", "water")
                .but("workup", "Portions", portions)
                .but("workup", "Volume", '"' + volume + '"')
                .run()
                .steps()
                .get(0);
    }
}
