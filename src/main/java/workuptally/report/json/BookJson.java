package workuptally.report.json;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import workuptally.judgement.Review;
import workuptally.judgement.SafetyWording;
import workuptally.model.InputFile;
import workuptally.model.Limit;
import workuptally.model.Limits;

/** The head of the document: version, tool, input files, limits in force. */
final class BookJson {
    private BookJson() {}

    static void head(JsonFields json, Review review) {
        json.text("schemaVersion", JsonReport.SCHEMA_VERSION);
        json.object("tool", () -> {
            json.text("name", "Workup Tally");
            json.text("version", review.toolVersion());
        });
        json.texts(
                "notices",
                List.of(SafetyWording.DEFERS, SafetyWording.A_PERSON_DECIDES, SafetyWording.WASTE_DETERMINATION));
        json.object("input", () -> {
            json.text("book", review.book().name());
            json.array("files", review.book().files(), file -> file(json, file));
        });
        Limits limits = review.book().limits();
        List<Limit> known =
                Arrays.stream(Limit.values()).filter(l -> isKnown(limits, l)).toList();
        json.array("limits", known, limit -> limit(json, limits, limit));
    }

    static void file(JsonFields json, InputFile file) {
        json.text("name", file.name());
        json.text("sha256", file.sha256());
    }

    private static boolean isKnown(Limits limits, Limit limit) {
        return limit.isText()
                ? !limits.text(limit).isEmpty()
                : limits.optional(limit).isPresent();
    }

    private static void limit(JsonFields json, Limits limits, Limit limit) {
        json.text("name", limit.title());
        if (limit.isText()) {
            json.text("text", limits.text(limit));
        } else {
            OptionalDouble value = limits.optional(limit);
            json.number("value", value);
            json.text("unit", limit.unit());
        }
        json.text("meaning", limit.meaning());
        json.flag("setByBook", limits.isSetByBook(limit));
        json.text("origin", limits.origin(limit));
        limits.place(limit).ifPresent(place -> FindingJson.place(json, place));
    }
}
