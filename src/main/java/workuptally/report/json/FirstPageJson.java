package workuptally.report.json;

import workuptally.judgement.Review;
import workuptally.report.view.firstpage.NextMeasurement;
import workuptally.report.view.firstpage.UrgentAction;
import workuptally.report.view.wording.ReadableNumbers;
import workuptally.report.view.wording.Wording;

/** What stands first on page one: what to do, and what to measure, in its words. */
final class FirstPageJson {
    private FirstPageJson() {}

    static void write(JsonFields json, Review review) {
        json.object("firstPage", () -> {
            json.array(
                    "actions",
                    UrgentAction.of(review, new ReadableNumbers(Wording.POINT.mark()), UrgentAction.MOST_LINES),
                    action -> {
                        json.text("severity", action.severity().word());
                        json.text("where", action.where());
                        json.texts("runs", action.runs());
                        json.text("text", action.text());
                        json.number("atStakeGrams", action.gramsAtStake());
                    });
            json.array(
                    "measurements",
                    NextMeasurement.of(review, Wording.POINT).stream()
                            .limit(NextMeasurement.MOST_LINES)
                            .toList(),
                    next -> {
                        json.text("where", next.run());
                        json.text("test", next.test());
                        json.text("settles", next.settles());
                        json.number("releasesGrams", next.grams());
                    });
        });
    }
}
