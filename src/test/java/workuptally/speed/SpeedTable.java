package workuptally.speed;

import com.lowagie.text.pdf.PdfReader;
import java.io.ByteArrayOutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import workuptally.book.BookReader;
import workuptally.book.files.ReadingOptions;
import workuptally.judgement.Review;
import workuptally.judgement.ReviewBuilder;
import workuptally.reference.Reference;
import workuptally.report.pdf.PdfReport;
import workuptally.report.pdf.layout.PdfOptions;
import workuptally.speed.FreshProcess.Cost;

/**
 * Times the program against the spreadsheet library alone and against LibreOffice on the same books, and over many books against few: fresh
 * processes, one of each kind after the other, medians. Prints a table of ratios, which travel between machines, with goals and verdicts.
 * From 1000 runs on, what the review is compared with is stopped as soon as the verdict is known with a margin. Needs GNU time, LibreOffice
 * and the launcher of a finished build.
 *
 * <pre>mvn -Pspeed verify -DskipTests [-Dspeed.parts=review,check,office,period,pdf] [-Dspeed.sizes=20,1000,10000] [-Dspeed.repeats=5]
 * [-Dspeed.books=1000]</pre>
 */
public final class SpeedTable {
    private static final int SMALL = 20;
    private static final int MIDDLE = 1_000;
    private static final int LARGE = 10_000;
    private static final int PDF_RUNS = 100;
    private static final int PDF_ROUNDS = 8;
    private static final int BOOKS_TIMES = 10;
    private static final double MEGABYTES_OF_A_THOUSAND = 20;
    private static final String PERIOD_HEAP = "-Xmx96m";

    private final Path folder;
    private final Path launcher;
    private final Path demoWeek;
    private final Set<String> parts;
    private final int repeats;
    private final Map<Integer, FreshProcess> reviews = new LinkedHashMap<>();

    private SpeedTable(Path build, Path demoWeek, Set<String> parts, int repeats) {
        this.folder = build.resolve("speed");
        this.launcher = build.resolve("workup-tally");
        this.demoWeek = demoWeek;
        this.parts = parts;
        this.repeats = repeats;
    }

    /** Arguments: build folder with the launcher, folder of the demo week's CSV files, parts and sizes with commas, repeats, books. */
    public static void main(String[] args) throws Exception {
        Set<String> parts = Arrays.stream(args[2].split(",")).collect(Collectors.toSet());
        SpeedTable table =
                new SpeedTable(Path.of(args[0]).toAbsolutePath(), Path.of(args[1]), parts, Integer.parseInt(args[4]));
        Files.createDirectories(table.folder);
        System.out.println("| work | seconds | processor s | peak MB | ratio | goal | verdict |");
        System.out.println("|---|---|---|---|---|---|---|");
        if (table.has("office")) {
            table.warmOffice();
        }
        if (table.has("review") || table.has("check") || table.has("office")) {
            for (String size : args[3].split(",")) {
                table.time(Integer.parseInt(size));
            }
            table.growth();
        }
        if (table.has("period") && Integer.parseInt(args[5]) > 0) {
            table.period(Integer.parseInt(args[5]));
        }
        if (table.has("pdf")) {
            table.pdf();
        }
    }

    private boolean has(String part) {
        return parts.contains(part);
    }

