package workuptally.tally.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.examples.SmallBook;
import workuptally.report.view.wording.Wording;
import workuptally.tally.RunTally;

/** Neutralisation and gas; room at 20 °C and 101.325 kPa, where one mole of an ideal gas takes 8.314463 × 293.15 / 101.325 = 24.0551 L. */
class StepReactionAccountTest {
    @Test
    void bicarbonateFreesOneCarbonDioxideForEachProtonItMeets() {
        // 5 mmol of acid was measured in the layer: 5 mmol CO2, 0.120276 L.
        StepReaction reaction = reaction(washed("NaHCO3", "10"));
        assertEquals("CO2", reaction.gas());
        assertEquals(5, reaction.expectedMillimoles(), 1e-9);
        assertEquals(0.120276, reaction.expectedLitres(), 1e-5);
    }

    @Test
    void capacityIsWhatTheWashBringsOverWhatItMeets() {
        // 10 mL × 1.0 mol/L = 10 mmol over 5 mmol; 5 mL would just do.
        StepReaction reaction = reaction(washed("NaHCO3", "10"));
        assertEquals(10, reaction.washMillimoles(), 1e-9);
        assertEquals(2.0, reaction.capacityRatio().orElseThrow(), 1e-9);
        assertEquals(5.0, reaction.neededMillilitres().orElseThrow(), 1e-9);
    }

    @Test
    void washCannotFreeMoreGasThanItHoldsCarbonate() {
        // 3 mL × 1.0 mol/L = 3 mmol bicarbonate meets 5 mmol of acid: 3 mmol CO2, expected and at worst.
        StepReaction reaction = reaction(washed("NaHCO3", "3"));
        assertEquals(3, reaction.expectedMillimoles(), 1e-9);
        assertEquals(3, reaction.worstMillimoles(), 1e-9);
        assertEquals(0.6, reaction.capacityRatio().orElseThrow(), 1e-9);
    }

    @Test
    void carbonateTakesTheFirstProtonWithoutGas() {
        // 3 mmol carbonate, 5 mmol acid: the first 3 make bicarbonate, the other 2 free 2 mmol CO2; capacity 2 × 3 = 6
        // mmol.
        StepReaction reaction = reaction(washed("Na2CO3", "3"));
        assertEquals(2, reaction.expectedMillimoles(), 1e-9);
        assertEquals(6, reaction.washMillimoles(), 1e-9);
    }

    @Test
    void hydroxideNeutralisesWithoutGas() {
        StepReaction reaction = reaction(washed("NaOH", "10"));
        assertEquals("", reaction.gas());
        assertEquals(2.0, reaction.capacityRatio().orElseThrow(), 1e-9);
    }

    @Test
    void mineralAcidChargedIsMetUnlessWaterWentBefore() {
        // 5 mmol measured + 2 mmol HCl charged = 7 mmol in the first wash; after a water wash the 5 alone.
        SmallBook first = hydrogenChloride(washed("NaHCO3", "10"));
        assertEquals(7, reaction(first).expectedMillimoles(), 1e-9);
        SmallBook second = SmallBook.reaction()
                .row("workup", "Step", "0", "Operation", "wash", "From", "RM", "Material", "water", "Volume", "20")
                .but("workup", "Gives organic", "O0")
                .but("workup", "Gives aqueous", "A0");
        hydrogenChloride(wash(second, "sat. NaHCO3", "10"));
        assertEquals(5, reaction(second.but("workup", "From", "O0")).expectedMillimoles(), 1e-9);
    }

