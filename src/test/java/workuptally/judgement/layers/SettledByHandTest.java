package workuptally.judgement.layers;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.model.Correction;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Phrase;
import workuptally.model.Place;
import workuptally.model.RowPlace;
import workuptally.model.Severity;
import workuptally.model.Subject;
import workuptally.model.TablePlace;
import workuptally.report.view.wording.Wording;

/** A row of Corrections settles what it names, and nothing else of the same code. */
class SettledByHandTest {
    private static final RowPlace ROW = new RowPlace(new TablePlace("book", "corrections", false, Map.of()), 4, 4);

    private static Finding lowered(String record, FindingCode code, Subject subject) {
        Correction row = new Correction("2026-03-06", "C1", record, "", "settled", "seen by two", Set.of(code), ROW);
        return new SettledByHand(List.of(row))
                .lowered(new Finding(
                        code,
                        Severity.HOLD,
                        subject,
                        new Place("book", "layers", 2, 0, "line 2"),
                        Phrase.of("seen"),
                        Phrase.of("expected"),
                        "common practice",
                        Phrase.of("Look again.")));
    }

    @ParameterizedTest
    @CsvSource({
        "X-1 layer A2 note-against-figure, A2, NOTE",
        "x-1 a2: note-against-figure, A2, NOTE",
        "X-1 note-against-figure (A2), A2, NOTE",
        "X-1 layer A2 note-against-figure, O0, HOLD",
        "X-1 layer A20 note-against-figure, A2, HOLD",
        "X-1 note-against-figure, A2, HOLD",
        "X-2 layer A2 note-against-figure, A2, HOLD",
        "X-1 A1+A2 note-against-figure, A1 A2, NOTE",
        "X-1 A1 note-against-figure, A1 A2, HOLD"
    })
    void rowNamesTheLayersOfWhatItSettles(String record, String layers, Severity severity) {
        Subject subject = Subject.ofRun("X-1").withLayers(List.of(layers.split(" ")));
        assertEquals(
                severity,
                lowered(record, FindingCode.NOTE_AGAINST_FIGURE, subject).severity());
    }

    @ParameterizedTest
    @CsvSource({
        "3 step 4 emulsion-not-recorded, 4, NOTE",
        "3 step 4 emulsion-not-recorded, 3, HOLD",
        "3 step 3 emulsion-not-recorded, 3, NOTE",
        "3 Schritt 3 emulsion-not-recorded, 3, NOTE",
        "3 emulsion-not-recorded, 3, HOLD",
        "3 steps 3 and 4 emulsion-not-recorded, 4, NOTE"
    })
    void runOfTheSameNumberIsNoStep(String record, String step, Severity severity) {
        Subject subject = Subject.ofRun("3").withStep(step);
        assertEquals(
                severity,
                lowered(record, FindingCode.EMULSION_NOT_RECORDED, subject).severity());
    }

    @ParameterizedTest
    @CsvSource({"X-1 lot C1 isolated-form-open, C1, NOTE", "X-1 lot C1 isolated-form-open, C2, HOLD"})
    void rowNamesTheLot(String record, String lot, Severity severity) {
        assertEquals(
                severity,
                lowered(
                                record,
                                FindingCode.ISOLATED_FORM_OPEN,
                                Subject.ofRun("X-1").withLot(lot))
                        .severity());
    }

    @ParameterizedTest
    @CsvSource({
        "X-1 quench-not-shown, QUENCH_NOT_SHOWN, It keeps no layer any more.",
        "X-1 emulsion-not-recorded, EMULSION_NOT_RECORDED, does not settle it: it does not name step 2.",
        "X-2 emulsion-not-recorded, EMULSION_NOT_RECORDED, Look again."
    })
    void rowThatDoesNotNameThePlaceIsToldSo(String record, FindingCode code, String ends) {
        String action = Wording.POINT.of(
                lowered(record, code, Subject.ofRun("X-1").withStep("2")).action());
        assertEquals(ends, action.substring(Math.max(0, action.length() - ends.length())), action);
    }
}
