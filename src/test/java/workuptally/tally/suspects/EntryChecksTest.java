package workuptally.tally.suspects;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.examples.SmallBook;
import workuptally.model.Book;

/** Entries against each other, each figure worked out by hand; shares that are allowed are the common practice that the class names. */
class EntryChecksTest {
    private static final double EPSILON = 1e-9;

    private static List<Check> all(SmallBook small) {
        Book book = small.book();
        return new EntryChecks(book, SmallBook.substances(), new TareRegister(book.vesselTares()))
                .of(book.runs().get(0));
    }

    private static Optional<Check> find(SmallBook book, String name) {
        return all(book).stream().filter(c -> c.name().equals(name)).findFirst();
    }

    private static Check check(SmallBook book, String name) {
        return find(book, name).orElseThrow();
    }

    private static void assertWindow(double residual, double low, double high, double u, double scale, Check check) {
        assertEquals(residual, check.residual(), EPSILON);
        assertEquals(low, check.low(), EPSILON);
        assertEquals(high, check.high(), EPSILON);
        assertEquals(u, check.standardUncertainty(), EPSILON);
        assertEquals(scale, check.scale(), EPSILON);
    }

    /** Two portions of 2.50 g, 5 g of agent, in a cake of 9.00 g. */
    private static SmallBook dried() {
        return SmallBook.reaction()
                .row("workup", "Step", "1", "Operation", "dry", "From", "RM", "Material", "sodium sulfate")
                .but("workup", "Portions", "2")
                .but("workup", "Mass", "2.50")
                .but("workup", "Gives other", "O1")
                .row("workup", "Step", "2", "Operation", "filter", "From", "O1", "Gives other", "O2+K1")
                .row("layers", "Layer", "K1", "Phase", "solid", "Net", "9.00", "Status", "kept");
    }

    @Test
    void aCakeWeighsNoLessThanItsAgentAndNotManyTimesAsMuch() {
        // 4 g more than 5 g: from nothing to three times the agent; a tenth may be lost
        assertWindow(4, -5, 10, 2.5, 5, check(dried(), "cake K1 against its agent"));
        assertWindow(4, -0.5, 1e9, 0.25, 5, check(dried(), "agent on cake K1"));
    }

    @Test
    void agentsOfDryingStepsInARowAreOnOneCake() {
        SmallBook twice = SmallBook.reaction()
                .row("workup", "Step", "1", "Operation", "dry", "From", "RM", "Material", "sodium sulfate")
                .but("workup", "Mass", "2.00")
                .but("workup", "Gives other", "O1")
                .row("workup", "Step", "2", "Operation", "dry", "From", "O1", "Material", "sodium sulfate")
                .but("workup", "Mass", "3.00")
                .but("workup", "Gives other", "O2")
                .row("workup", "Step", "3", "Operation", "filter", "From", "O2", "Gives other", "O3+K1")
                .row("layers", "Layer", "K1", "Phase", "solid", "Net", "9.00", "Status", "kept");
        assertEquals(4, check(twice, "cake K1 against its agent").residual(), EPSILON);
    }

    @Test
    void agentThatAFilterTookOffIsNotOnTheNextCake() {
        SmallBook second = dried().row(
                        "workup", "Step", "3", "Operation", "dry", "From", "O2", "Material", "magnesium sulfate")
                .but("workup", "Mass", "1.00")
                .but("workup", "Gives other", "O3")
                .row("workup", "Step", "4", "Operation", "filter", "From", "O3", "Gives other", "O4+K2")
                .row("layers", "Layer", "K2", "Phase", "solid", "Net", "1.40", "Status", "kept");
        assertEquals(0.4, check(second, "cake K2 against its agent").residual(), EPSILON);
        assertEquals(4, check(second, "cake K1 against its agent").residual(), EPSILON);
    }

    @Test
    void aDryingStepThatGivesItsCakeItselfCountsItsOwnAgent() {
        SmallBook atOnce = SmallBook.reaction()
                .row("workup", "Step", "1", "Operation", "dry", "From", "RM", "Material", "sodium sulfate")
                .but("workup", "Mass", "2.00")
                .but("workup", "Gives other", "O1+K1")
                .row("layers", "Layer", "K1", "Phase", "solid", "Net", "3.00", "Status", "kept");
        assertEquals(1, check(atOnce, "cake K1 against its agent").residual(), EPSILON);
    }

    @Test
    void withoutAgentOrWeighingACakeSaysNothing() {
        assertTrue(find(dried().but("layers", "Net", ""), "cake K1 against its agent")
                .isEmpty());
        assertTrue(find(dried().but("layers", "Phase", "organic"), "cake K1 against its agent")
                .isEmpty());
        assertTrue(find(dried().first("workup", "Mass", ""), "cake K1 against its agent")
                .isEmpty());
        assertTrue(find(dried().first("workup", "Operation", "dilute"), "cake K1 against its agent")
                .isEmpty());
    }

