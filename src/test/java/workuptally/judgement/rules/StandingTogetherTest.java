package workuptally.judgement.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.examples.SmallBook;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.report.view.lines.ProposalLine;

/** What a container holds already, by its row and the transfers made. Pairs: Prudent Practices in the Laboratory (2011), table of incompatibles. */
class StandingTogetherTest {
    private static List<Finding> found(SmallBook book) {
        return book.review().findings();
    }

    private static SmallBook container(String stream, String contents) {
        return SmallBook.reaction()
                .row("containers", "Container", "W-2", "Waste stream", stream, "Capacity", "10")
                .but("containers", "Contents then", contents);
    }

    private static String codes(SmallBook book, FindingCode... of) {
        return found(book).stream()
                .filter(f -> List.of(of).contains(f.code()))
                .map(f -> f.code().word() + " " + f.severity().name())
                .collect(Collectors.joining("; "));
    }

    @ParameterizedTest
    @CsvSource({
        "halogenated solvents,dichloromethane 900 g; sodium azide 100 g",
        "'aqueous, acidic',water 1700 g; sodium cyanide 100 g",
        "non-halogenated solvents,acetone 2500 g; hydrogen peroxide 500 g"
    })
    void whatMustNeverMeetIsAStopThoughNothingIsProposed(String stream, String contents) {
        assertEquals(
                "container-incompatible STOP", codes(container(stream, contents), FindingCode.CONTAINER_INCOMPATIBLE));
    }

    /** Common practice: such cans stand in every laboratory. */
    @ParameterizedTest
    @CsvSource({
        "halogenated solvents,dichloromethane 3 kg; chloroform 500 g; acetone 700 g; methanol 300 g; triethylamine 100 g",
        "non-halogenated solvents,acetone 1 kg; ethanol 1 kg; tetrahydrofuran 500 g; acetonitrile 500 g; acetic acid 200 g; pyridine 100 g",
        "'aqueous, acidic',water 4.7 kg; hydrogen chloride 200 g; sulfuric acid 50 g; sodium chloride 20 g; ethanol 5 g",
        "'aqueous, basic',water 4.7 kg; sodium hydroxide 200 g; ammonium chloride 10 g; sodium thiosulfate 20 g; acetone 5 g"
    })
    void anOrdinaryCanIsNotTold(String stream, String contents) {
        assertEquals("", codes(container(stream, contents), FindingCode.CONTAINER_INCOMPATIBLE));
    }

    /** Two rows swapped, or the wrong bottle filled (common practice); what is written under its own label is not told. */
    @ParameterizedTest
    @CsvSource({
        "'aqueous, acidic',water 2600 g; sodium hydroxide 400 g,container-content-differs HOLD",
        "'aqueous, basic',water 2600 g; sulfuric acid 400 g,container-content-differs HOLD",
        "non-halogenated solvents,acetone 900 g; dichloromethane 500 g,container-content-differs HOLD",
        "'aqueous, basic',water 900 g; potassium permanganate 50 g,container-content-differs HOLD",
        "'aqueous, basic',water 900 g; copper sulfate 50 g,container-content-differs HOLD",
        "non-halogenated solvents,water 2 kg; sodium hydroxide 50 g,container-content-differs HOLD",
        "'aqueous, acidic',water 2600 g; sodium hydroxide 100 g; hydrogen chloride 300 g,''",
        "'aqueous, basic',water 2600 g; sodium bicarbonate 100 g; ethanol 30 g; sodium chloride 200 g,''",
        "aqueous,water 2600 g; sodium hydroxide 100 g,''",
        "aqueous with heavy metals,water 2600 g; sodium chloride 100 g,''",
        "halogenated solvents,acetone 900 g; ethyl acetate 500 g,''",
        "oxidisers,water 900 g; potassium permanganate 50 g,''"
    })
    void contentsOfAnotherStreamThanTheLabelAreAHold(String stream, String contents, String codes) {
        SmallBook book = container(stream, contents);
        assertEquals(codes, codes(book, FindingCode.CONTAINER_CONTENT_DIFFERS));
        SmallBook added = book.row(
                        "transfers", "Transfer", "T1", "Material", "water", "Container", "W-2", "Amount", "20")
                .but("transfers", "Status", "proposed");
        assertTrue(codes.isEmpty() || ProposalLine.of(added.review()).get(0).group() != ProposalLine.Group.FITS);
    }

