package workuptally.report.view.labels;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.book.BookReader;
import workuptally.book.files.UnreadableBookException;
import workuptally.examples.SmallBook;
import workuptally.judgement.BasisRow;
import workuptally.judgement.Review;
import workuptally.judgement.ReviewBuilder;
import workuptally.reference.Reference;
import workuptally.report.view.firstpage.UrgentAction;
import workuptally.report.view.lines.ContainerLine;
import workuptally.report.view.lines.ProposalLine;
import workuptally.report.view.wording.ReadableNumbers;

/** Labels of an invented book of mixed acids, of an azide, of a hydride, and what page one and the proposals say of them. */
class LabelsOfPortionsTest {
    private static final String BURNS = "Causes severe skin burns and eye damage.";
    private static Review review;

    @BeforeAll
    static void read(@TempDir Path folder) throws IOException, UnreadableBookException {
        write(folder, "Runs", """
                Run,Date,Chemist,Reaction,Kind,Status
                N1,2026-03-02,C1,nitration of methyl benzoate,reaction,in workup
                Z1,2026-03-03,C1,azide with benzyl bromide,reaction,in workup
                H1,2026-03-04,C1,reduction with a hydride,reaction,in workup
                C1,2026-03-05,C1,cyanide with benzyl chloride,reaction,in workup
                S1,2026-03-05,C1,thiol with sodium sulfide,reaction,in workup
                B1,2026-03-05,C1,amide from benzylamine,reaction,in workup
                A1,2026-03-05,C1,nitric acid beside acetone,reaction,in workup
                E1,2026-03-05,C1,amide with a carbodiimide,reaction,in workup
                """);
        write(folder, "Products", """
                Run,Product,Wanted,Formula,Coefficient,Character
                N1,methyl 3-nitrobenzoate,yes,C8H7NO4,1,neutral
                Z1,benzyl azide,yes,C7H7N3,1,neutral
                H1,4-methoxybenzyl alcohol,yes,C8H10O2,1,neutral
                C1,phenylacetonitrile,yes,C8H7N,1,neutral
                S1,1-octanethiol,yes,C8H18S,1,neutral
                B1,N-benzylacetamide,yes,C9H11NO,1,neutral
                A1,methyl 3-nitrobenzoate,yes,C8H7NO4,1,neutral
                E1,N-benzylbenzamide,yes,C14H13NO,1,neutral
                """);
        write(folder, "Charges", """
                Run,Material,Role,Formula,Molar mass (g/mol),Coefficient,Actual amount,Actual unit,Assay (% w/w),Density (g/mL)
                N1,methyl benzoate,substrate,C8H8O2,136.15,1,6.81,g,99,
                N1,nitric acid 65 %,reagent,,,,4.2,mL,,1.39
                N1,sulfuric acid 96 %,solvent,,,,25,mL,,1.84
                Z1,benzyl bromide,substrate,C7H7Br,171.04,1,4.28,g,98,
                Z1,Natriumazid,reagent,NaN3,65.01,1,2.44,g,99,
                Z1,DMF,solvent,,,,40,mL,,
                H1,methyl 4-methoxybenzoate,substrate,C9H10O3,166.17,1,3.32,g,99,
                H1,Lithiumaluminiumhydrid,reagent,LiAlH4,37.95,0.5,0.76,g,95,
                H1,THF,solvent,,,,60,mL,,
                C1,benzyl chloride,substrate,C7H7Cl,126.58,1,6.33,g,99,
                C1,sodium cyanide,reagent,NaCN,49.01,1,3.00,g,97,
                C1,ethanol,solvent,,,,50,mL,,
                S1,1-bromooctane,substrate,C8H17Br,193.12,1,0.965,g,98,
                S1,sodium sulfide nonahydrate,reagent,Na2S,240.18,1,1.40,g,98,
                S1,ethanol,solvent,,,,60,mL,,
                B1,acetic anhydride,substrate,C4H6O3,102.09,1,5.1,g,99,
                B1,benzylamine,reagent,C7H9N,107.15,2,10.7,g,99,
                B1,MTBE,solvent,,,,80,mL,,
                A1,methyl benzoate,substrate,C8H8O2,136.15,1,6.81,g,99,
                A1,nitric acid 65 %,reagent,,,,4.2,mL,,1.39
                A1,acetone,reagent,,,,5,mL,,
                E1,benzoic acid,substrate,C7H6O2,122.12,1,2.44,g,99,
                E1,EDC hydrochloride,reagent,C8H18ClN3,191.70,1,4.60,g,98,
                E1,ethyl acetate,solvent,,,,80,mL,,
                """);
        write(folder, "Workup", """
                Run,Step,Operation,From,Material,Portions,Volume (mL),Funnel (mL),Loads,pH after,Lower layer,Checked by,Emulsion,Gives organic,Gives aqueous,Gives other
                N1,1,quench,RM,ice water,1,200,,,,,,,,,RM
                N1,2,extract,RM,ethyl acetate,2,60,500,1,,aqueous,density,none,O1,A1,
                Z1,1,dilute,RM,water,1,120,,,,,,,,,RM
                Z1,2,extract,RM,dichloromethane,3,30,500,1,,organic,density,none,O1,A1,
                Z1,3,wash,O1,1 M HCl,1,40,250,1,1,organic,density,none,O2,A2,
                H1,1,quench,RM,water,1,80,,,,,,,,,RM
                H1,2,extract,RM,MTBE,3,50,500,1,12,aqueous,density,none,O1,A1,
                C1,1,dilute,RM,water,1,100,,,,,,,RM,,
                C1,2,extract,RM,toluene,1,60,500,1,11,aqueous,density,none,O1,A1,
                C1,3,dry,O1,magnesium sulfate,1,,,,,,,,,,O2
                C1,4,filter,O2,,1,,,,,,,,O3,,K1
                S1,1,acidify,RM,2 M HCl,1,60,,,2,,,,RM,,
                S1,2,extract,RM,heptane,1,60,500,1,2,aqueous,density,none,O1,A1,
                B1,1,wash,RM,water,1,50,250,1,,aqueous,density,none,O1,A1,
                B1,2,wash,O1,10% CuSO4,1,50,250,1,,aqueous,density,none,O2,A2,
                B1,3,wash,O2,brine,1,50,250,1,,aqueous,density,none,O3,A3,
                A1,1,quench,RM,ice water,1,100,,,,,,,,,RM
                A1,2,extract,RM,MTBE,2,60,500,1,,aqueous,density,none,O1,A1,
                E1,1,wash,RM,water,1,40,250,1,,aqueous,density,none,O1,A1,
                E1,2,wash,O1,water,1,40,250,1,,aqueous,density,none,O2,A2,
                E1,3,wash,O2,brine,1,40,250,1,,aqueous,density,none,O3,A3,
                """);
        write(folder, "Layers", """
                Run,Layer,Phase,Vessel,Volume (mL),Net (g),pH,Status,Made on
                N1,A1,aqueous,E-01,245,290,<1,kept,2026-03-02
                Z1,A1,aqueous,E-02,165,168.5,,kept,2026-03-03
                Z1,A2,aqueous,E-03,41,41.6,1,kept,2026-03-03
                Z1,O2,organic,E-04,88,116,,kept,2026-03-03
                H1,A1,aqueous,E-05,85,101,12,kept,2026-03-04
                C1,A1,aqueous,E-06,150,152,11,kept,2026-03-05
                C1,K1,solid,E-07,,9.1,,kept,2026-03-05
                S1,A1,aqueous,E-08,120,124,2,kept,2026-03-05
                B1,O3,organic,E-09,80,65,,kept,2026-03-05
                B1,A2,aqueous,E-10,51,55,,kept,2026-03-05
                B1,A3,aqueous,E-11,50,58,7.0,kept,2026-03-05
                A1,A1,aqueous,E-12,101,120,,kept,2026-03-05
                E1,A1,aqueous,E-13,45,47,,kept,2026-03-05
                E1,A2,aqueous,E-14,40,41,,kept,2026-03-05
                E1,A3,aqueous,e-14,40,48,,kept,2026-03-05
                """);
        write(folder, "Containers", """
                Container,Waste stream,Capacity (L),Tare (g),Weighed on,Gross then (g),Contents then,Opened,Location,Contact
                AQ-1,"aqueous, acidic",10,400,2026-03-01,4900,water 4500 g,2026-02-01,hood 3,C2
                AQ-2,"aqueous, neutral",1,200,2026-03-01,1000,water 800 g,2026-02-01,hood 3,C2
                """);
        write(folder, "Transfers", """
                Transfer,Run,Layer,Material,Container,Amount (g),Status,By,Date
                T1,,,unobtainium lye,AQ-1,500,proposed,C1,2026-03-05
                T2,N1,A1,,AQ-X,290,proposed,C1,2026-03-05
                T3,,,Bleiche 12 %,AQ-1,100,proposed,C1,2026-03-05
                T4,,,water,AQ-2,180,proposed,C1,2026-03-05
                T5,,,water,AQ-2,20,proposed,C1,2026-03-05
                """);
        review = new ReviewBuilder(Reference.load(), "test").review(new BookReader().read(folder));
    }

