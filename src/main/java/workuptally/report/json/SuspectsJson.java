package workuptally.report.json;

import workuptally.tally.suspects.RunSuspects;
import workuptally.tally.suspects.Suspect;

/** The cells of a run to look at again. */
final class SuspectsJson {
    private final JsonFields json;

    SuspectsJson(JsonFields json) {
        this.json = json;
    }

    void write(RunSuspects suspects) {
        json.texts("disagreeing", suspects.off());
        json.array("suspects", suspects.list(), this::suspect);
    }

    private void suspect(Suspect suspect) {
        FindingJson.place(json, suspect.place());
        json.array("together", suspect.together(), place -> FindingJson.place(json, place));
        json.text("what", suspect.what());
        json.text("typed", suspect.typed());
        json.text("suggested", suspect.suggested());
        json.text("slip", suspect.slip().word());
        json.texts("explains", suspect.explains());
        json.number("chiSquareBefore", suspect.chiSquareBefore());
        json.number("chiSquareAfter", suspect.chiSquareAfter());
        json.count("degreesOfFreedom", suspect.degreesOfFreedom());
    }
}