    private void time(int runs) throws Exception {
        Path book = book(runs);
        Path reviewed = folder.resolve("week-" + runs + "-review.xlsx");
        Path annotations = folder.resolve("week-" + runs + ".annotations");
        FreshProcess review = review(book, runs);
        Optional<Goal> reviewGoal = Optional.of(reviewGoal(runs));
        FreshProcess annotate = FreshProcess.ofTests(
                "library alone: load, annotate, save " + runs,
                PlainPoi.class,
                book.toString(),
                annotations.toString(),
                folder.resolve("plain.xlsx").toString());
        FreshProcess check =
                new FreshProcess("check of " + runs + " runs", Map.of(), launcher.toString(), "check", book.toString());
        FreshProcess load = FreshProcess.ofTests("library alone: load " + runs, PlainPoi.class, book.toString());
        FreshProcess print = office(reviewed, runs);
        Goal printGoal = Goal.time(runs >= MIDDLE ? 1 / 8.0 : 1 / 2.5);
        boolean checks = has("check") && runs < LARGE;
        boolean prints = has("office") && runs < LARGE;
        for (int i = 0; i < repeats(runs); i++) {
            if (has("review") || prints) {
                review.run(folder);
            }
            if (has("review")) {
                if (i == 0) {
                    FreshProcess.ofTests(
                                    "comparison of the result with the book",
                                    Annotations.class,
                                    book.toString(),
                                    reviewed.toString(),
                                    annotations.toString())
                            .run(folder);
                }
                against(annotate, review, reviewGoal(runs), runs);
            }
            if (checks) {
                check.run(folder, Double.MAX_VALUE, 1);
                load.run(folder);
            }
            if (prints && (runs < MIDDLE || i == 0)) {
                against(print, review, printGoal, runs);
            }
        }
        if (has("review")) {
            reviews.put(runs, review);
            print(annotate);
            print(review, annotate, reviewGoal);
            printSize(runs);
        }
        if (checks) {
            print(load);
            print(check, load, runs < MIDDLE ? Optional.of(Goal.time(0.45)) : Optional.empty());
        }
        if (prints) {
            print(print);
            print(review.named("the same review against the spreadsheet engine"), print, Optional.of(printGoal));
        }
    }

    private void printSize(int runs) throws Exception {
        double megabytes = Files.size(folder.resolve("week-" + runs + "-review.json")) / 1e6;
        double most = MEGABYTES_OF_A_THOUSAND * runs / 1000;
        boolean met = runs < MIDDLE || megabytes <= most;
        printRatio(
                "JSON of " + runs + " runs",
                "%.1f MB",
                megabytes,
                runs < MIDDLE ? "" : String.format(Locale.ROOT, "%.0f MB", most),
                met);
    }

    private int repeats(int runs) {
        return runs >= LARGE ? 1 : runs >= MIDDLE ? (repeats + 1) / 2 : repeats;
    }

    private static Goal reviewGoal(int runs) {
        return runs >= LARGE ? Goal.time(0.3) : runs >= MIDDLE ? Goal.time(0.3, 0.25) : Goal.time(0.6);
    }

    private void against(FreshProcess other, FreshProcess review, Goal goal, int runs) throws Exception {
        other.run(folder, runs >= MIDDLE ? goal.patience(review.median()) : Double.MAX_VALUE, 0);
    }

    private FreshProcess review(Path book, int runs) {
        String heap = runs >= LARGE ? "-Xmx512m" : "";
        return new FreshProcess(
                "review of " + runs + " runs" + (heap.isEmpty() ? "" : ", " + heap),
                Map.of("WORKUP_TALLY_JAVA_OPTS", heap),
                launcher.toString(),
                "review",
                book.toString(),
                "--reports",
                "workbook,json",
                "--quiet",
                "--out",
                folder.toString());
    }

    /** A general spreadsheet engine that computes every formula of a workbook anew and prints it to PDF. */
    private FreshProcess office(Path workbook, int runs) {
        return new FreshProcess(
                "LibreOffice: recalculate and print the result of " + runs,
                Map.of(),
                "soffice",
                "-env:UserInstallation=" + profile().toUri(),
                "--headless",
                "--convert-to",
                "pdf",
                "--outdir",
                folder.resolve("printed").toString(),
                workbook.toString());
    }

    private Path profile() {
        return folder.resolve("office-profile");
    }

    /** Lets the engine set up a profile, which is not timed, in which it recalculates on loading. */
    private void warmOffice() throws Exception {
        Path settings = profile().resolve("user").resolve("registrymodifications.xcu");
        Files.createDirectories(settings.getParent());
        Files.writeString(settings, """
                <?xml version="1.0" encoding="UTF-8"?>
                <oor:items xmlns:oor="http://openoffice.org/2001/registry">
                <item oor:path="/org.openoffice.Office.Calc/Formula/Load">
                <prop oor:name="OOXMLRecalcMode" oor:op="fuse"><value>0</value></prop></item>
                </oor:items>
                """);
        office(book(1), 1).run(folder);
    }

    /** Made in a process of its own, since a large one takes gigabytes. */
    private Path book(int runs) throws Exception {
        Path book = folder.resolve("week-" + runs + ".xlsx");
        FreshProcess.ofTests(
                        "making the book",
                        ReplicatedWeek.class,
                        demoWeek.toString(),
                        Integer.toString(runs),
                        book.toString())
                .run(folder);
        return book;
    }