    @Test
    void aMolarMassIsThatOfItsFormula() {
        // benzoic acid C7H6O2: 7 × 12.011 + 6 × 1.008 + 2 × 15.999 = 122.123 (IUPAC 2021)
        SmallBook book = SmallBook.reaction()
                .row("charges", "Material", "benzoic acid", "Formula", "C7H6O2", "Molar mass", "130")
                .but("charges", "Actual amount", "1.00")
                .but("charges", "Actual unit", "g");
        Check charged = check(book, "molar mass of benzoic acid against its formula");
        assertEquals(130 - 122.123, charged.residual(), 1e-6);
        assertEquals(charged.high(), -charged.low(), EPSILON);
        assertEquals(charged.high() / 2, charged.standardUncertainty(), EPSILON);
        // allowed is a small part of it, a hydrogen not
        assertTrue(charged.high() > 0.01 && charged.high() < 1.008 * 2, "allowed " + charged.high());
        assertEquals(
                130 - 122.123,
                check(
                                SmallBook.reaction()
                                        .but("products", "Formula", "C7H6O2")
                                        .but("products", "Molar mass", "130"),
                                "molar mass of P against its formula")
                        .residual(),
                1e-6);
        assertTrue(find(SmallBook.reaction(), "molar mass of P against its formula")
                .isEmpty());
        assertTrue(find(SmallBook.reaction().but("products", "Formula", "xyz"), "molar mass of P against its formula")
                .isEmpty());
        assertTrue(find(
                        SmallBook.reaction()
                                .but("products", "Formula", "C7H6O2")
                                .but("products", "Molar mass", "0"),
                        "molar mass of P against its formula")
                .isEmpty());
    }

    @Test
    void anAmountScattersAboutItsPlan() {
        SmallBook planned = SmallBook.reaction().but("charges", "Planned amount", "8.00");
        assertWindow(
                2,
                -1.2,
                1.2,
                1.2,
                1,
                check(planned.but("charges", "Planned unit", "g"), "amount of S against the plan"));
        assertTrue(find(planned.but("charges", "Planned unit", "mL"), "amount of S against the plan")
                .isEmpty());
        planned.but("charges", "Planned unit", "g");
        assertTrue(find(planned.but("charges", "Planned amount", "0"), "amount of S against the plan")
                .isEmpty());
        assertTrue(find(planned.but("charges", "Planned amount", ""), "amount of S against the plan")
                .isEmpty());
        planned.but("charges", "Planned amount", "8.00");
        assertTrue(find(planned.but("charges", "Actual amount", ""), "amount of S against the plan")
                .isEmpty());
    }

    @Test
    void aTareIsHeldAgainstTheNearestOfItsVessel() {
        SmallBook book = SmallBook.reaction()
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Vessel", "E-1", "Gross", "277.00", "Tare", "106.00")
                .row("isolated", "Lot", "C1", "Product", "P", "Vessel", "F-1", "Gross", "93.9300", "Tare", "90.1180")
                .row("vessels", "Vessel", "E-1", "Date", "2026-01-01", "Clean dry tare", "105.80")
                .row("vessels", "Vessel", "E-1", "Date", "2026-02-01", "Clean dry tare", "107.00")
                .row("vessels", "Vessel", "F-1", "Date", "2026-02-01", "Clean dry tare", "90.1300");
        Check layer = check(book, "tare of layer A1 against the register");
        assertEquals(0.2, layer.residual(), EPSILON);
        assertEquals(layer.high(), -layer.low(), 0);
        assertEquals(layer.high(), layer.standardUncertainty(), 0);
        Check lot = check(book, "tare of lot C1 against the register");
        assertEquals(-0.012, lot.residual(), EPSILON);
        // to a tenth of a milligram a tare is known better than to a hundredth of a gram
        assertTrue(lot.high() < layer.high());
        EntryChecks checks = new EntryChecks(book.book(), SmallBook.substances(), new TareRegister(List.of()));
        double fine = checks.toleranceGrams(TypedCells.number("90.118", TypedCells.row("isolated", 2), "Tare"));
        double coarse = checks.toleranceGrams(TypedCells.number("90.12", TypedCells.row("isolated", 2), "Tare"));
        assertEquals(lot.high(), fine, 0);
        assertEquals(layer.high(), coarse, 0);
        assertTrue(find(book.but("isolated", "Tare", ""), "tare of lot C1 against the register")
                .isEmpty());
        assertTrue(find(
                        book.but("isolated", "Tare", "90.1180").but("isolated", "Vessel", "F-9"),
                        "tare of lot C1 against the register")
                .isEmpty());
    }

    private static SmallBook purified() {
        return SmallBook.reaction()
                .row("isolated", "Lot", "C1", "Product", "P", "Stage", "crude", "Gross", "24.00", "Tare", "20.00")
                .but("isolated", "Net", "9.99")
                .but("isolated", "Assay", "92")
                .row("isolated", "Lot", "P1", "Product", "P", "Stage", "purified", "From", "C1", "Net", "3.00")
                .but("isolated", "Assay", "99");
    }

