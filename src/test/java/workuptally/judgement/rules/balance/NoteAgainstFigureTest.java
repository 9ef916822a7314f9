package workuptally.judgement.rules.balance;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.examples.SmallBook;
import workuptally.judgement.Review;
import workuptally.model.FindingCode;

/** A note that speaks against its figure is told, where it decides about a layer as a hold. */
class NoteAgainstFigureTest {
    private static SmallBook book() {
        return SmallBook.reaction()
                .row("workup", "Step", "1", "Operation", "wash", "From", "RM", "Material", "water", "Volume", "30")
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "A1")
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Volume", "30", "Net", "30", "Status", "kept")
                .row("isolated", "Lot", "C1", "Product", "P", "Net", "19.9", "Stage", "crude", "Status", "kept")
                .row("assays", "Sample", "A1", "Substance", "P", "Method", "HPLC", "Result", "0.2", "Unit", "mg/mL");
    }

    @ParameterizedTest
    @CsvSource({
        "assays,value as injected,HOLD,true",
        "assays,diluted 1:50,CHECK,false",
        "assays,15 cm column,'',false",
        "layers,half of it spilled,HOLD,true",
        "layers,wet,'',false",
        "layers,crystallised out,HOLD,true",
        "layers,'no crystals, clear','',false",
        "layers,swapped with A2?,HOLD,true",
        "workup,part of the aqueous poured off,CHECK,false",
        "workup,O1 and A1 mixed up?,HOLD,true",
        "runs,A1 poured away by mistake,CHECK,false",
        "runs,A1 and O1 swapped,HOLD,true",
        "assays,'diluted 1:50, as injected',HOLD,true",
        "isolated,still damp,CHECK,false"
    })
    void aNoteAgainstItsFigureIsTold(String table, String note, String severity, boolean holdsTheLayer) {
        Review review = book().but(table, "Notes", note).review();
        assertEquals(
                severity,
                review.findings().stream()
                        .filter(f -> f.code() == FindingCode.NOTE_AGAINST_FIGURE)
                        .map(f -> f.severity().name())
                        .collect(Collectors.joining("; ")));
        assertEquals(
                holdsTheLayer,
                review.runs().get(0).decisions().get(0).conditions().stream()
                        .anyMatch(c -> c.id().equals("R7")
                                && c.state() == workuptally.judgement.layers.LayerDecision.State.NOT_MET));
    }
}
