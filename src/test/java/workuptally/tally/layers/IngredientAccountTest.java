package workuptally.tally.layers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.examples.SmallBook;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.ChargeAmount;
import workuptally.tally.amounts.Ingredients;

/**
 * What charges and additions are made of. Densities at 20 °C of the CRC Handbook: n-hexane 0.6596, ethyl acetate 0.9003, diethyl ether
 * 0.7138, water 0.9982, acetyl chloride 1.1051, 10 % sodium carbonate 1.1029 g/mL.
 */
class IngredientAccountTest {
    private static final double EPSILON = 1e-6;
    private static final IngredientAccount MATERIALS = new IngredientAccount(SmallBook.substances());

    private static ChargeAmount amount(String material, String amount, String unit, String... more) {
        SmallBook book = SmallBook.reaction()
                .row("charges", "Material", material, "Role", "reagent", "Actual amount", amount, "Actual unit", unit);
        for (int i = 0; i < more.length; i += 2) {
            book.but("charges", more[i], more[i + 1]);
        }
        RunTally tally = book.tally();
        return tally.amounts().get(tally.amounts().size() - 1);
    }

    private static Ingredients charge(String material, String amount, String unit, String... more) {
        return MATERIALS.of(amount(material, amount, unit, more));
    }

    private static Ingredients added(String material, String... more) {
        SmallBook book = SmallBook.reaction()
                .row("workup", "Step", "1", "Operation", "wash", "From", "RM", "Material", material);
        for (int i = 0; i < more.length; i += 2) {
            book.but("workup", more[i], more[i + 1]);
        }
        return MATERIALS.of(FollowedRun.of(book.but("workup", "Gives organic", "O1"))
                .additions()
                .get(0));
    }

    private static double millilitres(Ingredients mixture, String name) {
        return mixture.parts().get(name).millilitres();
    }

    @Test
    void aSolventGoesUnderItsListedName() {
        Ingredients solvent = charge("EtOAc", "90.03", "g", "Role", "solvent");
        assertEquals(Set.of("ethyl acetate"), solvent.parts().keySet());
        assertEquals(90.03, solvent.grams("ethyl acetate"), EPSILON);
        assertEquals(100, solvent.millilitres(), EPSILON);
        assertEquals(120, charge("EtOAc", "120", "mL", "Role", "solvent").millilitres(), EPSILON);
        // an organic one as the substrate is none, water is
        assertEquals(
                Set.of(IngredientAccount.REACTANTS),
                charge("EtOAc", "90.03", "g", "Role", "substrate").parts().keySet());
        assertEquals(
                Set.of("water"),
                charge("water", "50", "g", "Role", "substrate").parts().keySet());
    }

    @Test
    void aBlendIsItsSolvents() {
        Ingredients blend = charge("hexane/ethyl acetate 4:1", "100", "mL", "Role", "solvent");
        assertEquals(80 * 0.6596, blend.grams("n-hexane"), 1e-3);
        assertEquals(20 * 0.9003, blend.grams("ethyl acetate"), 1e-3);
        assertEquals(80, millilitres(blend, "n-hexane"), EPSILON);
        Ingredients added = added("hexane/ethyl acetate 4:1", "Volume", "50");
        assertEquals(40 * 0.6596, added.grams("n-hexane"), 1e-3);
        assertEquals(10, millilitres(added, "ethyl acetate"), EPSILON);
        // by mass: 4 × 0.6596 + 0.9003 = 3.5387 g are 5 mL
        Ingredients weighed = added("hexane/ethyl acetate 4:1", "Mass", "35.387");
        assertEquals(50, weighed.millilitres(), 1e-3);
        assertEquals(40 * 0.6596, weighed.grams("n-hexane"), 1e-3);
    }

    @Test
    void aSolutionIsItsSolventApartFromItsSolute() {
        // 40 mL of 0.700 g/mL are 28.0 g, of which 100 mmol of 64 g/mol are 6.4 g
        Ingredients solution = charge(
                "organyllithium in n-hexane", "40", "mL", "Molar mass", "64", "Molarity", "2.5", "Density", "0.700");
        assertEquals(21.6, solution.grams("n-hexane"), EPSILON);
        assertEquals(40, solution.millilitres(), EPSILON);
        assertEquals(Set.of("n-hexane"), solution.parts().keySet());
        // without a density the solvent is its volume
        Ingredients estimated = charge("organyllithium in n-hexane", "40", "mL", "Molar mass", "64", "Molarity", "2.5");
        assertEquals(40 * 0.6596, estimated.grams("n-hexane"), 1e-3);
    }

