package workuptally.report.json;

import workuptally.judgement.BasisRow;
import workuptally.judgement.Review;

/** What the figures rest on: limits, reference values and equations with their sources. */
final class BasisJson {
    private BasisJson() {}

    static void write(JsonFields json, Review review) {
        json.array("basis", review.basis(), row -> row(json, row));
    }

    static void row(JsonFields json, BasisRow row) {
        json.text("kind", EnumWord.of(row.kind()));
        json.text("name", row.name());
        json.text("value", row.value());
        json.text("unit", row.unit());
        json.text("origin", row.origin());
    }
}
