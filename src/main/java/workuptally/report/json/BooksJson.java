package workuptally.report.json;

import java.util.List;
import workuptally.judgement.SafetyWording;
import workuptally.judgement.period.BookShare.ContainerShare;
import workuptally.judgement.period.BookShare.CorrectionShare;
import workuptally.judgement.period.PeriodReview;
import workuptally.judgement.period.PeriodReview.BookLine;
import workuptally.judgement.period.PeriodReview.LimitInForce;
import workuptally.judgement.totals.RunShare;

/** The accounts of a period: totals, runs, containers, the spans before, the books, and what is in force. Names no chemist. */
final class BooksJson {
    private BooksJson() {}

    static void write(JsonFields json, PeriodReview review) {
        json.text("schemaVersion", JsonReport.SCHEMA_VERSION);
        json.object("tool", () -> {
            json.text("name", "Workup Tally");
            json.text("version", review.toolVersion());
        });
        json.texts("notices", List.of(SafetyWording.A_PERSON_DECIDES, SafetyWording.WASTE_DETERMINATION));
        json.text("from", review.span().from().toString());
        json.text("to", review.span().to().toString());
        json.texts("places", review.places());
        json.object("period", () -> PeriodJson.totals(json, review.totals()));
        SolventJson.array(json, review.totals().solvents());
        json.array("waste", review.totals().waste(), total -> PeriodJson.stream(json, total));
        json.array("containers", review.containers(), container -> container(json, container));
        json.array("classes", review.classes(), share -> {
            json.text("book", share.book());
            json.text("series", share.series());
            json.object("class", () -> SeriesJson.together(json, share.together()));
        });
        json.array("runs", review.lines(), line -> line(json, line));
        json.array("runsNotCounted", review.notCounted(), run -> {
            json.text("book", run.book());
            json.text("run", run.run());
            json.text("because", run.because());
        });
        before(json, review);
        json.array("books", review.books(), book -> book(json, book));
        json.array("corrections", review.corrections(), correction -> correction(json, correction));
        json.array("limits", review.limits(), limit -> limit(json, limit));
        json.array("basis", review.basis(), row -> BasisJson.row(json, row));
    }

    private static void before(JsonFields json, PeriodReview review) {
        json.array("weeksBefore", review.before().weeks(), week -> {
            json.text("monday", week.monday().toString());
            json.count("runs", week.runs());
            json.object("totals", () -> PeriodJson.totals(json, week.totals()));
        });
        json.array("earlier", review.before().earlier(), earlier -> {
            json.text("from", earlier.span().from().toString());
            json.text("to", earlier.span().to().toString());
            json.count("runs", earlier.runs());
            if (earlier.runs() > 0) {
                json.object("totals", () -> PeriodJson.totals(json, earlier.totals()));
            }
        });
        review.before()
                .lastFour()
                .ifPresent(before -> json.object("lastFour", () -> {
                    json.count("periodsWithRuns", before.periods());
                    json.number("meanSolventInGrams", before.meanSolventInGrams());
                    json.number("pmi", before.pmi());
                }));
    }

    private static void container(JsonFields json, ContainerShare container) {
        json.text("container", container.container());
        json.text("wasteStream", container.wasteStream());
        json.text("location", container.location());
        json.text("book", container.book());
        json.text("asOf", container.asOf());
        json.number("capacityLitres", container.fill().capacityLitres());
        json.number("massGrams", container.fill().massGrams());
        json.number("volumeLitres", container.fill().litres());
        json.number("fillPercent", container.fill().percent());
        json.number("fillLimitPercent", container.fill().limitPercent());
        json.flag("overfull", container.fill().isAboveLimit());
        json.number("addedGrams", container.addedGrams());
        json.number("proposedGrams", container.proposedGrams());
        json.text("opened", container.open().since());
        container.open().days().ifPresent(days -> json.count("daysOpen", days));
        json.text("dueOn", container.open().dueOn());
        json.flag("overdue", container.overdue());
    }

    private static void line(JsonFields json, PeriodReview.Line line) {
        RunShare run = line.run();
        json.text("book", line.book());
        json.text("run", run.run());
        json.text("date", run.date());
        json.text("status", EnumWord.of(run.status()));
        json.array("yields", run.yieldPercents(), percent -> json.number("yieldPercent", percent));
        json.number("foundMillimoles", run.foundMillimoles());
        json.number("theoryMillimoles", run.theoryMillimoles());
        run.masses().ifPresent(masses -> {
            json.number("inGrams", masses.inGrams());
            json.number("productGrams", masses.productGrams());
            json.number("pmi", masses.pmi());
        });
        json.texts("excluded", run.excluded());
        SolventJson.array(json, run.solvents());
        json.array("waste", run.waste(), waste -> {
            json.text("layer", waste.layer());
            json.text("stream", waste.stream());
            json.number("massGrams", waste.massGrams());
            json.flag("kept", waste.kept());
        });
    }

    private static void book(JsonFields json, BookLine book) {
        json.text("book", book.book());
        json.text("standing", EnumWord.of(book.standing()));
        json.text(
                "sha256",
                String.join(" ", book.files().stream().map(f -> f.sha256()).toList()));
        json.array("files", book.files(), file -> BookJson.file(json, file));
        json.count("runs", book.runs());
        json.count("runsCounted", book.runsCounted());
        json.text("remark", book.remark());
    }

    private static void correction(JsonFields json, CorrectionShare correction) {
        json.text("book", correction.book());
        json.text("when", correction.when());
        json.text("record", correction.record());
        json.text("old", correction.oldValue());
        json.text("new", correction.newValue());
        json.text("reason", correction.reason());
    }

    private static void limit(JsonFields json, LimitInForce inForce) {
        json.text("name", inForce.limit().limit().title());
        json.text("text", inForce.limit().text());
        json.number("value", inForce.limit().value());
        json.text("unit", inForce.limit().limit().unit());
        json.text("origin", inForce.limit().origin());
        json.texts("books", inForce.books());
    }
}
