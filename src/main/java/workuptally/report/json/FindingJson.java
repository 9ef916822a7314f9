package workuptally.report.json;

import java.util.List;
import workuptally.model.Finding;
import workuptally.report.view.Wording;

/** Findings. */
final class FindingJson {
    private FindingJson() {}

    static void array(JsonFields json, List<Finding> findings, SaidOnce saidOnce) {
        json.array("findings", findings, finding -> finding(json, finding, saidOnce));
    }

    private static void finding(JsonFields json, Finding finding, SaidOnce saidOnce) {
        json.text("code", finding.code().word());
        json.text("severity", finding.severity().word());
        json.text("run", finding.run());
        json.place(finding.place());
        json.text("seen", Wording.POINT.of(finding.seen()));
        json.count("advice", saidOnce.number(finding));
    }
}