    @Test
    void aSolutionInWaterKeepsItsSoluteInTheWater() {
        // 50 mL of 1.120 g/mL are 56.0 g with 100 mmol of 98.072 g/mol: 9.807 g
        Ingredients acid =
                charge("acid of the shelf", "50", "mL", "Formula", "H2SO4", "Molarity", "2.0", "Density", "1.120");
        assertEquals(56.0 - 9.8072, acid.grams("water"), 1e-3);
        assertEquals(9.8072, acid.grams("acid of the shelf"), 1e-3);
        assertEquals(50, acid.millilitres(), EPSILON);
        Ingredients estimated = charge("acid of the shelf", "50", "mL", "Formula", "H2SO4", "Molarity", "2.0");
        assertEquals(50 * 0.9982, estimated.grams("water"), 0.01);
        assertEquals(9.8072, estimated.grams("acid of the shelf"), 1e-3);
        // a titre tells a solution as well; of what holds carbon nobody says in which solvent
        assertTrue(charge("acid of the shelf", "50", "mL", "Formula", "H2SO4", "Titre", "2.0")
                        .grams("water")
                > 49);
        assertEquals(
                0,
                charge("acid of the shelf", "50", "mL", "Formula", "C2H4O2", "Molarity", "2.0")
                        .grams("water"),
                0);
    }

    @Test
    void theRestOfADiluteChargeIsAVolumeOfNobodyKnowsWhat() {
        // 34 of 1000 g are what it is named for; most of a broth is water
        Ingredients broth = charge("acid in broth", "1000", "g", "Formula", "C4H8O3", "Assay", "3.4");
        assertEquals(966, millilitres(broth, IngredientAccount.REST), 1e-6);
        assertEquals(34 / 1.2, millilitres(broth, IngredientAccount.SOLIDS), 1e-6);
        Ingredients read = charge("acid in broth", "980", "mL", "Formula", "C4H8O3", "Assay", "3.4", "Density", "1.02");
        assertEquals(980, millilitres(read, IngredientAccount.REST), 1e-6);
        // half and half is no dilute one, and a catalyst on its support is a solid
        assertFalse(charge("acid", "10", "g", "Formula", "C4H8O3", "Assay", "50")
                .parts()
                .containsKey(IngredientAccount.REST));
        assertFalse(charge("acid", "10", "g", "Formula", "C4H8O3", "Assay", "51")
                .parts()
                .containsKey(IngredientAccount.REST));
        assertTrue(charge("acid", "10", "g", "Formula", "C4H8O3", "Assay", "49")
                .parts()
                .containsKey(IngredientAccount.REST));
        assertFalse(
                charge("Pd/C", "10", "g", "Formula", "Pd", "Assay", "5").parts().containsKey(IngredientAccount.REST));
        assertFalse(charge("silica gel", "10", "g", "Formula", "SiO2", "Assay", "5")
                .parts()
                .containsKey(IngredientAccount.REST));
    }

    @Test
    void aSoluteTakesUpVolume() {
        // dissolved salt 2.5, dissolved organic matter 1.2 g/mL (common practice)
        Ingredients salt = charge("sodium chloride", "25.0", "g", "Formula", "NaCl");
        assertEquals(25.0, salt.grams("sodium chloride"), EPSILON);
        assertEquals(10, millilitres(salt, IngredientAccount.SALTS), EPSILON);
        Ingredients organic = charge("benzocaine", "12.0", "g", "Formula", "C9H11NO2");
        assertEquals(10, millilitres(organic, IngredientAccount.SOLIDS), EPSILON);
        assertEquals(0, organic.totalGrams(), 0);
        Ingredients liquid = charge("acetyl chloride", "11.051", "g", "Formula", "C2H3ClO");
        assertEquals(10, millilitres(liquid, IngredientAccount.REACTANTS), EPSILON);
        assertEquals(
                15,
                millilitres(charge("benzyl thing", "15", "mL", "Formula", "C7H7Br"), IngredientAccount.REACTANTS),
                EPSILON);
    }

    @Test
    void reactantsAndDissolvedSolidsAreNotPoured() {
        Ingredients portion = Ingredients.of(IngredientAccount.REACTANTS, 0, 5)
                .plus(Ingredients.of(IngredientAccount.SOLIDS, 0, 7))
                .plus(Ingredients.of(IngredientAccount.SALTS, 0, 3))
                .plus(Ingredients.of("toluene", 10, 11));
        assertEquals(12, MATERIALS.reactantMillilitres(portion), 0);
        assertEquals(14, MATERIALS.withoutReactants(portion).millilitres(), 0);
        assertEquals(16, MATERIALS.poured(portion).millilitres(), 0);
    }

    @Test
    void theSolventOfASolutionByVolumeAloneHasNoKnownMass() {
        assertEquals(
                Optional.of("n-hexane"),
                MATERIALS.solventOfUnknownMass(
                        amount("organyllithium in n-hexane", "40", "mL", "Molar mass", "64", "Molarity", "2.5")));
        assertEquals(
                Optional.empty(),
                MATERIALS.solventOfUnknownMass(amount(
                        "organyllithium in n-hexane",
                        "40",
                        "mL",
                        "Molar mass",
                        "64",
                        "Molarity",
                        "2.5",
                        "Density",
                        "0.7")));
        // nor where water is the solvent, the strength unknown, or no volume was typed
        assertEquals(
                Optional.empty(),
                MATERIALS.solventOfUnknownMass(amount("acid", "40", "mL", "Formula", "H2SO4", "Molarity", "2.5")));
        assertEquals(
                Optional.empty(), MATERIALS.solventOfUnknownMass(amount("organyllithium in n-hexane", "40", "mL")));
    }