    @Test
    void aPurifiedLotIsNoMoreThanItsCrudeAndHardlyLessPure() {
        // gross less tare counts before the net: 3.00 of 4.00 g, a tenth of which may be solvent
        assertWindow(-1, -4, 0.4, 0.4, 4, check(purified(), "mass of lot P1 against lot C1"));
        assertWindow(7, -10, 100, 10.0 / 3, 100, check(purified(), "purity of lot P1 against lot C1"));
        assertTrue(find(purified().but("isolated", "Net", ""), "mass of lot P1 against lot C1")
                .isEmpty());
        assertTrue(find(purified().but("isolated", "Assay", ""), "purity of lot P1 against lot C1")
                .isEmpty());
        assertTrue(find(purified().but("isolated", "Stage", "crude"), "mass of lot P1 against lot C1")
                .isEmpty());
        assertEquals(
                -6.99,
                check(purified().first("isolated", "Gross", ""), "mass of lot P1 against lot C1")
                        .residual(),
                EPSILON);
        assertTrue(find(purified().first("isolated", "Tare", "24.00"), "mass of lot P1 against lot C1")
                .isEmpty());
        SmallBook ofTwo = purified()
                .but("isolated", "From", "C1+C2")
                .row("isolated", "Lot", "C2", "Product", "P", "Stage", "crude", "Net", "2.00");
        assertTrue(find(ofTwo, "mass of lot P1 against lot C1").isEmpty());
    }

    @Test
    void aSecondWeighingIsTheFirstOne() {
        SmallBook book = SmallBook.reaction()
                .row("isolated", "Lot", "C1", "Product", "P", "Gross", "93.93", "Tare", "83.93")
                .but("isolated", "Second weighing", "93.43");
        Check check = check(book, "second weighing of lot C1");
        assertEquals(0.5, check.residual(), EPSILON);
        assertEquals(check.high(), -check.low(), 0);
        assertEquals(check.high() / 3, check.standardUncertainty(), EPSILON);
        // 3 u and three times the part of 9.50 g that drying to constant mass allows
        Check twice = check(book.but("isolated", "Second weighing", "102.93"), "second weighing of lot C1");
        double ofMass = (twice.high() - check.high()) / 9.5;
        double u = (check.high() - 9.5 * ofMass) / 3;
        assertTrue(ofMass > 0 && u > 0, ofMass + " and " + u);
        Check balance = check(book.but("isolated", "Second weighing", "83.93"), "second weighing of lot C1");
        assertEquals(3 * u, balance.high(), EPSILON);
        assertTrue(find(book.but("isolated", "Second weighing", ""), "second weighing of lot C1")
                .isEmpty());
        book.but("isolated", "Second weighing", "93.43");
        assertTrue(find(book.but("isolated", "Gross", ""), "second weighing of lot C1")
                .isEmpty());
        book.but("isolated", "Gross", "93.93");
        assertTrue(find(book.but("isolated", "Tare", ""), "second weighing of lot C1")
                .isEmpty());
    }

    private static SmallBook assayed(String sample, String substance, String result, String unit) {
        return SmallBook.reaction()
                .row("assays", "Sample", "A1", "Substance", "P", "Method", "HPLC", "Result", "2.0", "Unit", "mg/mL")
                .but("assays", "Relative standard uncertainty", "3")
                .row("assays", "Sample", sample, "Substance", substance, "Method", "HPLC", "Result", result)
                .but("assays", "Unit", unit)
                .but("assays", "Relative standard uncertainty", "4");
    }

    @Test
    void aRepeatedAssayAgreesWithinBothUncertainties() {
        // 3 % of 2.0 and 4 % of 2.0: √(0.06² + 0.08²) = 0.1
        assertWindow(0, -0.1, 0.1, 0.1, 1, check(assayed("A1", "p", "2.0", "mg/mL"), "repeated assay of P in A1"));
        assertEquals(
                -1,
                check(assayed("A1", "P", "3.0", "mg/mL"), "repeated assay of P in A1")
                        .residual(),
                EPSILON);
    }

    @ParameterizedTest
    @CsvSource({
        "A2, P, 2.0, mg/mL",
        "A1, S, 2.0, mg/mL",
        "A1, P, 2.0, % w/w",
        "A1, P, 2.0, ''",
        "A1, P, '', mg/mL",
        "A1, P, <2.0, mg/mL",
        "A1, P, >2.0, mg/mL",
        "A1, P, nd, mg/mL",
        "A1, P, 0, mg/mL"
    })
    void anotherAssayOrALimitIsNoRepeat(String sample, String substance, String result, String unit) {
        assertFalse(all(assayed(sample, substance, result, unit)).stream()
                .anyMatch(c -> c.name().startsWith("repeated assay")));
    }
}
