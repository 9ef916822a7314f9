package workuptally.report.json;

import java.util.List;
import workuptally.tally.balance.Purification;

/** The balances of purifications. */
final class PurificationJson {
    private PurificationJson() {}

    /** Writes them where there are any. */
    static void write(JsonFields json, List<Purification> purifications) {
        if (purifications.isEmpty()) {
            return;
        }
        json.array("purifications", purifications, purification -> {
            json.texts("lots", List.copyOf(purification.sources()));
            json.text("product", purification.product());
            json.number("inGrams", purification.inGrams().value());
            json.number("foundGrams", purification.foundGrams().value());
            json.number("missingAtLeastPercent", purification.missingAtLeastPercent());
            json.texts("portions", purification.portions());
            json.texts("unknown", purification.unknown());
        });
    }
}
