package workuptally.tally.balance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import workuptally.examples.SmallBook;
import workuptally.report.view.wording.Wording;

/** An acid P (pKa 4.2) made with 100 mmol NaOH, acidified with 80 mL of 1 M HCl and extracted: layer A2, 100 mL, pH 5.2. */
class RouteAccountTest {
    @Test
    void secondExtractionFindsWhatTheFirstOneLeft() {
        // 20.0 g in all; D = 4, 100 mL over 100 mL: a fifth is left each time, 4.0 g and then 0.8 g
        SmallBook book = SmallBook.reaction()
                .first("products", "Partition ratio", "4")
                .first("products", "Partition solvent", "ethyl acetate")
                .row("workup", "Step", "1", "Operation", "extract", "From", "RM", "Material", "ethyl acetate")
                .but("workup", "Volume", "100")
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "Q1")
                .row("workup", "Step", "2", "Operation", "extract", "From", "Q1", "Material", "ethyl acetate")
                .but("workup", "Volume", "100")
                .but("workup", "Gives organic", "O2")
                .but("workup", "Gives aqueous", "A1")
                .row("workup", "Step", "3", "Operation", "combine", "From", "O1+O2", "Gives organic", "O3")
                .row("layers", "Layer", "Q1", "Phase", "aqueous", "Volume", "100", "Status", "consumed")
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Volume", "100", "Status", "kept")
                .row("assays", "Sample", "A1", "Substance", "P", "Method", "HPLC", "Result", "8", "Unit", "mg/mL")
                .row("isolated", "Lot", "C1", "Product", "P", "Stage", "crude", "From", "O3", "Net", "19.20")
                .but("isolated", "Assay", "100");
        Route partition = book.tally().evidence().routes().stream()
                .filter(r -> r.way() == Route.Way.PARTITION)
                .findFirst()
                .orElseThrow();
        assertEquals(0.8, partition.massGrams(), 0.001);
    }

    @Test
    void assayIsOneRoute() {
        // 40 mg/mL × 100 mL = 4.0 g; U = 2 × √(2² + 1.2²) % = 4.66476 % of 4.0 g = 0.186590 g.
        Route route = route(acidified(), Route.Way.ASSAY).orElseThrow();
        assertEquals(4.0, route.massGrams(), 1e-9);
        assertEquals(4.0 - 0.186590, route.lowGrams(), 1e-5);
        assertEquals("HPLC 40 mg/mL × volume", Wording.POINT.of(route.equation()));
    }

    @Test
    void assayByMassIsTimesTheMass() {
        Route route = route(acidified().but("assays", "Unit", "% w/w").but("assays", "Result", "4"), Route.Way.ASSAY)
                .orElseThrow();
        assertEquals("HPLC 4 % w/w × mass", Wording.POINT.of(route.equation()));
    }

    @Test
    void chargeBalanceIsStrongBaseLessStrongAcid() {
        // 100 − 80 = 20 mmol salt × 200 g/mol = 4.0 g; band 2 × 1 % × √(100² + 80²) = 2.561250 mmol = 0.512250 g.
        Route route = route(acidified(), Route.Way.CHARGE_BALANCE).orElseThrow();
        assertEquals(4.0, route.massGrams(), 1e-9);
        assertEquals(4.0 - 0.512250, route.lowGrams(), 1e-5);
        assertEquals(4.0 + 0.512250, route.highGrams(), 1e-5);
    }

    @Test
    void chargeBalanceIsNotDrawnWhereCarbonateTookPart() {
        SmallBook book = acidified()
                .row("charges", "Material", "sodium carbonate", "Role", "base", "Formula", "Na2CO3")
                .but("charges", "Actual amount", "5")
                .but("charges", "Actual unit", "mmol");
        assertTrue(route(book, Route.Way.CHARGE_BALANCE).isEmpty());
    }

    @Test
    void chargeBalanceIsNotDrawnWithoutMolarMass() {
        SmallBook book = acidified().but("products", "Molar mass", "");
        assertTrue(route(book, Route.Way.CHARGE_BALANCE).isEmpty());
    }

    @Test
    void partitionLeavesItsShareOfAllThatWasThere() {
        // D = 11 / (1 + 10^(5.2 − 4.2)) = 1; one portion of 100 mL over 100 mL leaves half of 4.0 g (A2) + 12.0 g (C1)
        // = 16.0 g: 8.0 g.
        Route route = route(acidified(), Route.Way.PARTITION).orElseThrow();
        assertEquals(8.0, route.massGrams(), 1e-9);
    }

    @Test
    void bandOfAPartitionIsThatOfItsRatioAndOfThePHReading() {
        // P within 1.2 and pH ± 0.1 (10^0.1 = 1.258925): D from 1/1.510710 to 1.510710; left 16/(1 + D): 6.372698 to
        // 9.627302 g.
        Route route = route(acidified(), Route.Way.PARTITION).orElseThrow();
        assertEquals(6.372698, route.lowGrams(), 1e-4);
        assertEquals(9.627302, route.highGrams(), 1e-4);
    }

    @Test
    void oneRouteAloneIsNotListed() {
        SmallBook book = acidified().but("products", "Character", "neutral").but("products", "Partition ratio", "");
        assertEquals(List.of(), book.tally().evidence().routes());
    }

    private static Optional<Route> route(SmallBook book, Route.Way way) {
        return book.tally().evidence().routes().stream()
                .filter(r -> r.way() == way)
                .findFirst();
    }

    private static SmallBook acidified() {
        return SmallBook.reaction()
                .but("products", "Character", "acid")
                .but("products", "pKa", "4.2")
                .but("products", "Partition ratio", "11")
                .but("products", "Partition solvent", "ethyl acetate")
                .row("charges", "Material", "sodium hydroxide", "Role", "base", "Formula", "NaOH")
                .but("charges", "Actual amount", "100")
                .but("charges", "Actual unit", "mmol")
                .row("workup", "Step", "1", "Operation", "acidify", "From", "RM", "Material", "1 M HCl", "Volume", "80")
                .but("workup", "Molarity", "1.00")
                .but("workup", "Gives other", "RM")
                .row(
                        "workup",
                        "Step",
                        "2",
                        "Operation",
                        "extract",
                        "From",
                        "RM",
                        "Material",
                        "ethyl acetate",
                        "Volume",
                        "100")
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "A2")
                .row(
                        "isolated",
                        "Lot",
                        "C1",
                        "Product",
                        "P",
                        "Stage",
                        "crude",
                        "Net",
                        "12.00",
                        "Assay",
                        "100",
                        "From",
                        "O1")
                .row("layers", "Layer", "A2", "Phase", "aqueous", "Volume", "100", "Net", "102.00", "pH", "5.2")
                .row("assays", "Sample", "A2", "Substance", "P", "Method", "HPLC", "Result", "40", "Unit", "mg/mL");
    }
}
