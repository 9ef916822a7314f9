package workuptally.report.json;

import workuptally.judgement.RunShare;
import workuptally.judgement.period.BookShare.ContainerShare;
import workuptally.judgement.period.PeriodReview;

/** The accounts of a period: totals, runs, containers, the weeks before, and the books. Names no chemist. */
final class BooksJson {
    private BooksJson() {}

    static void write(JsonFields json, PeriodReview review) {
        json.text("schemaVersion", JsonReport.SCHEMA_VERSION);
        json.object("tool", () -> {
            json.text("name", "Workup Tally");
            json.text("version", review.toolVersion());
        });
        json.text("from", review.from().toString());
        json.text("to", review.to().toString());
        json.object("period", () -> PeriodJson.totals(json, review.totals()));
        SolventJson.array(json, review.totals().solvents());
        json.array("waste", review.totals().waste(), total -> PeriodJson.stream(json, total));
        json.array("containers", review.containers(), container -> container(json, container));
        json.array("runs", review.lines(), line -> line(json, line));
        json.array("weeksBefore", review.weeks(), week -> {
            json.text("monday", week.monday().toString());
            json.count("runs", week.runs());
            json.object("totals", () -> PeriodJson.totals(json, week.totals()));
        });
        json.array("books", review.books(), book -> {
            json.text("book", book.book());
            json.text("sha256", book.sha256());
            json.count("runsCounted", book.runsCounted());
            json.text("remark", book.remark());
        });
    }

    private static void container(JsonFields json, ContainerShare container) {
        json.text("container", container.container());
        json.text("wasteStream", container.wasteStream());
        json.text("book", container.book());
        json.text("asOf", container.asOf());
        json.number("massGrams", container.massGrams());
        json.number("volumeLitres", container.litres());
        json.number("fillPercent", container.fillPercent());
        json.number("addedGrams", container.addedGrams());
        json.number("proposedGrams", container.proposedGrams());
        container.daysOpen().ifPresent(days -> json.count("daysOpen", days.intValue()));
    }

    private static void line(JsonFields json, PeriodReview.Line line) {
        RunShare run = line.run();
        json.text("book", line.book());
        json.text("run", run.run());
        json.text("date", run.date());
        json.text("status", EnumWord.of(run.status()));
        json.number("foundMillimoles", run.foundMillimoles());
        json.number("theoryMillimoles", run.theoryMillimoles());
        json.texts("excluded", run.excluded());
        SolventJson.array(json, run.solvents());
        json.array("waste", run.waste(), waste -> {
            json.text("layer", waste.layer());
            json.text("stream", waste.stream());
            json.number("massGrams", waste.massGrams());
            json.flag("kept", waste.kept());
        });
    }
}
