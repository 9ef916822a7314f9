package workuptally.judgement.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.examples.SmallBook;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.report.view.wording.Wording;

/** Whether the book holds what its Corrections say. */
class CorrectionNotMadeTest {
    /** Layer A1 with a gross of 1216.4 g over a tare of 900.0 g, charged S with 10.00 g. */
    private static SmallBook book() {
        return SmallBook.reaction()
                .row(
                        "workup",
                        "Step",
                        "1",
                        "Operation",
                        "wash",
                        "From",
                        "RM",
                        "Material",
                        "water",
                        "Volume",
                        "300",
                        "Gives organic",
                        "O1",
                        "Gives aqueous",
                        "A1")
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Gross", "1216.4", "Tare", "900.0");
    }

    private static List<Finding> findings(SmallBook book) {
        return book.review().findings().stream()
                .filter(f -> f.code() == FindingCode.CORRECTION_NOT_MADE || f.code() == FindingCode.RECORD_CORRECTED)
                .toList();
    }

    private static SmallBook corrected(SmallBook book, String record, String before, String after) {
        return book.row(
                "corrections",
                "When",
                "2026-03-04",
                "Who",
                "C1",
                "Record",
                record,
                "Old",
                before,
                "New",
                after,
                "Reason",
                "read again");
    }

    @ParameterizedTest
    @CsvSource({
        "X1 layer A1 gross (g), 1216.4, 1126.4, still holds 1216.4",
        "x1 A1, 1216.4 g, 1126.4 g, still holds 1216.4",
        "X1 layer A1 gross, '1216,4', '1126,4', still holds 1216.4",
        "X1 layer A1 gross (g), 1300.0, 1126.4, holds 1216.4",
        "X1 layer A1 volume (mL), '', 310, its cell is blank",
        "X1 amount of S, 10.00, 11.00, still holds 10.00",
        "X1 layer A7 gross, 12, 13, a layer that X1 does not have",
        "X1 step 4 volume, 12, 13, a step that X1 does not have",
        "X1 layer A1 gross, 1216.4, withdrawn, still holds 1216.4"
    })
    void asksWhereTheEntryDoesNotHoldTheNewValue(String record, String before, String after, String said) {
        List<Finding> findings = findings(corrected(book(), record, before == null ? "" : before, after));
        assertEquals(1, findings.size());
        assertEquals(FindingCode.CORRECTION_NOT_MADE, findings.get(0).code());
        String seen = Wording.POINT.of(findings.get(0).seen());
        assertTrue(seen.contains(said), seen);
    }

    @ParameterizedTest
    @CsvSource({
        "X1 layer A1 gross (g), 1261.4, 1216.4",
        "X1 layer A1 gross, '1261,4', '1216,4'",
        "layer A1 gross, 1261.4, 1216.4",
        "X1 amount of S, 11.00 g, 10.00 g",
        "X1 reaction, esterification, S to P",
        "X1 quench-not-shown, '', settled"
    })
    void notesWhatTheBookHolds(String record, String before, String after) {
        List<Finding> findings = findings(corrected(book(), record, before == null ? "" : before, after));
        assertEquals(1, findings.size());
        assertEquals(FindingCode.RECORD_CORRECTED, findings.get(0).code());
    }

    /** In a book of two runs the record must say which. */
    @Test
    void asksForARunThatTheBookHas() {
        SmallBook two = book().row("runs", "Run", "X2", "Date", "2026-03-02", "Status", "isolated");
        List<Finding> findings = findings(corrected(two, "G-9 layer A1 gross", "12", "13"));
        assertTrue(Wording.POINT.of(findings.get(0).seen()).contains("no run of the book"));
        SmallBook can =
                two.row("containers", "Container", "W-1", "Waste stream", "aqueous", "Capacity", "10", "Tare", "500");
        List<Finding> more = findings(corrected(can, "W-1 tare", "490", "500"));
        assertEquals(FindingCode.RECORD_CORRECTED, more.get(1).code());
    }

    @Test
    void oneEntryCorrectedTwiceHoldsTheLastValue() {
        SmallBook book = corrected(
                corrected(book(), "X1 layer A1 gross", "1261.4", "1261.5"), "X1 layer A1 gross", "1261.5", "1216.4");
        assertTrue(findings(book).stream().allMatch(f -> f.code() == FindingCode.RECORD_CORRECTED));
    }
}