    private static void write(Path folder, String table, String text) throws IOException {
        Files.writeString(folder.resolve(table + ".csv"), text);
    }

    private static LabelText label(String name) {
        return LabelText.ofLayers(review, new ReadableNumbers('.')).stream()
                .filter(l -> l.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static ProposalLine proposal(String id) {
        return ProposalLine.of(review).stream()
                .filter(l -> l.transfer().equals(id))
                .findFirst()
                .orElseThrow();
    }

    /** Sulfuric acid burns from 15 % on, nitric acid from 5 %: Regulation (EC) 1272/2008, Annex VI; parts add up, Annex I, 3.2.3.3.2. */
    @Test
    void acidsThatTogetherBurnAreCalledSo() {
        String hazards = label("N1  A1").hazards();
        assertTrue(hazards.contains(BURNS), hazards);
        assertTrue(hazards.contains("Together they reach the limit for burns: sulfuric acid"), hazards);
    }

    /** pH 2 or less, 11.5 or more: Regulation (EC) 1272/2008, Annex I, 3.2.3.1.2 and 3.3.3.1.2, from memory. */
    @Test
    void anExtremePhIsCorrosive() {
        for (String name : List.of("N1  A1", "Z1  A2", "H1  A1")) {
            assertTrue(label(name).hazards().contains(BURNS), name);
            assertTrue(label(name).hazards().contains("Corrosive by its pH"), name);
        }
        assertFalse(label("Z1  A1").hazards().contains("Corrosive by its pH"));
    }

    /** Sodium azide, Annex VI: H300, EUH032; its acid and diazidomethane: rows of the table of pairs, which name their sources. */
    @Test
    void azideIsOnTheLabelWithWhatItHasMet() {
        LabelText first = label("Z1  A1");
        assertTrue(first.hazards().contains("Contact with acids liberates very toxic gas."), first.hazards());
        assertTrue(first.hazards().contains("Fatal if swallowed."), first.hazards());
        assertTrue(
                label("Z1  O2").hazards().contains("diazidomethane"),
                label("Z1  O2").hazards());
        LabelText acid = label("Z1  A2");
        assertTrue(acid.hazards().contains("hydrazoic acid"), acid.hazards());
        assertTrue(acid.contents().contains("Natriumazid"), acid.contents());
    }

    /** A column of phases where nothing is parted takes no cyanide out of the mixture. Statements: Annex VI, salts of hydrogen cyanide. */
    @Test
    void dilutingInTheFlaskPartsNothing() {
        String hazards = label("C1  A1").hazards();
        assertTrue(hazards.contains("Fatal if swallowed, in contact with skin or if inhaled."), hazards);
    }

    /** Of what is dissolved little comes to a cake: benzyl chloride is harmful if swallowed from 25 % on (Annex VI; Annex I, 3.1.3.6). */
    @Test
    void aCakeHoldsItsAgentAndSolutionOnly() {
        LabelText cake = label("C1  K1");
        assertTrue(cake.hazards().contains("By what a cake can hold"), cake.hazards());
        assertTrue(cake.hazards().contains("Highly flammable liquid and vapour."), cake.hazards());
        assertFalse(cake.hazards().contains("Harmful if swallowed"), cake.hazards());
    }

    @Test
    void whatACakeIsTakenToHoldIsAnAssumptionOfTheTrade() {
        BasisRow row = review.basis().stream()
                .filter(r -> r.name().equals("Dissolved matter on a drying cake"))
                .findFirst()
                .orElseThrow();
        assertTrue(row.origin().startsWith("common practice"), row.origin());
    }

    /** An organomagnesium reagent leaves its halide in the first water that meets it, not in the brine behind it. */
    /** Contents on the labels of layers of a Grignard run, whose second step takes what the quench gave. */
    private static List<String> ofGrignard(String firstWater, String operation, String from, String secondWater) {
        SmallBook book = SmallBook.reaction()
                .row("charges", "Material", "phenylmagnesium bromide in THF", "Role", "reagent", "Molarity", "1")
                .but("charges", "Actual amount", "105")
                .but("charges", "Actual unit", "mL")
                .row("workup", "Step", "1", "Operation", "quench", "From", "RM", "Material", "sat. NH4Cl")
                .but("workup", "Volume", "60")
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", firstWater)
                .row("workup", "Step", "2", "Operation", operation, "From", from, "Volume", "30")
                .but("workup", "Material", operation.equals("wash") ? "brine" : "MTBE")
                .but("workup", "Gives organic", "O2")
                .but("workup", "Gives aqueous", secondWater)
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Volume", "62", "Net", "66.50", "Status", "kept");
        if (secondWater.equals("A2")) {
            book.row("layers", "Layer", "A2", "Phase", "aqueous", "Volume", "31", "Net", "37.00", "Status", "kept");
        }
        return LabelText.ofLayers(book.review(), new ReadableNumbers('.')).stream()
                .map(LabelText::contents)
                .toList();
    }

    @Test
    void firstWaterOfAGrignardMayHoldMagnesiumSalts() {
        List<String> contents = ofGrignard("A1", "wash", "O1", "A2");
        assertTrue(contents.get(0).contains("magnesium salts"), contents::toString);
        assertFalse(contents.get(1).contains("magnesium salts"), contents::toString);
    }

    /** What is left of the first water after a further extraction holds what it held. */
    @Test
    void waterExtractedAgainKeepsItsSalts() {
        List<String> contents = ofGrignard("Q1", "extract", "Q1", "A1");
        assertTrue(contents.get(0).contains("magnesium salts"), contents::toString);
    }

    /** First pKa of hydrogen sulfide 7.0: at pH 2 no sulfide is left beside the acid. */
    @Test
    void sulfideIsNoPartOfAnAcidLayer() {
        LabelText acid = label("S1  A1");
        assertFalse(acid.contents().contains("nonahydrate 1"), acid.contents());
        assertTrue(acid.hazards().contains("hydrogen sulfide"), acid.hazards());
    }

    /** Benzylamine burns (its row, H314), from 5 % on in a mixture (Annex I, table 3.2.3): 7 % of the layer are not named. */
    @Test
    void whatIsNotNamedMayBeWhatWasCharged() {
        String hazards = label("B1  O3").hazards();
        assertTrue(hazards.contains(BURNS), hazards);
        assertTrue(hazards.contains("What is not named may be benzylamine."), hazards);
    }

    /** A tenth of copper sulfate (its row, H410): ten times its share is more than a quarter (Annex I, table 4.1.2). */
    @Test
    void aDilutedHeavyMetalIsToldByItsMixture() {
        LabelText copper = label("B1  A2");
        assertTrue(copper.hazards().contains("Toxic to aquatic life with long lasting effects."), copper.hazards());
        assertFalse(copper.contents().contains("may hold N-benzylacetamide, "), copper.contents());
        assertTrue(
                label("B1  A3").contents().endsWith("may hold N-benzylacetamide, copper(II) sulfate"),
                label("B1  A3").contents());
    }

    @Test
    void aLineWithoutStatementsSaysThatNoneReachesItsLimit() {
        assertTrue(
                label("B1  A3").hazards().startsWith("No hazard statement of the tables reaches its limit here")
                        || label("B1  A3").hazards().startsWith("May give off flammable vapour"),
                label("B1  A3").hazards());
        assertTrue(
                LabelHazards.line(List.of(), List.of("salt X"), new ReadableNumbers('.'))
                        .startsWith(
                                "No hazard statement of the tables reaches its limit here; that is no sign of safety. Not judged: salt X."));
    }

    /** Nitric acid and acetone: Prudent Practices in the Laboratory, table of incompatible chemicals (from memory). */
    @Test
    void whatWasChargedTogetherAndMustNotMeetIsSaidOfEachLayerThatHoldsIt() {
        String hazards = label("A1  A1").hazards();
        assertTrue(hazards.contains("Here nitric acid 65 % met acetone"), hazards);
    }

    @Test
    void whatWaterDestroyedIsNotNamedAsIfItWereThere() {
        String contents = label("H1  A1").contents();
        assertTrue(contents.contains("what water left of Lithiumaluminiumhydrid"), contents);
    }

    @Test
    void pageOneSaysWhichSubstancesMetBeforeWhatHurtsNobody() {
        List<UrgentAction> actions = UrgentAction.of(review, new ReadableNumbers('.'), 9);
        UrgentAction met =
                actions.stream().filter(a -> a.where().equals("Z1")).findFirst().orElseThrow();
        assertTrue(met.text().contains("Natriumazid + dichloromethane (explodes), + 1 M HCl (toxic)"), met.text());
        assertTrue(met.text().length() <= UrgentAction.MOST_CHARACTERS, met.text());
        assertTrue(
                actions.stream()
                        .filter(a -> !List.of("transfers", "S1").contains(a.where()))
                        .findFirst()
                        .orElseThrow()
                        .equals(met),
                actions.toString());
    }

    @Test
    void anUnknownMaterialOfATransferIsSaidAndBleachMeetsAcid() {
        assertTrue(
                proposal("T1").reasons().contains("no table knows it: its reactivity is not judged"),
                proposal("T1").reasons().toString());
        assertTrue(
                proposal("T3").group() == ProposalLine.Group.DO_NOT,
                proposal("T3").toString());
    }

    @Test
    void anUnknownContainerStopsTheTransferAndNotTheRun() {
        assertTrue(proposal("T2").group() == ProposalLine.Group.DO_NOT);
        assertTrue(review.runs().get(0).findings().stream()
                .noneMatch(f -> f.code().word().equals("container-unknown")));
    }

    @Test
    void aDayOfOpeningThatIsStatedIsShown() {
        assertTrue(ContainerLine.of(review, new ReadableNumbers('.'))
                .get(0)
                .dayWords()
                .equals("opened 2026-02-01; as-of date not stated"));
    }

    /** The bracket names what each statement comes from: a drying agent without one is left out, what is dissolved on the cake is not. */
    @Test
    void cakeNamesTheMaterialsOfItsStatements() {
        String hazards = label("C1  K1").hazards();
        assertTrue(hazards.contains("toluene"), hazards);
        assertFalse(hazards.contains("agnesium sulfate"), hazards);
    }

    /** Hydrochlorides go with the first water, and only there (common practice). */
    @Test
    void firstWaterNamesTheSaltsThatWereCharged() {
        assertTrue(
                label("E1  A1").contents().contains("EDC hydrochloride"),
                label("E1  A1").contents());
        assertTrue(
                label("E1  A1").hazards().contains("allergic"), label("E1  A1").hazards());
        assertFalse(label("E1  A2").contents().contains("EDC"), label("E1  A2").contents());
    }

    /** Two layers in one vessel: which of them it is stands open for both. */
    @Test
    void bothLayersOfOneVesselAreInQuestion() {
        assertTrue(
                label("E1  A2").contents().contains("IN QUESTION"),
                label("E1  A2").contents());
        assertTrue(
                label("E1  A3").contents().contains("IN QUESTION"),
                label("E1  A3").contents());
    }

    /** 820 of 1000 mL are below nine tenths: only behind the 180 mL of the earlier proposal it is too much. */
    @Test
    void proposalTooMuchBehindAnotherNamesIt() {
        assertTrue(
                proposal("T5").reasons().contains("above the largest fill if T4 is made first"),
                proposal("T5").reasons().toString());
    }

    /** Bleach is bleach under any of its names: Annex VI of Regulation (EC) 1272/2008, index 017-011-00-1, has H314 and EUH031. */
    @ParameterizedTest
    @CsvSource({"sodium hypochlorite solution 12 %", "bleach"})
    void bleachBearsItsStatementsUnderAnyName(String name) {
        Review bleach = SmallBook.reaction()
                .row("charges", "Material", name, "Role", "reagent", "Formula", "NaClO", "Molar mass", "74.44")
                .but("charges", "Actual amount", "40.0")
                .but("charges", "Actual unit", "mL")
                .but("charges", "Assay (% w/w)", "12")
                .but("charges", "Density (g/mL)", "1.20")
                .row("workup", "Step", "1", "Operation", "extract", "From", "RM", "Material", "ethyl acetate")
                .but("workup", "Volume (mL)", "30")
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "A1")
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Volume", "40.2", "Net", "47.1", "Status", "kept")
                .but("layers", "pH", "9.5")
                .review();
        LabelText text = LabelText.ofLayers(bleach, new ReadableNumbers('.')).get(0);
        String label = text.contents() + " " + text.hazards();
        assertTrue(label.contains(BURNS), label);
        assertTrue(label.contains("Contact with acids liberates toxic gas."), label);
        assertTrue(label.contains("about water 8"), label);
    }
}
