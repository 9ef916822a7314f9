package workuptally.report.json;

import workuptally.tally.balance.ReconciledBalance;
import workuptally.tally.suspects.RunSuspects;
import workuptally.tally.suspects.Suspect;

/** The cells of a run or container to look at again. */
final class SuspectsJson {
    private final JsonFields json;

    SuspectsJson(JsonFields json) {
        this.json = json;
    }

    void write(RunSuspects suspects) {
        cells(suspects);
        json.array("reconciled", suspects.reconciled().values(), this::reconciled);
    }

    /** What is off and the cells to look at again, of a run or a container. */
    void cells(RunSuspects suspects) {
        json.texts("disagreeing", suspects.off());
        json.array("suspects", suspects.list(), this::suspect);
    }

    private void reconciled(ReconciledBalance.Value value) {
        json.text("name", value.reading().name());
        json.text("place", value.reading().where());
        json.text("unit", value.reading().unit());
        json.number("measured", value.reading().value());
        json.number("adjusted", value.adjusted());
        json.number("standardUncertainty", value.standardUncertainty());
        json.number("standardisedAdjustment", value.standardisedAdjustment());
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
