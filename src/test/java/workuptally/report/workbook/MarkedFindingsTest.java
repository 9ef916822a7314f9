package workuptally.report.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import workuptally.examples.DemoReview;
import workuptally.judgement.Review;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.report.view.wording.Wording;

/** Every held layer is marked in its own row. */
class MarkedFindingsTest {
    /** The layers A1 to A4 of R26-044 of the invented week wait together: one finding, four rows. */
    @Test
    void everyLayerOfAFindingIsMarkedInItsRow() throws Exception {
        Review week = DemoReview.review();
        Finding waits = week.findings().stream()
                .filter(f -> f.code() == FindingCode.LAYER_WAITS && f.run().equals("R26-044"))
                .findFirst()
                .orElseThrow();
        assertEquals(List.of("A1", "A2", "A3", "A4"), waits.subject().layers());
        List<Finding> marked = MarkedFindings.of(week).stream()
                .filter(f -> f.code() == FindingCode.LAYER_WAITS && f.run().equals("R26-044"))
                .toList();
        assertEquals(4, marked.stream().map(f -> f.place().row()).distinct().count(), marked::toString);
        assertEquals(
                "Told at " + waits.place().inWords() + ".",
                Wording.POINT.of(marked.get(3).action()));
    }

    @Test
    void findingsThemselvesStayAsTheyAre() throws Exception {
        Review week = DemoReview.review();
        assertEquals(
                week.findings(),
                MarkedFindings.of(week).subList(0, week.findings().size()));
    }
}
