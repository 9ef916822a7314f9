package workuptally.judgement.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import workuptally.examples.SmallBook;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Severity;
import workuptally.report.view.wording.Wording;

/** An acid wash proposed for containers whose labels deny something. Invented figures. */
class DeniedStreamTest {
    private static final Set<FindingCode> OF_STREAMS = Set.of(
            FindingCode.PROPOSAL_WRONG_STREAM, FindingCode.PROPOSAL_STREAM_UNKNOWN, FindingCode.PROPOSAL_INCOMPATIBLE);

    private static List<Finding> found(String label) {
        return SmallBook.reaction()
                .row("charges", "Material", "ethyl acetate", "Role", "solvent", "Actual amount", "100")
                .but("charges", "Actual unit", "mL")
                .row("workup", "Step", "1", "Operation", "wash", "From", "RM", "Material", "1 M HCl", "Volume", "50")
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "A1")
                .but("workup", "Checked by", "water drop")
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Net", "52", "pH", "1", "Status", "kept")
                .row("containers", "Container", "W-2", "Waste stream", label, "Capacity", "10")
                .but("containers", "Contents then", "water 4 kg")
                .row("transfers", "Transfer", "T1", "Layer", "A1", "Container", "W-2", "Amount", "52")
                .but("transfers", "Status", "proposed")
                .review()
                .findings()
                .stream()
                .filter(f -> OF_STREAMS.contains(f.code()))
                .toList();
    }

    private static String codes(String label) {
        return found(label).stream().map(f -> f.code().word()).collect(Collectors.joining(" "));
    }

    @ParameterizedTest
    @ValueSource(strings = {"aqueous - NO ACIDS", "aqueous, not acidic", "acid-free aqueous", "wässrig, keine Säuren"})
    void whatTheLabelKeepsOutIsAStop(String label) {
        assertEquals("proposal-wrong-stream", codes(label));
        assertEquals(Severity.STOP, found(label).get(0).severity());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "aqueous, acidic",
                "aqueous, acidic, no cyanide",
                "aqueous acidic, non-halogenated",
                "aqueous, acidic; no azides or oxidisers"
            })
    void whatIsKeptOutIsNotTakenToBeThere(String label) {
        assertEquals("", codes(label));
    }

    @Test
    void aDenialThatIsNotUnderstoodLeavesTheStreamOpen() {
        assertEquals("proposal-stream-unknown", codes("aqueous, acidic, no unobtainium"));
    }

    /** A1 is 1 M HCl over ethyl acetate: no DMF and no nitric acid are in it, ethyl acetate is. */
    @Test
    void aMaterialThatIsKeptOutByItsNameIsLookedFor() {
        assertEquals("", codes("aqueous, acidic, no DMF"));
        assertEquals("", codes("aqueous, acidic (no nitric acid)"));
        assertEquals("proposal-wrong-stream", codes("aqueous, acidic, no EtOAc"));
        assertTrue(Wording.POINT
                .of(found("aqueous, acidic, no EtOAc").get(0).seen())
                .contains("with etoac"));
    }
}
