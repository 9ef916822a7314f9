package workuptally.report.json;

import workuptally.judgement.Review;
import workuptally.judgement.measurements.NextTest;

/** What to measure next, of a run and of the whole book. */
final class NextTestJson {
    private NextTestJson() {}

    static void ofBook(JsonFields json, Review review) {
        json.array("nextMeasurements", review.nextTests(), one -> {
            json.texts("runs", one.runs());
            json.object("measurement", () -> fields(json, one.test()));
        });
    }

    static void fields(JsonFields json, NextTest test) {
        json.text("test", test.kind().word());
        json.texts("samples", test.samples());
        json.texts("substances", test.substances());
        json.array(
                "aliquots", test.aliquotsMillilitres(), millilitres -> json.number("volumeMillilitres", millilitres));
        json.number("dilutionRatio", test.dilution());
        json.number("mustBeBelow", test.mustBeBelow());
        json.text("unit", test.unit());
        json.texts("settles", test.settles());
        json.number("releasesGrams", test.releasesGrams());
        json.number("costClass", test.kind().cost());
    }
}
