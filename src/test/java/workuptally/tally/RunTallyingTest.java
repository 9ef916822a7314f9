package workuptally.tally;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import workuptally.examples.SmallBook;
import workuptally.model.Book;
import workuptally.tally.amounts.NotComputed;
import workuptally.tally.balance.Closure;
import workuptally.tally.balance.MassBalance;
import workuptally.tally.bench.ContactMixture;
import workuptally.tally.bench.StepReaction;
import workuptally.tally.layers.LayerIdentity;
import workuptally.tally.layers.LayerTally;

/** 10.00 g S in 86.68 g of toluene, washed with 20 mL of sodium hydrogencarbonate that takes 5 mmol of P up, dried and stripped. */
class RunTallyingTest {
    @Test
    void balancesAloneAreThoseOfTheWholeTally() {
        Book book = washed().book();
        RunTallying tallying = new RunTallying(book.limits(), SmallBook.substances());
        RunTally tally = tallying.tally(book.runs().get(0));
        double gas = StepReaction.gasGrams(tally.evidence().reactions());
        assertTrue(gas > 0);
        RunBalances whole = RunBalances.of(tally);
        RunBalances alone = tallying.balances(book.runs().get(0), gas);
        assertEquals(book.runs().get(0), alone.run());
        assertEquals(book.runs().get(0), whole.run());
        assertEquals(percents(whole), percents(alone));
        assertEquals(1, percents(alone).size());
        MassBalance mass = alone.massBalance().orElseThrow();
        assertEquals(
                whole.massBalance().orElseThrow().gapGrams().value(),
                mass.gapGrams().value(),
                1e-12);
        assertEquals(gas, mass.gasGrams(), 1e-12);
        assertEquals(labels(whole), labels(alone));
        assertEquals(
                List.of("A1", "K1", "O1", "O2", "O3"),
                labels(alone).stream().sorted().toList());
        assertEquals(
                whole.identities().stream().map(LayerIdentity::verdict).toList(),
                alone.identities().stream().map(LayerIdentity::verdict).toList());
        assertEquals(2, alone.identities().size());
        assertEquals(
                whole.contacts().stream().map(ContactMixture::inMillilitres).toList(),
                alone.contacts().stream().map(ContactMixture::inMillilitres).toList());
        assertEquals(1, alone.contacts().size());
    }

    @Test
    void gasThatLeftCountsInTheMassBalance() {
        Book book = washed().book();
        RunTallying tallying = new RunTallying(book.limits(), SmallBook.substances());
        MassBalance none =
                tallying.balances(book.runs().get(0), 0).massBalance().orElseThrow();
        MassBalance some =
                tallying.balances(book.runs().get(0), 1.5).massBalance().orElseThrow();
        assertEquals(1.5, some.gasGrams() - none.gasGrams(), 1e-12);
    }

    @Test
    void plannedAmountsStandBesideTheTheory() {
        // 12 g planned against 10 g weighed: 24.0 and 20.0 g of P
        SmallBook book = washed().first("charges", "Planned amount", "12").first("charges", "Planned unit", "g");
        RunTally tally = book.tally();
        assertEquals(
                20.0, tally.theory().orElseThrow().products().get(0).massGrams().value(), 1e-9);
        assertEquals(
                24.0,
                tally.theory()
                        .orElseThrow()
                        .products()
                        .get(0)
                        .plannedMassGrams()
                        .orElseThrow(),
                1e-9);
        // a second product has its own: 250 g/mol, 30.0 g by the plan
        book.row("products", "Product", "Q", "Wanted", "yes", "Molar mass", "250", "Coefficient", "1");
        assertEquals(
                30.0,
                book.tally()
                        .theory()
                        .orElseThrow()
                        .products()
                        .get(1)
                        .plannedMassGrams()
                        .orElseThrow(),
                1e-9);
        assertTrue(washed().tally()
                .theory()
                .orElseThrow()
                .products()
                .get(0)
                .plannedMassGrams()
                .isEmpty());
    }

    @Test
    void whatThePlanLacksIsNothingTheResultsLack() {
        // a planned volume of S without a density gives no amount; the weighed one does
        SmallBook book = washed().first("charges", "Planned amount", "12").first("charges", "Planned unit", "mL");
        assertEquals(omitted(washed()), omitted(book));
        assertTrue(book.tally()
                .theory()
                .orElseThrow()
                .products()
                .get(0)
                .plannedMassGrams()
                .isEmpty());
    }

    @Test
    void assayOfTwoLayersTogetherBoundsEach() {
        // 1.0 mg/mL in 20 + 30 mL: 0.050 g together, and neither holds more than that and its uncertainty
        SmallBook book = washed().row(
                        "layers", "Layer", "A2", "Phase", "aqueous", "Volume", "30", "Net", "30.00", "Status", "kept")
                .but("assays", "Sample", "A1+A2")
                .but("assays", "Result", "1.0")
                .but("assays", "Unit", "mg/mL");
        RunTally tally = book.tally();
        assertEquals(1, tally.evidence().composites().list().size());
        assertEquals(
                0.05,
                tally.layer("A2")
                        .orElseThrow()
                        .contents()
                        .get(0)
                        .upperBoundGrams()
                        .orElseThrow(),
                0.01);
        assertTrue(washed().tally().evidence().composites().list().isEmpty());
    }

    @Test
    void solventsOfTheRunAreAccountedFor() {
        assertEquals(
                List.of("toluene"),
                washed().tally().solvents().stream()
                        .map(s -> s.solvent().toLowerCase(Locale.ROOT))
                        .toList());
    }

    private static List<String> omitted(SmallBook book) {
        return book.tally().notComputed().stream().map(NotComputed::what).toList();
    }

    private static List<Double> percents(RunBalances balances) {
        return balances.closures().stream().map(Closure::unaccountedPercent).toList();
    }

    private static List<String> labels(RunBalances balances) {
        return balances.layers().stream().map(LayerTally::label).toList();
    }

    private static SmallBook washed() {
        return SmallBook.reaction()
                .but("products", "Character", "acid")
                .but("products", "pKa", "4.2")
                .row("charges", "Material", "toluene", "Role", "solvent", "Actual amount", "86.68", "Actual unit", "g")
                .row("workup", "Step", "1", "Operation", "wash", "From", "RM", "Material", "sat. NaHCO3")
                .but("workup", "Volume", "20")
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "A1")
                .row("workup", "Step", "2", "Operation", "dry", "From", "O1", "Material", "sodium sulfate")
                .but("workup", "Mass", "3.00")
                .but("workup", "Gives other", "O2")
                .row("workup", "Step", "3", "Operation", "filter", "From", "O2", "Gives other", "O3+K1")
                .row("isolated", "Lot", "C1", "Product", "P", "Stage", "crude", "From", "O3", "Net", "18.00")
                .but("isolated", "Assay", "95")
                .row("layers", "Layer", "O1", "Phase", "organic", "Volume", "108", "Net", "96.00")
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Volume", "20", "Net", "22.00", "Status", "kept")
                .row("layers", "Layer", "K1", "Phase", "solid", "Net", "5.00", "Status", "kept")
                .row("assays", "Sample", "A1", "Substance", "P", "Method", "HPLC", "Result", "5", "Unit", "mmol");
    }
}