    private static void print(FreshProcess process) {
        print(process, Optional.empty(), Optional.empty());
    }

    private static void print(FreshProcess process, FreshProcess against, Optional<Goal> goal) {
        print(process, Optional.of(against.median()), goal);
    }

    private static void print(FreshProcess process, Optional<Cost> against, Optional<Goal> goal) {
        Cost cost = process.median();
        String stopped = cost.stopped() ? String.format(Locale.ROOT, ", stopped after %.0f s", cost.seconds()) : "";
        String verdict =
                against.flatMap(other -> goal.map(g -> g.verdict(cost, other))).orElse("");
        System.out.printf(
                Locale.ROOT,
                "| %s | %.2f | %.2f | %.0f | %s | %s | %s |%n",
                process.name() + stopped,
                cost.seconds(),
                cost.processorSeconds(),
                cost.peakMegabytes(),
                against.map(other -> ratio(cost, other)).orElse(""),
                Goal.text(goal),
                verdict);
    }

    private static String ratio(Cost cost, Cost other) {
        return (other.stopped() ? "at most: " : "")
                + String.format(
                        Locale.ROOT,
                        "time %.2f, processor %.2f, memory %.2f",
                        cost.seconds() / other.seconds(),
                        cost.processorSeconds() / other.processorSeconds(),
                        cost.peakMegabytes() / other.peakMegabytes());
    }

    private void growth() {
        if (reviews.containsKey(MIDDLE) && reviews.containsKey(LARGE)) {
            double ratio = reviews.get(LARGE).median().seconds()
                    / reviews.get(MIDDLE).median().seconds();
            printRatio(
                    "review of " + LARGE + " against " + MIDDLE + " runs", "time %.1f", ratio, "time 11", ratio <= 11);
        }
    }

    /** Many books, and a tenth of them, in the same small heap; every run lies in the period. */
    private void period(int books) throws Exception {
        ManyBooks weeks = new ManyBooks(book(SMALL));
        FreshProcess few = period(weeks, Math.max(1, books / BOOKS_TIMES));
        FreshProcess many = period(weeks, books);
        print(few);
        print(many, few, Optional.of(Goal.time(1.1 * BOOKS_TIMES, 1.2)));
        Cost cost = many.median();
        double atOnce = cost.processorSeconds() / cost.seconds();
        printRatio("processors at work in it", "%.2f", atOnce, "1.5", atOnce >= 1.5);
    }

    private FreshProcess period(ManyBooks weeks, int books) throws Exception {
        Path shelf = folder.resolve("books-" + books);
        weeks.write(shelf, books);
        return new FreshProcess(
                        "period over " + books + " books of " + SMALL + " runs, " + PERIOD_HEAP,
                        Map.of("WORKUP_TALLY_JAVA_OPTS", PERIOD_HEAP),
                        launcher.toString(),
                        "period",
                        shelf.toString(),
                        "--from",
                        "2000-01-01",
                        "--to",
                        "2026-03-08",
                        "--quiet",
                        "--out",
                        folder.resolve("period-" + books).toString())
                .run(folder);
    }

    private static void printRatio(String what, String format, double ratio, String goal, boolean met) {
        System.out.printf(
                Locale.ROOT, "| %s | | | | " + format + " | %s | %s |%n", what, ratio, goal, Goal.verdict(met));
    }

    /** Pages in a second of a process that is warm. */
    private void pdf() throws Exception {
        Review review = new ReviewBuilder(Reference.load(), "speed")
                .review(new BookReader(ReadingOptions.defaults()).read(book(PDF_RUNS)));
        PdfOptions options = new PdfOptions(PdfOptions.Paper.A4, PdfOptions.DecimalMark.POINT, Optional.empty());
        double best = 0;
        for (int i = 0; i < PDF_ROUNDS; i++) {
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            long start = System.nanoTime();
            PdfReport.write(review, options, out);
            double seconds = (System.nanoTime() - start) / 1e9;
            best = Math.max(best, new PdfReader(out.toByteArray()).getNumberOfPages() / seconds);
        }
        printRatio("PDF, warm", "%.0f pages/s", best, "500 pages/s", best >= 500);
    }
}
