package workuptally.tally.balance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import workuptally.examples.SmallBook;
import workuptally.tally.RunTally;

/** 10.00 g S, 90.0 g ethyl acetate and 50.0 g water in; O1 went into the lot. */
class MassAccountTest {
    @Test
    void gapIsInLessOut() {
        // In 10.00 + 90.00 + 50.00 = 150.00 g; out A1 52.00 + D1 70.00 + C1 18.00 = 140.00 g; gap 10.00 g.
        MassBalance balance = balance(worked());
        assertEquals(150.00, balance.inGrams().value(), 1e-9);
        assertEquals(140.00, balance.outGrams().value(), 1e-9);
        assertEquals(10.00, balance.gapGrams().value(), 1e-9);
        assertTrue(balance.complete());
    }

    @Test
    void uncertaintyOfTheGapIsThatOfItsSixWeighings() {
        // Six masses read to 0.01 g, 0.02 g each: 0.02 g × √6.
        assertEquals(0.048990, balance(worked()).gapGrams().standardUncertainty(), 1e-6);
    }

    @Test
    void gapIsComparedWithTheOrganicSolvent() {
        // 10.00 g of 90.00 g = 11.111 %; allowance 15 % of 90 g = 13.5 g.
        MassBalance balance = balance(worked());
        assertEquals(11.1111, balance.gapPercentOfOrganic().orElseThrow(), 1e-4);
        assertEquals(13.5, balance.evaporationAllowanceGrams(), 1e-9);
    }

    @Test
    void etherAndDichloromethaneHaveAnAllowanceOfTheirOwn() {
        // 30 % of 90 g.
        MassBalance balance = balance(worked("dichloromethane"));
        assertEquals(27.0, balance.evaporationAllowanceGrams(), 1e-9);
    }

    @Test
    void solventOfAReagentSolutionCounts() {
        // 50.0 g of a solution of T in THF, 40 % of it T: 30.0 g THF beside 90 g ethyl acetate
        SmallBook book = worked().row(
                        "charges",
                        "Material",
                        "phenylmagnesium bromide in THF",
                        "Role",
                        "reagent",
                        "Actual amount",
                        "50.0")
                .but("charges", "Actual unit", "g")
                .but("charges", "Molar mass", "200")
                .but("charges", "Assay", "40");
        assertEquals(90.0, balance(book).organicSolventGrams(), 1e-6);
        assertEquals(30.0, balance(book).solutionSolventGrams(), 1e-6);
        assertEquals(18.0, balance(book).evaporationAllowanceGrams(), 1e-6);
    }

    @Test
    void withoutOrganicSolventTheGapHasNoShareOfIt() {
        assertTrue(balance(worked("water")).gapPercentOfOrganic().isEmpty());
    }

    @Test
    void purificationIsLeftOut() {
        SmallBook book = worked().row(
                        "workup",
                        "Step",
                        "9",
                        "Operation",
                        "crystallise",
                        "From",
                        "C1",
                        "Material",
                        "ethanol",
                        "Mass",
                        "40.00")
                .but("workup", "Gives other", "ML1")
                .row("layers", "Layer", "ML1", "Phase", "mother liquor", "Net", "45.00", "Status", "kept")
                .row("isolated", "Lot", "K1", "Product", "P", "Stage", "crop", "Net", "12.00", "From", "C1");
        assertEquals(150.00, balance(book).inGrams().value(), 1e-9);
        assertEquals(140.00, balance(book).outGrams().value(), 1e-9);
    }

    @Test
    void layerWithoutAMassMakesTheBalanceIncomplete() {
        assertFalse(balance(worked().but("layers", "Net", "")).complete());
    }

    @Test
    void chargeWithoutAMassLeavesTheBalanceUncomputed() {
        RunTally tally =
                worked().row("charges", "Material", "R", "Role", "reagent").tally();
        assertTrue(tally.massBalance().isEmpty());
        assertTrue(tally.notComputed().stream().anyMatch(n -> n.what().equals("total mass balance")));
    }

    @Test
    void layerSaidToBeKeptThoughConsumedIsCountedSoThatTheBalanceShowsIt() {
        // O1, 88.00 g, went into the lot and is said to be there still: out 228.00 g.
        SmallBook book = worked().row("layers", "Layer", "O1", "Phase", "organic", "Net", "88.00", "Status", "kept");
        assertEquals(228.00, balance(book).outGrams().value(), 1e-9);
    }

    private static MassBalance balance(SmallBook book) {
        return book.tally().massBalance().orElseThrow();
    }

    private static SmallBook worked() {
        return worked("ethyl acetate");
    }

    private static SmallBook worked(String solvent) {
        return SmallBook.reaction()
                .row("charges", "Material", solvent, "Role", "solvent", "Actual amount", "90.00", "Actual unit", "g")
                .row("workup", "Step", "1", "Operation", "wash", "From", "RM", "Material", "water", "Mass", "50.00")
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "A1")
                .row("workup", "Step", "2", "Operation", "concentrate", "From", "O1", "Gives other", "D1+C1")
                .row("isolated", "Lot", "C1", "Product", "P", "Stage", "crude", "Net", "18.00")
                .row("layers", "Layer", "D1", "Phase", "distillate", "Net", "70.00", "Status", "to reuse")
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Net", "52.00", "Status", "kept");
    }

    /** Theory is 20.0 g of P: from 10.00 g S alone it cannot come; with 10.00 g of a second charge it can. */
    @Test
    void runThatListsLessThanItsProductHasNoBalance() {
        SmallBook book = SmallBook.reaction()
                .row("isolated", "Lot", "C1", "Product", "P", "Stage", "crude", "Net", "18.00", "Assay", "95");
        assertTrue(book.tally().massBalance().isEmpty());
        assertTrue(
                book.tally().notComputed().stream()
                        .anyMatch(
                                n -> n.because()
                                        .equals(
                                                "what is charged weighs less than the product that it gives: a reagent is not listed")));
        MassBalance listed = book.row(
                        "charges", "Material", "N", "Role", "reagent", "Actual amount", "10.00", "Actual unit", "g")
                .tally()
                .massBalance()
                .orElseThrow();
        assertEquals(20.0, listed.inGrams().value(), 1e-9);
        assertFalse(listed.complete(), "nothing says where the rest went");
    }

    @Test
    void whatWentInWithoutAMassIsSaid() {
        SmallBook charge = worked().row("charges", "Material", "N", "Role", "reagent", "Actual amount", "5")
                .but("charges", "Actual unit", "mL");
        assertTrue(charge.tally().massBalance().isEmpty());
        assertTrue(
                charge.tally().notComputed().stream().anyMatch(n -> n.because().equals("the mass of N is not known")));
        SmallBook added = worked().row(
                        "workup", "Step", "9", "Operation", "wash", "From", "O1", "Material", "house mix")
                .but("workup", "Volume", "5");
        assertTrue(added.tally().massBalance().isEmpty());
        assertTrue(added.tally().notComputed().stream()
                .anyMatch(n -> n.because().equals("the mass of house mix in step 9 is not known")));
    }

    @Test
    void runThatIsOnlyPlannedHasNoBalance() {
        SmallBook plan = SmallBook.reaction()
                .first("runs", "Status", "planned")
                .row("charges", "Material", "ethyl acetate", "Role", "solvent", "Planned amount", "90.00")
                .but("charges", "Planned unit", "g")
                .row("workup", "Step", "1", "Operation", "wash", "From", "RM", "Material", "water", "Volume", "50")
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "A1")
                .row("layers", "Layer", "A1", "Phase", "aqueous");
        assertTrue(plan.tally().massBalance().isEmpty());
    }
}