    /** A label without organics takes no water with more than a trace of solvent, whatever the stream of that water. */
    @ParameterizedTest
    @CsvSource({
        "'acids, no organics', PROPOSAL_WRONG_STREAM",
        "acides sans solvant, PROPOSAL_WRONG_STREAM",
        "inorganic acids only, PROPOSAL_WRONG_STREAM",
        "nitric acid, PROPOSAL_WRONG_STREAM",
        "sulfuric acid only, PROPOSAL_STREAM_UNKNOWN",
        "acids, ''"
    })
    void waterWithSolventStaysOutOfWhatKeepsOrganicsOut(String label, String code) {
        SmallBook book = container(label, "water 900 g")
                .row("layers", "Layer", "A1", "Phase", "aqueous", "pH", "2", "Net", "50", "Status", "kept")
                .but("layers", "Composition", "water 94 %; ethyl acetate 6 %")
                .row("transfers", "Transfer", "T1", "Layer", "A1", "Container", "W-2", "Amount", "50")
                .but("transfers", "Status", "proposed");
        String found = codes(book, FindingCode.PROPOSAL_WRONG_STREAM, FindingCode.PROPOSAL_STREAM_UNKNOWN);
        assertEquals(code.isEmpty(), found.isEmpty(), found);
        assertTrue(code.isEmpty() || found.startsWith(FindingCode.valueOf(code).toString()), found);
    }

    @Test
    void aLayerOfARunWithAReagentThatNoTableKnowsIsAskedAbout() {
        SmallBook book = container("acids", "water 900 g")
                .row("charges", "Material", "azoture de quelque chose", "Role", "reagent", "Actual amount", "1")
                .but("charges", "Actual unit", "g")
                .row("layers", "Layer", "A1", "Phase", "aqueous", "pH", "2", "Net", "50", "Status", "kept")
                .row("transfers", "Transfer", "T1", "Layer", "A1", "Container", "W-2", "Amount", "50")
                .but("transfers", "Status", "proposed");
        ProposalLine line = ProposalLine.of(book.review()).get(0);
        assertTrue(line.reasons().stream().anyMatch(r -> r.contains("not judged")), line::toString);
    }

    @Test
    void aTransferThatWasMadeCountsAsThere() {
        SmallBook book = container("halogenated solvents", "dichloromethane 900 g")
                .row("transfers", "Transfer", "T1", "Material", "sodium azide", "Container", "W-2", "Amount", "20")
                .but("transfers", "Status", "done");
        assertEquals(
                "container-incompatible STOP; transfer-in-wrong-stream HOLD",
                codes(book, FindingCode.CONTAINER_INCOMPATIBLE, FindingCode.TRANSFER_IN_WRONG_STREAM));
    }

    /** A blank is not zero. */
    @Test
    void aTransferWithoutAnAmountLeavesTheFillOpen() {
        SmallBook book = container("non-halogenated solvents", "acetone 1 kg")
                .row("transfers", "Transfer", "T1", "Material", "ethanol", "Container", "W-2", "Status", "done");
        assertEquals("transfer-amount-unknown HOLD", codes(book, FindingCode.TRANSFER_AMOUNT_UNKNOWN));
        assertTrue(book.review().containers().get(0).tally().isLeast());
    }

    /** Trifluoroacetic acid is an acid first, pKa 0.2 (CRC Handbook): it is asked about wherever it goes. */
    @ParameterizedTest
    @CsvSource({"halogenated solvents", "non-halogenated solvents", "'aqueous, acidic'"})
    void aStrongAcidIsNoSolventWaste(String stream) {
        SmallBook free = container(stream, "")
                .row("transfers", "Transfer", "T1", "Material", "TFA", "Container", "W-2", "Amount", "20")
                .but("transfers", "Status", "proposed");
        assertEquals("proposal-wrong-stream HOLD", codes(free, FindingCode.PROPOSAL_WRONG_STREAM));
        SmallBook distillate = container(stream, "")
                .row("layers", "Layer", "D1", "Phase", "distillate", "Net", "100", "Status", "kept")
                .but("layers", "Composition", "dichloromethane 85 %; TFA 15 %")
                .row("transfers", "Transfer", "T1", "Layer", "D1", "Container", "W-2", "Amount", "20")
                .but("transfers", "Status", "proposed");
        assertEquals("proposal-wrong-stream HOLD", codes(distillate, FindingCode.PROPOSAL_WRONG_STREAM));
    }

    @ParameterizedTest
    @CsvSource({"'aqueous, basc',2 M HCl", "'aqueous, acdic',2 M NaOH", "non-halogenatd,dichloromethane"})
    void aSlipInTheLabelLeavesTheStreamOpen(String stream, String material) {
        SmallBook book = container(stream, "")
                .row("transfers", "Transfer", "T1", "Material", material, "Container", "W-2", "Amount", "20")
                .but("transfers", "Status", "proposed");
        assertTrue(codes(book, FindingCode.PROPOSAL_STREAM_UNKNOWN, FindingCode.PROPOSAL_WRONG_STREAM)
                .startsWith("proposal-"));
    }