    @Test
    void aWashIsWaterAndItsSolute() {
        // 50 mL of 1.1029 g/mL with 10 %: 5.5145 g
        Ingredients wash = added("10% Na2CO3", "Volume", "50");
        assertEquals(5.5145, wash.grams("sodium carbonate"), 1e-3);
        assertEquals(49.6305, wash.grams("water"), 1e-3);
        assertEquals(50, wash.millilitres(), EPSILON);
        // by a strength typed in its own cell: 0.5 mol/L × 50 mL × 105.988 g/mol
        Ingredients typed = added("10% Na2CO3", "Volume", "50", "Molarity", "0.5");
        assertEquals(2.6497, typed.grams("sodium carbonate"), 1e-3);
        assertEquals(55.145 - 2.6497, typed.grams("water"), 1e-3);
    }

    @Test
    void aSolutionInASolventIsAddedAsItsSolvent() {
        Ingredients ether = added("2 M HCl in ether", "Volume", "50");
        assertEquals(50 * 0.7138, ether.grams("diethyl ether"), 1e-3);
        assertEquals(
                40, added("2 M HCl in ether", "Volume", "50", "Density", "0.8").grams("diethyl ether"), EPSILON);
    }

    @Test
    void anOrganicLiquidThatIsNoSolventTakesUpVolume() {
        Ingredients chloride = added("acetyl chloride", "Volume", "8");
        assertEquals(8, millilitres(chloride, IngredientAccount.REACTANTS), EPSILON);
        assertEquals(0, chloride.totalGrams(), 0);
    }

    @Test
    void anUnlistedLiquidPassesForWaterAndASolidForItself() {
        Ingredients brew = added("secret brew", "Volume", "20");
        assertEquals(20 * 0.9982, brew.grams("water"), 0.01);
        assertEquals(20, brew.millilitres(), EPSILON);
        assertEquals(24, added("secret brew", "Volume", "20", "Density", "1.2").grams("water"), EPSILON);
        Ingredients powder = added("secret powder", "Mass", "7");
        assertEquals(7, powder.grams("secret powder"), EPSILON);
        assertEquals(0, powder.millilitres(), 0);
        assertEquals(3, added("solid Na2CO3", "Mass", "3").totalGrams(), EPSILON);
    }

    @ParameterizedTest
    @CsvSource({
        "water, '', true",
        "rest of a charge, '', true",
        "organic reactants and products, '', false",
        "organic solids in solution, '', false",
        "toluene, '', false",
        "NaX, NaBr, true",
        "carbonate, K2CO3, true",
        "acid, C7H6O2, false",
        "unreadable, xyz, false",
        "sodium chloride, '', true",
        "brine, '', true",
        "benzocaine, '', false"
    })
    void saltsGoWithTheWater(String component, String formula, boolean withWater) {
        ChargeAmount charged = amount(component, "1", "g", "Formula", formula);
        assertEquals(withWater, MATERIALS.goesWithWater(component, List.of(charged.charge())));
    }

    @Test
    void whatNobodyChargedIsTakenForASaltUnlessASolvent() {
        assertTrue(MATERIALS.goesWithWater("secret powder", List.of()));
        assertFalse(MATERIALS.goesWithWater("toluene", List.of()));
    }

    @Test
    void aNameWithinASentenceKeepsTheCapitalOfALocant() {
        assertEquals(
                List.of("N,N-dimethylformamide", "N-methyl-2-pyrrolidone", "ethyl acetate"),
                List.of("DMF", "NMP", "EtOAc").stream()
                        .map(n -> MATERIALS.solventName(n).orElse(""))
                        .toList());
    }

    @Test
    void aStepIsOrganicByItsLiquid() {
        var steps = SmallBook.reaction()
                .row("workup", "Step", "1", "Operation", "wash", "From", "RM", "Material", "toluene")
                .row("workup", "Step", "2", "Operation", "wash", "From", "RM", "Material", "brine")
                .run()
                .steps();
        assertTrue(MATERIALS.isOrganic(steps.get(0)));
        assertFalse(MATERIALS.isOrganic(steps.get(1)));
    }

    @Test
    void aTestThatFoundNoHydrideLeavesItsSalts() {
        var run = SmallBook.reaction()
                .row("charges", "Material", "sodium borohydride", "Role", "reagent", "Formula", "NaBH4")
                .but("charges", "Actual amount", "2.00")
                .but("charges", "Actual unit", "g")
                .run();
        Ingredients portion = Ingredients.of("sodium borohydride", 2, 1).plus(Ingredients.of("water", 50, 50));
        Ingredients tested = MATERIALS.withoutHydrides(portion, run);
        assertEquals(2, tested.grams(IngredientAccount.QUENCHED), EPSILON);
        assertEquals(0, tested.grams("sodium borohydride"), 0);
        assertEquals(50, tested.grams("water"), 0);
        assertEquals(51, tested.millilitres(), 0);
        Ingredients without = Ingredients.of("water", 50, 50).plus(Ingredients.of("S", 3, 0));
        assertEquals(without, MATERIALS.withoutHydrides(without, run));
    }
}
