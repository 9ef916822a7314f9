package workuptally.report.json;

import workuptally.tally.suspects.RunSuspects;
import workuptally.tally.suspects.Suspect;

/** The cells of a run or container to look at again. */
final class SuspectsJson {
    private final JsonFields json;

    SuspectsJson(JsonFields json) {
        this.json = json;
    }

    /** What is off and the cells to look at again, of a run or a container. */
    void cells(RunSuspects suspects) {
        json.texts("disagreeing", suspects.off());
        json.array("suspects", suspects.list(), this::suspect);
    }

    private void suspect(Suspect suspect) {
        json.place(suspect.place());
        json.array("together", suspect.together(), json::place);
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