    /** Conservation of mass: 100 g cannot be put into two containers. */
    @ParameterizedTest
    @CsvSource({"100,100,transfer-exceeds-layer HOLD", "40,60,''", "40,'',transfer-exceeds-layer HOLD"})
    void aLayerGoesOnce(String first, String second, String codes) {
        SmallBook book = container("non-halogenated solvents", "")
                .row("layers", "Layer", "D1", "Phase", "distillate", "Net", "100", "Status", "kept")
                .but("layers", "Composition", "ethyl acetate 97 %")
                .row("transfers", "Transfer", "T1", "Layer", "D1", "Container", "W-2", "Amount", first)
                .but("transfers", "Status", "done")
                .row("transfers", "Transfer", "T2", "Layer", "D1", "Container", "W-2", "Amount", second)
                .but("transfers", "Status", "proposed");
        assertEquals(codes, codes(book, FindingCode.TRANSFER_EXCEEDS_LAYER));
    }

    /** Water shaken with dichloromethane holds 1.3 to 1.7 % of it (Merck Index): enough for an azide. */
    @Test
    void aLittleSolventInWaterMeetsAnAzide() {
        SmallBook book = container("aqueous, basic", "sodium azide 50 g; water 1 kg")
                .row("charges", "Material", "dichloromethane", "Role", "solvent", "Actual amount", "50")
                .but("charges", "Actual unit", "mL")
                .row("workup", "Step", "1", "Operation", "wash", "From", "RM", "Material", "sat. NaHCO3")
                .but("workup", "Volume", "30")
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "A1")
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Net", "32", "pH", "8.5", "Status", "kept")
                .row("transfers", "Transfer", "T1", "Layer", "A1", "Container", "W-2", "Amount", "32")
                .but("transfers", "Status", "proposed");
        assertEquals("proposal-incompatible STOP", codes(book, FindingCode.PROPOSAL_INCOMPATIBLE));
    }

    /** Concentrated nitric acid and permanganate meet organic solvents with fire or explosion (Prudent Practices, table of incompatibles). */
    @ParameterizedTest
    @CsvSource({
        "'aqueous, acidic',water 1500 g; nitric acid 1500 g,1-butanol 5.5 %; water 94.5 %,proposal-incompatible STOP",
        "oxidisers,water 2500 g; potassium permanganate 500 g,tert-butyl methyl ether 1.3 %; water 98.7 %,proposal-incompatible STOP",
        "'aqueous, acidic',water 2500 g; hydrogen chloride 100 g,ethyl acetate 7 %; water 93 %,''",
        "'aqueous, acidic',water 2500 g; sulfuric acid 100 g,tetrahydrofuran 9 %; water 91 %,''",
        "'aqueous, acidic',water 500 g; sulfuric acid 1500 g,tetrahydrofuran 9 %; water 91 %,proposal-incompatible STOP"
    })
    void solventDissolvedInWaterMeetsAnOxidant(String stream, String contents, String composition, String codes) {
        SmallBook book = container(stream, contents)
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Net", "100", "pH", "2.5", "Status", "kept")
                .but("layers", "Composition", composition)
                .row("transfers", "Transfer", "T1", "Layer", "A1", "Container", "W-2", "Amount", "20")
                .but("transfers", "Status", "proposed");
        assertEquals(codes, codes(book, FindingCode.PROPOSAL_INCOMPATIBLE));
    }

    @ParameterizedTest
    @CsvSource({
        "'aqueous, neutral',proposal-wrong-stream STOP",
        "wässrig neutral,proposal-wrong-stream STOP",
        "'aqueous, acidic - FULL',proposal-stream-unknown CHECK",
        "'aqueous, acidic',''",
        "aqueous,''"
    })
    void theWordsOfALabelCount(String stream, String codes) {
        SmallBook book = container(stream, "")
                .row("transfers", "Transfer", "T1", "Material", "2 M HCl", "Container", "W-2", "Amount", "20")
                .but("transfers", "Status", "proposed");
        assertEquals(codes, codes(book, FindingCode.PROPOSAL_WRONG_STREAM, FindingCode.PROPOSAL_STREAM_UNKNOWN));
    }

    @Test
    void aHalogenatedProductMakesAHalogenatedStream() {
        SmallBook book = container("non-halogenated solvents", "")
                .row("layers", "Layer", "D1", "Phase", "distillate", "Net", "100", "Status", "kept")
                .but("layers", "Composition", "ethyl acetate 60 %; 4-bromoacetophenone 40 %")
                .row("transfers", "Transfer", "T1", "Layer", "D1", "Container", "W-2", "Amount", "20")
                .but("transfers", "Status", "proposed");
        assertEquals("proposal-wrong-stream STOP", codes(book, FindingCode.PROPOSAL_WRONG_STREAM));
    }

    /** A third of ethanol burns, whatever the pH; what is only saturated with a solvent does not (common practice). */
    @ParameterizedTest
    @CsvSource({"ethanol 33 %; water 67 %,3,proposal-wrong-stream HOLD", "ethanol 5 %; water 95 %,3,''"})
    void waterWithAFifthOfSolventIsAskedAbout(String composition, String pH, String codes) {
        SmallBook book = container("aqueous, acidic", "")
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Net", "100", "pH", pH, "Status", "kept")
                .but("layers", "Composition", composition)
                .row("transfers", "Transfer", "T1", "Layer", "A1", "Container", "W-2", "Amount", "20")
                .but("transfers", "Status", "proposed");
        assertEquals(codes, codes(book, FindingCode.PROPOSAL_WRONG_STREAM));
    }

    @Test
    void aContainerAboveItsFillTakesNoMore() {
        SmallBook book = container("aqueous, basic", "water 10.5 kg")
                .row("transfers", "Transfer", "T1", "Material", "water", "Container", "W-2", "Amount", "200")
                .but("transfers", "Status", "proposed");
        assertEquals(
                "container-overfull HOLD; container-overfull STOP",
                List.of(codes(book, FindingCode.CONTAINER_OVERFULL).split("; ")).stream()
                        .sorted()
                        .collect(Collectors.joining("; ")));
    }

    @Test
    void solventToBeUsedAgainThatIsPutIntoADrumIsTold() {
        SmallBook book = container("non-halogenated solvents", "acetone 1 kg")
                .row("layers", "Layer", "D1", "Phase", "distillate", "Net", "895", "Status", "to reuse")
                .but("layers", "Composition", "ethyl acetate 97 %")
                .row("transfers", "Transfer", "T1", "Layer", "D1", "Container", "W-2", "Amount", "200")
                .but("transfers", "Status", "done");
        assertTrue(codes(book, FindingCode.TRANSFER_OF_REUSED).contains("CHECK"));
    }

    /** Camphorsulfonic acid (pKa about 1) is a salt in water of pH 8; in water of unknown pH it may be an acid still. */
    @ParameterizedTest
    @CsvSource({"8.2,false", "'',true"})
    void anOrganicAcidIsASaltInBasicWater(String pH, boolean told) {
        SmallBook book = container("aqueous, neutral", "water 1000 g; sodium bicarbonate 50 g")
                .row("charges", "Material", "camphorsulfonic acid", "Role", "reagent", "Actual amount", "0.58")
                .but("charges", "Actual unit", "g")
                .row("workup", "Step", "1", "Operation", "precipitate", "From", "RM", "Material", "sat. NaHCO3")
                .but("workup", "Volume", "200")
                .but("workup", "Gives other", "S1")
                .row("workup", "Step", "2", "Operation", "filter", "From", "S1", "Gives other", "C1")
                .but("workup", "Gives aqueous", "A1")
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Net", "205", "pH", pH, "Status", "kept")
                .row("transfers", "Transfer", "T1", "Layer", "A1", "Container", "W-2", "Amount", "205")
                .but("transfers", "Status", "proposed");
        assertEquals(
                told,
                found(book).stream()
                        .anyMatch(f -> f.code() == FindingCode.PROPOSAL_INCOMPATIBLE
                                && f.severity() == workuptally.model.Severity.STOP));
    }

    /** A blank pH is evidence that is not there, with dissolved solvent as without. */
    @ParameterizedTest
    @CsvSource({"'',proposal-wrong-stream HOLD", "7,''"})
    void waterWithSolventIsAskedForItsPh(String pH, String codes) {
        SmallBook book = container("aqueous, basic", "water 1000 g; sodium hydroxide 50 g")
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Net", "100", "pH", pH, "Status", "kept")
                .but("layers", "Composition", "ethanol 15 %; water 85 %")
                .row("transfers", "Transfer", "T1", "Layer", "A1", "Container", "W-2", "Amount", "20")
                .but("transfers", "Status", "proposed");
        assertEquals(codes, codes(book, FindingCode.PROPOSAL_WRONG_STREAM));
    }
}
