package workuptally.report.pdf;

import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import workuptally.judgement.period.BookShare;
import workuptally.judgement.period.BookShare.ClassShare;
import workuptally.judgement.period.BookShare.ContainerShare;
import workuptally.judgement.period.BookShare.CorrectionShare;
import workuptally.judgement.period.PeriodLedger;
import workuptally.judgement.period.PeriodReview;
import workuptally.judgement.period.PeriodReview.Standing;
import workuptally.judgement.period.Span;
import workuptally.judgement.totals.RunShare;
import workuptally.model.InputFile;
import workuptally.tally.series.SeriesTally.Material;
import workuptally.tally.series.SeriesTally.Together;

/** Periods for the tests of the report: the demo week, copied under other names and days. */
final class InventedPeriods {
    static final Span WEEK = new Span(LocalDate.of(2026, 3, 2), LocalDate.of(2026, 3, 8));
    private static final int BOOKS_A_WEEK = 6;

    private InventedPeriods() {}

    /** As many books, the first in the week itself, every sixth a week earlier; the fourth week before is left empty. */
    static PeriodReview ofBooks(int count, String prefix) throws IOException {
        PeriodLedger ledger = new PeriodLedger(WEEK);
        BookShare demo = BookShare.of("demo", InventedReviews.demoWeek());
        for (int i = 0; i < count; i++) {
            int weeks = i / BOOKS_A_WEEK;
            ledger.add(copy(demo, prefix + i, i, weeks >= 4 ? weeks + 1 : weeks));
        }
        if (count > 1) {
            ledger.leaveOut(prefix + "torn.xlsx", Standing.NOT_READ, "The file is no workbook: save it as .xlsx.");
            ledger.leaveOut(prefix + "old-review.xlsx", Standing.PASSED_OVER, "a review that this program wrote");
            ledger.add(copy(demo, prefix + "again", 0, 0));
        }
        return ledger.review("0.1.0");
    }

    private static BookShare copy(BookShare demo, String name, int number, int weeksBack) {
        List<RunShare> runs = new ArrayList<>();
        for (RunShare run : demo.runs()) {
            runs.add(new RunShare(
                    run.run() + "-" + number,
                    run.date().map(d -> d.minusWeeks(weeksBack)),
                    run.status(),
                    run.yieldPercents(),
                    run.foundMillimoles(),
                    run.theoryMillimoles(),
                    run.leftOut(),
                    run.solvents(),
                    run.waste(),
                    run.masses()));
        }
        List<ContainerShare> containers = demo.containers().stream()
                .map(c -> new ContainerShare(
                        c.container() + "-" + number % BOOKS_A_WEEK,
                        c.wasteStream(),
                        c.location(),
                        name,
                        c.asOf().map(d -> d.minusWeeks(weeksBack)),
                        new BookShare.Fill(
                                c.fill().capacityLitres(),
                                c.fill().massGrams(),
                                c.fill().litres(),
                                c.fill().percent(),
                                c.fill().limitPercent() - 15),
                        c.addedGrams(),
                        c.proposedGrams(),
                        new BookShare.Open(
                                c.open().since(),
                                c.open().days(),
                                number % 2 == 0 ? c.open().dueOn() : Optional.of(WEEK.from()),
                                c.open().dueNow())))
                .toList();
        return new BookShare(
                name,
                demo.places(),
                demo.files().stream()
                        .limit(1)
                        .map(f -> new InputFile(name, "%064x".formatted(number + 17)))
                        .toList(),
                2,
                runs,
                containers,
                number == 0 ? List.of(ofStudents(name)) : List.of(),
                demo.corrections().stream()
                        .map(c ->
                                new CorrectionShare(name, c.when(), c.record(), c.oldValue(), c.newValue(), c.reason()))
                        .toList(),
                demo.limits(),
                demo.basis());
    }

    private static ClassShare ofStudents(String book) {
        return new ClassShare(
                book,
                "esterification, section B",
                new Together(
                        24,
                        22,
                        java.util.OptionalDouble.of(71.4),
                        java.util.OptionalDouble.of(5.25),
                        List.of("S-07", "S-19"),
                        List.of("S-12"),
                        List.of("S-20: no yield computed"),
                        1234.5,
                        2345.6,
                        List.of(
                                new Material("acetic acid", "g", 144.2, 150.9),
                                new Material("isopentyl alcohol", "mL", 240, 0))));
    }
}
