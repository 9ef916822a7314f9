package workuptally.judgement.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import workuptally.examples.SmallBook;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.report.view.wording.Wording;

/** A base wash into a container for aqueous base: as long as nothing shows that it is the water, that is what is asked. Invented figures. */
class StreamOfAPhaseTest {
    private static SmallBook proposed() {
        return SmallBook.reaction()
                .row("charges", "Material", "ethyl acetate", "Role", "solvent", "Actual amount", "100")
                .but("charges", "Actual unit", "mL")
                .row("workup", "Step", "1", "Operation", "wash", "From", "RM", "Material", "1 M NaOH", "Volume", "50")
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "A1")
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Net", "55", "pH", "13", "Status", "kept")
                .row("containers", "Container", "DR-2", "Waste stream", "aqueous, basic", "Capacity", "10")
                .but("containers", "Contents then", "water 4 kg; sodium hydroxide 0.1 kg")
                .row("transfers", "Transfer", "T1", "Layer", "A1", "Container", "DR-2", "Amount", "55")
                .but("transfers", "Status", "proposed");
    }

    private static List<Finding> unknown(SmallBook book) {
        return book.review().findings().stream()
                .filter(f -> f.code() == FindingCode.PROPOSAL_STREAM_UNKNOWN)
                .toList();
    }

    @Test
    void thePhaseIsAskedForNotTheStream() {
        List<Finding> found = unknown(proposed());
        assertEquals(1, found.size());
        String words = Wording.POINT.of(found.get(0).seen());
        assertTrue(words.contains("'Aqueous, basic' rests on which phase it is"), words);
        assertTrue(Wording.POINT.of(found.get(0).action()).startsWith("Show the phase"), words);
    }

    @Test
    void aDropOfWaterSettlesIt() {
        List<Finding> found = unknown(proposed().but("workup", "Checked by", "water drop"));
        assertEquals(
                List.of(), found.stream().map(f -> Wording.POINT.of(f.seen())).toList());
    }
}
