package workuptally.report.json;

import java.util.List;
import workuptally.model.Finding;
import workuptally.model.Place;
import workuptally.report.view.wording.Wording;

/** Findings and places. */
final class FindingJson {
    private FindingJson() {}

    static void array(JsonFields json, List<Finding> findings) {
        json.array("findings", findings, finding -> finding(json, finding));
    }

    private static void finding(JsonFields json, Finding finding) {
        json.text("code", finding.code().word());
        if (!finding.code().catalogue().isEmpty()) {
            json.texts("catalogue", finding.code().catalogue());
        }
        json.text("severity", finding.severity().word());
        json.text("run", finding.run());
        place(json, finding.place());
        json.text("seen", Wording.POINT.of(finding.seen()));
        json.text("expected", Wording.POINT.of(finding.expected()));
        json.text("source", finding.source());
        json.text("action", Wording.POINT.of(finding.action()));
    }

    static void place(JsonFields json, Place place) {
        json.object("place", () -> {
            json.text("file", place.file());
            json.text("sheet", place.sheet());
            json.text("cell", place.cell());
        });
    }
}