    @Test
    void plannedWashMeetsEveryAcidChargedLessWhatConversionUses() {
        // Benzoic acid (pKa 4.2) 30 mmol, 10 mmol used up: 20 mmol expected, 30 at worst.
        StepReaction reaction = reaction(SmallBook.empty()
                .but("runs", "Status", "planned")
                .row("products", "Product", "P", "Wanted", "yes", "Molar mass", "200")
                .row("charges", "Material", "S", "Role", "substrate", "Molar mass", "100", "Coefficient", "1")
                .but("charges", "Planned amount", "10")
                .but("charges", "Planned unit", "mmol")
                .row("charges", "Material", "benzoic acid", "Role", "reagent", "Molar mass", "122", "Coefficient", "1")
                .but("charges", "Planned amount", "30")
                .but("charges", "Planned unit", "mmol")
                .row(
                        "workup",
                        "Step",
                        "1",
                        "Operation",
                        "wash",
                        "From",
                        "RM",
                        "Material",
                        "sat. NaHCO3",
                        "Volume",
                        "25")
                .but("workup", "Molarity", "1.0")
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "A1"));
        assertEquals(20, reaction.expectedMillimoles(), 1e-9);
        assertEquals(30, reaction.worstMillimoles(), 1e-9);
        assertEquals(1.25, reaction.capacityRatio().orElseThrow(), 1e-9);
    }

    @ParameterizedTest
    @CsvSource({
        // mmol taken by 10 mL at the strength named, down to about pH 7: phosphate 2, ammonia 1.
        "0.5 M K3PO4, 10",
        "0.3 M Na2HPO4, 3",
        "1 M ammonia, 10"
    })
    void washesOfWeakBasesCountTheirCapacity(String material, double millimoles) {
        assertEquals(
                millimoles,
                reaction(wash(SmallBook.reaction(), material, "10").but("workup", "Molarity", ""))
                        .washMillimoles(),
                0.05);
    }

    @Test
    void acetateTakesUpMineralAcidOnly() {
        // pKa 4.76: benzoic acid stays as it is, 2 mmol of hydrogen chloride do not.
        StepReaction reaction = reaction(hydrogenChloride(wash(SmallBook.reaction(), "1 M sodium acetate", "10")));
        assertEquals(10, reaction.washMillimoles(), 0.05);
        assertEquals(2, reaction.worstToNeutraliseMillimoles(), 1e-9);
    }

    @ParameterizedTest
    @CsvSource({
        // By stoichiometry: SOCl2 + H2O = 2 HCl + SO2; POCl3 + 3 H2O = 3 HCl + H3PO4, two more protons to pH 7 to 8;
        // AcCl + H2O = HCl + AcOH; Ac2O + H2O = 2 AcOH.
        "thionyl chloride, HCl SO2, 20 10, 20",
        "POCl3, HCl, 30, 50",
        "Acetylchlorid, HCl, 10, 20",
        "acetic anhydride, '', '', 20"
    })
    void whatWaterMakesOfAcidChloridesCounts(String material, String gases, String litres, double acid) {
        List<StepReaction> released =
                plannedWith(material, "water").tally().evidence().reactions();
        assertEquals(
                gases, String.join(" ", released.stream().map(StepReaction::gas).toList()));
        assertEquals(
                litres,
                String.join(
                        " ",
                        released.stream()
                                .map(r -> String.valueOf(Math.round(r.worstMillimoles())))
                                .toList()));
        // Into hydrogencarbonate the hydrogen chloride comes as carbon dioxide, once.
        List<StepReaction> neutralised =
                plannedWith(material, "sat. NaHCO3").tally().evidence().reactions();
        assertTrue(neutralised.stream().noneMatch(r -> r.gas().equals("HCl")));
        StepReaction wash = neutralised.stream()
                .filter(r -> r.washMillimoles() > 0)
                .findFirst()
                .orElseThrow();
        assertEquals(acid, wash.worstToNeutraliseMillimoles(), 1e-9);
    }

    /** A run over 1 mmol of substrate with 10 mmol of a reagent, and a first wash of 100 mL. */
    private static SmallBook plannedWith(String material, String wash) {
        return SmallBook.empty()
                .but("runs", "Status", "planned")
                .row("products", "Product", "P", "Wanted", "yes", "Molar mass", "200")
                .row("charges", "Material", "S", "Role", "substrate", "Molar mass", "100", "Coefficient", "1")
                .but("charges", "Planned amount", "1")
                .but("charges", "Planned unit", "mmol")
                .row("charges", "Material", material, "Role", "reagent", "Molar mass", "100")
                .but("charges", "Planned amount", "10")
                .but("charges", "Planned unit", "mmol")
                .row("workup", "Step", "1", "Operation", "wash", "From", "RM", "Material", wash, "Volume", "100")
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "A1");
    }

    @ParameterizedTest
    @CsvSource({
        // A done run over 1 mmol of substrate, 10 mmol of reagent; by stoichiometry as above, and 5 mmol measured of
        // another acid.
        "trifluoroacetic acid, , 15",
        "acetic anhydride, , 25",
        "acetic anhydride, 1, 24",
        "Acetylchlorid, 1, 24"
    })
    void doneRunRemembersTheCarbonDioxideOfOrganicAcids(String material, String coefficient, double millimoles) {
        SmallBook book = SmallBook.empty()
                .row("products", "Product", "P", "Wanted", "yes", "Molar mass", "200")
                .row("charges", "Material", "S", "Role", "substrate", "Molar mass", "100", "Coefficient", "1")
                .but("charges", "Actual amount", "1")
                .but("charges", "Actual unit", "mmol")
                .row("charges", "Material", material, "Role", "reagent", "Molar mass", "100")
                .but("charges", "Coefficient", coefficient == null ? "" : coefficient)
                .but("charges", "Actual amount", "10")
                .but("charges", "Actual unit", "mmol");
        StepReaction ample = reaction(wash(book, "sat. NaHCO3", "100"));
        assertEquals("CO2", ample.gas());
        assertEquals(millimoles, ample.expectedMillimoles(), 1e-9);
    }

    @ParameterizedTest
    @CsvSource({
        "NaH, 1",
        "CaH2, 2",
        "NaBH4, 4",
        "LiAlH4, 4",
        "DIBAL-H, 1",
        "NaBH3CN, 3",
        "lithium triethylborohydride, 1"
    })
    void hydridesGiveTheirHydrogens(String material, double hydrogens) {
        SmallBook book = SmallBook.reaction()
                .row("charges", "Material", material, "Role", "reagent", "Molar mass", "50", "Actual amount", "10")
                .but("charges", "Actual unit", "mmol")
                .row("workup", "Step", "1", "Operation", "quench", "From", "RM", "Material", "water", "Volume", "20");
        assertEquals(
                10 * hydrogens,
                book.tally().evidence().reactions().stream()
                        .filter(r -> r.gas().equals("H2"))
                        .mapToDouble(StepReaction::worstMillimoles)
                        .sum(),
                1e-9);
    }

    @Test
    void quenchOfBorohydrideFreesFourHydrogenLessWhatTheReactionUsed() {
        // 30 mmol NaBH4 × 4 = 120 mmol; 100 mmol ketone take 100 × 0.25 × 4 = 100: 20 mmol expected, 120 at worst.
        StepReaction reaction = reaction(SmallBook.reaction()
                .row(
                        "charges",
                        "Material",
                        "sodium borohydride",
                        "Role",
                        "reagent",
                        "Formula",
                        "NaBH4",
                        "Coefficient",
                        "0.25")
                .but("charges", "Actual amount", "30")
                .but("charges", "Actual unit", "mmol")
                .row("workup", "Step", "1", "Operation", "quench", "From", "RM", "Material", "water", "Volume", "50")
                .but("workup", "Gives other", "RM"));
        assertEquals("H2", reaction.gas());
        assertEquals(20, reaction.expectedMillimoles(), 1e-6);
        assertEquals(120, reaction.worstMillimoles(), 1e-6);
    }

    @Test
    void everyHydrideChargedGivesHydrogen() {
        // 30 mmol NaBH4 in two portions, 100 of its 120 mmol used; 10 mmol NaH without a coefficient: 20 + 10 mmol, 120
        // + 10 at worst.
        StepReaction reaction = reaction(hydride("sodium borohydride", "NaBH4", "20", "0.25")
                .row(
                        "charges",
                        "Material",
                        "Sodium borohydride",
                        "Role",
                        "reagent",
                        "Formula",
                        "NaBH4",
                        "Coefficient",
                        "0.25")
                .but("charges", "Actual amount", "10")
                .but("charges", "Actual unit", "mmol")
                .row("charges", "Material", "sodium hydride", "Role", "base", "Formula", "NaH")
                .but("charges", "Actual amount", "10")
                .but("charges", "Actual unit", "mmol"));
        assertEquals(30, reaction.expectedMillimoles(), 1e-6);
        assertEquals(130, reaction.worstMillimoles(), 1e-6);
        assertTrue(
                Wording.POINT.of(reaction.because()).contains("sodium hydride"), Wording.POINT.of(reaction.because()));
    }

    @Test
    void hydrideLeftOfOneReagentIsNotUsedUpByAnother() {
        // 20 mmol of S take all of 20 mmol LiAlH4 at a coefficient of 1; the 10 mmol of the hydride without a
        // coefficient are all left.
        StepReaction reaction = reaction(hydride("lithium aluminium hydride", "LiAlH4", "20", "1")
                .first("charges", "Actual amount", "2.00")
                .row("charges", "Material", "sodium hydride", "Role", "base", "Formula", "NaH")
                .but("charges", "Actual amount", "10")
                .but("charges", "Actual unit", "mmol"));
        assertEquals(10, reaction.expectedMillimoles(), 1e-6);
        assertEquals(90, reaction.worstMillimoles(), 1e-6);
    }

    private static SmallBook hydride(String name, String formula, String millimoles, String coefficient) {
        return SmallBook.reaction()
                .row("workup", "Step", "1", "Operation", "quench", "From", "RM", "Material", "water", "Volume", "50")
                .but("workup", "Gives other", "RM")
                .row("charges", "Material", name, "Role", "reagent", "Formula", formula, "Coefficient", coefficient)
                .but("charges", "Actual amount", millimoles)
                .but("charges", "Actual unit", "mmol");
    }

    @Test
    void acidWashIsHeldAgainstTheBasesMeasuredInTheLayerItGave() {
        // 10 mL × 1.0 mol/L over 4 mmol amine: 2.5.
        StepReaction reaction = reaction(wash(SmallBook.reaction(), "1 M HCl", "10")
                .but("products", "Character", "base")
                .but("products", "pKa", "9.2")
                .but("assays", "Result", "4"));
        assertEquals(2.5, reaction.capacityRatio().orElseThrow(), 1e-9);
        assertEquals("", reaction.gas());
    }

    @Test
    void gasCountsByItsMass() {
        // 5 mmol × 44.009 g/mol = 0.220045 g.
        RunTally tally = washed("NaHCO3", "10").tally();
        assertEquals(0.220045, StepReaction.gasGrams(tally.evidence().reactions()), 1e-9);
    }

    @Test
    void washThatMeetsNothingIsNotListed() {
        assertTrue(washed("NaHCO3", "10")
                .but("products", "Character", "neutral")
                .tally()
                .evidence()
                .reactions()
                .isEmpty());
    }

    @Test
    void acidPortionsInSeveralRowsAreUsedUpOnce() {
        // benzoic acid 15 + 15 mmol over 10 mmol of S, coefficient 1 in both rows: 20 mmol left, 30 at worst
        SmallBook book =
                benzoic(benzoic(planned("sat. NaHCO3", "25"), "benzoic acid", "15", "1"), "Benzoic acid", "15", "1");
        StepReaction reaction = reaction(book);
        assertEquals(20, reaction.toNeutraliseMillimoles(), 1e-9);
        assertEquals(30, reaction.worstToNeutraliseMillimoles(), 1e-9);
    }

    @Test
    void basePortionsInSeveralRowsAreUsedUpOnce() {
        // pyridine 8 + 8 mmol, 10 used by S: 6 mmol bind 6 of the 20 mmol of acid
        SmallBook book = benzoic(planned("sat. NaHCO3", "25"), "benzoic acid", "20", "");
        base(base(book, "pyridine", "8", "1"), "Pyridine", "8", "1");
        assertEquals(14, reaction(book).toNeutraliseMillimoles(), 1e-9);
    }

    @ParameterizedTest
    @CsvSource({
        // pyridine charged mmol, its coefficient, what is left to neutralise of 20 mmol of benzoic acid
        "5, '', 15",
        "25, '', 0",
        "12, 1, 18",
        "10, 1, 20",
        "4, 1, 20",
        "0, '', 20"
    })
    void basesThatTheReactionLeavesBindAcidBeforeTheWash(String pyridine, String coefficient, double left) {
        SmallBook book = benzoic(planned("sat. NaHCO3", "25"), "benzoic acid", "20", "");
        StepReaction reaction = reaction(base(book, "pyridine", pyridine, coefficient));
        assertEquals(left, reaction.toNeutraliseMillimoles(), 1e-9);
        assertEquals(left, reaction.expectedMillimoles(), 1e-9);
        assertEquals(20, reaction.worstMillimoles(), 1e-9);
        assertEquals(left > 0, reaction.capacityRatio().isPresent());
        assertEquals(left > 0, reaction.neededMillilitres().isPresent());
        assertEquals(left > 0, reaction.neededAtWorstMillilitres().isPresent());
    }

    @Test
    void plannedWashThatIsTooSmallGivesTheGasOfOneThatIsNot() {
        // 10 mL of 1 mol/L against 20 mmol; 20 mL would do, and give 20 mmol; 30 mL at 30 mmol
        StepReaction reaction = reaction(benzoic(planned("sat. NaHCO3", "10"), "benzoic acid", "30", "1"));
        assertEquals(20, reaction.expectedMillimoles(), 1e-9);
        assertEquals(30, reaction.worstMillimoles(), 1e-9);
        assertEquals(0.5, reaction.capacityRatio().orElseThrow(), 1e-9);
        assertEquals(20, reaction.neededMillilitres().orElseThrow(), 1e-9);
        assertEquals(30, reaction.neededAtWorstMillilitres().orElseThrow(), 1e-9);
    }

    @Test
    void gasIsGivenInLitresOfTheRoomAndInLoads() {
        // 30 mmol × 24.0551 L/mol = 0.721653 L; 0.481102 L of 20 mmol
        StepReaction reaction = reaction(
                benzoic(planned("sat. NaHCO3", "25"), "benzoic acid", "30", "1").but("workup", "Loads", "3"));
        assertEquals(0.481102, reaction.expectedLitres(), 1e-5);
        assertEquals(0.721653, reaction.worstLitres(), 1e-5);
        assertEquals(3, reaction.loads());
        assertEquals(1, reaction(washed("NaHCO3", "10")).loads());
    }

    @Test
    void acidFoundInTheLayerIsNotCountedAgainByItsCharge() {
        // 30 mmol of benzoic acid charged, 7 of them found in the layer beside 5 mmol of P: 12 mmol
        SmallBook book = benzoicOfARun(washed("NaHCO3", "20"))
                .row("assays", "Sample", "A1", "Substance", "benzoic acid", "Method", "HPLC", "Result", "7")
                .but("assays", "Unit", "mmol")
                .but("assays", "Formula", "C7H6O2");
        assertEquals(12, reaction(book).expectedMillimoles(), 1e-9);
        // without that assay all 30 may have come, before water; after it only mineral acid at worst
        StepReaction unread = reaction(benzoicOfARun(washed("NaHCO3", "40")));
        assertEquals(35, unread.expectedMillimoles(), 1e-9);
        assertEquals(35, unread.worstMillimoles(), 1e-9);
        SmallBook after = SmallBook.reaction()
                .row("workup", "Step", "0", "Operation", "wash", "From", "RM", "Material", "water", "Volume", "20")
                .but("workup", "Gives organic", "O0")
                .but("workup", "Gives aqueous", "A0");
        benzoicOfARun(wash(after, "sat. NaHCO3", "40").but("workup", "From", "O0"));
        assertEquals(5, reaction(after).worstMillimoles(), 1e-9);
        // a limit tells no amount, so that the charge counts
        assertEquals(
                35,
                reaction(book.but("assays", "Result", "<7").but("workup", "Volume", "40"))
                        .expectedMillimoles(),
                1e-9);
    }

    @ParameterizedTest
    @CsvSource({
        // by stoichiometry: three acetic acids and 2-iodobenzoic acid of each periodinane, one acid of each peracid
        "Dess-Martin periodinane, 3, 12, the oxidant sets free",
        "mCPBA, 7, 7, the oxidant sets free",
        "mCPBA, 4, 5, measured in the layer"
    })
    void acidThatTheOxidantSetsFreeCountsWhereItIsMoreThanWasMeasured(
            String oxidant, String millimoles, double acid, String source) {
        SmallBook book = washed("NaHCO3", "20")
                .row("charges", "Material", oxidant, "Role", "reagent", "Actual amount", millimoles)
                .but("charges", "Actual unit", "mmol");
        StepReaction reaction = reaction(book);
        assertEquals(acid, reaction.expectedMillimoles(), 1e-9);
        String words = Wording.POINT.of(reaction.because());
        assertTrue(words.contains(source), words);
        assertTrue(words.contains("full conversion"), words);
    }

    @Test
    void afterWaterOnlyWhatWasMeasuredCounts() {
        SmallBook book = SmallBook.reaction()
                .row("workup", "Step", "0", "Operation", "wash", "From", "RM", "Material", "water", "Volume", "20")
                .but("workup", "Gives organic", "O0")
                .but("workup", "Gives aqueous", "A0")
                .row("charges", "Material", "mCPBA", "Role", "reagent", "Actual amount", "7")
                .but("charges", "Actual unit", "mmol");
        hydrogenChloride(wash(book, "sat. NaHCO3", "20").but("workup", "From", "O0"));
        StepReaction reaction = reaction(book);
        assertEquals(5, reaction.expectedMillimoles(), 1e-9);
        // mineral acid may still be there at worst
        assertEquals(7, reaction.worstMillimoles(), 1e-9);
        String words = Wording.POINT.of(reaction.because());
        assertEquals("acids measured in the layer it gave; acid charged went with the water before", words);
    }

    @Test
    void acetateAfterWaterMeetsNoMineralAcidButAtWorst() {
        SmallBook book = SmallBook.reaction()
                .row("workup", "Step", "0", "Operation", "wash", "From", "RM", "Material", "water", "Volume", "20")
                .but("workup", "Gives organic", "O0")
                .but("workup", "Gives aqueous", "A0");
        hydrogenChloride(wash(book, "1 M sodium acetate", "10").but("workup", "From", "O0"));
        StepReaction reaction = reaction(book);
        assertEquals(0, reaction.toNeutraliseMillimoles(), 0);
        assertEquals(2, reaction.worstToNeutraliseMillimoles(), 1e-9);
        assertTrue(reaction.capacityRatio().isEmpty());
        // before any water it meets all 2 mmol
        StepReaction first = reaction(hydrogenChloride(wash(SmallBook.reaction(), "1 M sodium acetate", "10")));
        assertEquals(2, first.toNeutraliseMillimoles(), 1e-9);
        // and in a plan
        SmallBook plan = planned("1 M sodium acetate", "10").row("charges", "Material", "hydrogen chloride");
        plan.but("charges", "Formula", "HCl")
                .but("charges", "Planned amount", "3")
                .but("charges", "Planned unit", "mmol");
        assertEquals(3, reaction(plan).toNeutraliseMillimoles(), 1e-9);
    }

    @Test
    void whatThePlanRestsOnIsSaid() {
        String words = Wording.POINT.of(reaction(benzoic(planned("sat. NaHCO3", "25"), "benzoic acid", "30", "1"))
                .because());
        assertTrue(words.startsWith("every acid charged"), words);
        assertTrue(Wording.POINT.of(reaction(washed("NaHCO3", "10")).because()).startsWith("acids measured in"));
    }

    @Test
    void hydrogenComesOffWhereWaterFirstComesIn() {
        // toluene brings no water; the quench after it does, in two loads, and the wash after that finds nothing left
        SmallBook book = SmallBook.reaction()
                .row("charges", "Material", "NaH", "Role", "reagent", "Molar mass", "24", "Actual amount", "10")
                .but("charges", "Actual unit", "mmol")
                .row("workup", "Step", "1", "Operation", "dilute", "From", "RM", "Material", "toluene", "Volume", "20")
                .row("workup", "Step", "2", "Operation", "quench", "From", "RM", "Material", "water", "Volume", "20")
                .but("workup", "Loads", "2")
                .row("workup", "Step", "3", "Operation", "wash", "From", "RM", "Material", "water", "Volume", "20")
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "A1");
        StepReaction reaction = reaction(book);
        assertEquals("2", reaction.step().number());
        assertEquals("H2", reaction.gas());
        assertEquals(2, reaction.loads());
        assertEquals(10, reaction.expectedMillimoles(), 1e-9);
        // 10 mmol × 24.0551 L/mol
        assertEquals(0.240551, reaction.expectedLitres(), 1e-5);
        assertEquals(0.240551, reaction.worstLitres(), 1e-5);
        assertTrue(reaction.neededAtWorstMillilitres().isEmpty());
    }

    @Test
    void hydrogenCountsByItsMassAndOtherGasesAreNotReckoned() {
        // 10 mmol × 2.016 g/mol
        SmallBook book = SmallBook.reaction()
                .row("charges", "Material", "NaH", "Role", "reagent", "Molar mass", "24", "Actual amount", "10")
                .but("charges", "Actual unit", "mmol")
                .row("workup", "Step", "1", "Operation", "quench", "From", "RM", "Material", "water", "Volume", "20");
        assertEquals(0.02016, StepReaction.gasGrams(book.tally().evidence().reactions()), 1e-9);
        assertEquals(0, StepReaction.gasGrams(List.of()), 0);
        // hydrogen chloride stays in the water
        assertEquals(
                0,
                StepReaction.gasGrams(
                        plannedWith("POCl3", "water").tally().evidence().reactions()),
                0);
    }

    @Test
    void acidWashNeedsTheVolumeThatTheBasesTake() {
        // 4 mmol over 1.0 mol/L
        SmallBook book = wash(SmallBook.reaction(), "1 M HCl", "10")
                .but("products", "Character", "base")
                .but("products", "pKa", "9.2")
                .but("assays", "Result", "4");
        StepReaction reaction = reaction(book);
        assertEquals(4, reaction.neededMillilitres().orElseThrow(), 1e-9);
        assertEquals(4, reaction.neededAtWorstMillilitres().orElseThrow(), 1e-9);
        assertEquals(10, reaction.washMillimoles(), 1e-9);
        assertEquals(4, reaction.toNeutraliseMillimoles(), 1e-9);
        // a limit tells no amount
        assertTrue(book.but("assays", "Result", "<4")
                .tally()
                .evidence()
                .reactions()
                .isEmpty());
        book.but("assays", "Result", "4");
        // water takes up no base, and an acid is none
        assertTrue(book.but("workup", "Material", "water")
                .tally()
                .evidence()
                .reactions()
                .isEmpty());
        assertTrue(book.but("workup", "Material", "1 M HCl")
                .but("products", "Character", "acid")
                .tally()
                .evidence()
                .reactions()
                .isEmpty());
    }

    /** A plan over 10 mmol of S with a first wash of 1.0 mol/L. */
    private static SmallBook planned(String material, String millilitres) {
        return SmallBook.empty()
                .but("runs", "Status", "planned")
                .row("products", "Product", "P", "Wanted", "yes", "Molar mass", "200")
                .row("charges", "Material", "S", "Role", "substrate", "Molar mass", "100", "Coefficient", "1")
                .but("charges", "Planned amount", "10")
                .but("charges", "Planned unit", "mmol")
                .row("workup", "Step", "1", "Operation", "wash", "From", "RM", "Material", material)
                .but("workup", "Volume", millilitres)
                .but("workup", "Molarity", "1.0")
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "A1");
    }

    private static SmallBook benzoic(SmallBook book, String name, String millimoles, String coefficient) {
        return book.row("charges", "Material", name, "Role", "reagent", "Molar mass", "122.12")
                .but("charges", "Coefficient", coefficient)
                .but("charges", "Planned amount", millimoles)
                .but("charges", "Planned unit", "mmol");
    }

    private static SmallBook base(SmallBook book, String name, String millimoles, String coefficient) {
        return book.row("charges", "Material", name, "Role", "base", "Molar mass", "79.10")
                .but("charges", "Coefficient", coefficient)
                .but("charges", "Planned amount", millimoles)
                .but("charges", "Planned unit", "mmol");
    }

    private static SmallBook benzoicOfARun(SmallBook book) {
        return book.row("charges", "Material", "Benzoic acid", "Role", "reagent", "Molar mass", "122.12")
                .but("charges", "Actual amount", "30")
                .but("charges", "Actual unit", "mmol");
    }

    private static SmallBook hydrogenChloride(SmallBook book) {
        return book.row("charges", "Material", "hydrogen chloride", "Role", "additive", "Formula", "HCl")
                .but("charges", "Actual amount", "2")
                .but("charges", "Actual unit", "mmol");
    }

    private static SmallBook washed(String base, String millilitres) {
        String material = switch (base) {
            case "NaHCO3" -> "sat. NaHCO3";
            case "Na2CO3" -> "10% Na2CO3";
            default -> "1 M NaOH";
        };
        return wash(SmallBook.reaction(), material, millilitres)
                .but("products", "Character", "acid")
                .but("products", "pKa", "4.2");
    }

    private static SmallBook wash(SmallBook book, String material, String millilitres) {
        return book.but("products", "Character", "acid")
                .but("products", "pKa", "4.2")
                .row("workup", "Step", "1", "Operation", "wash", "From", "RM", "Material", material, "Molarity", "1.0")
                .but("workup", "Volume", millilitres)
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "A1")
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Volume", "20", "Net", "21.00", "Status", "kept")
                .row("assays", "Sample", "A1", "Substance", "P", "Method", "HPLC", "Result", "5", "Unit", "mmol");
    }

    private static StepReaction reaction(SmallBook book) {
        List<StepReaction> reactions = book.tally().evidence().reactions();
        assertEquals(1, reactions.size());
        return reactions.get(0);
    }
}
