package workuptally.speed;

import com.lowagie.text.pdf.PdfReader;
import java.io.ByteArrayOutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import workuptally.book.BookReader;
import workuptally.book.ReadingOptions;
import workuptally.judgement.Review;
import workuptally.judgement.ReviewBuilder;
import workuptally.reference.Reference;
import workuptally.report.pdf.PdfOptions;
import workuptally.report.pdf.PdfReport;

/**
 * Times the program against the spreadsheet library alone on the same books: fresh processes, one of each kind after the other, medians.
 * Prints a table of ratios, which travel between machines, with goals. Needs GNU time and the launcher of a finished build.
 *
 * <pre>mvn -Pspeed verify -DskipTests [-Dspeed.sizes=20,1000,10000] [-Dspeed.repeats=5]</pre>
 */
public final class SpeedTable {
    private static final int PDF_RUNS = 100;
    private static final int PDF_ROUNDS = 8;
    private static final int LARGE = 10_000;

    private final Path folder;
    private final Path launcher;
    private final Path demoWeek;
    private final int repeats;
    private final Map<Integer, FreshProcess> reviews = new LinkedHashMap<>();

    private SpeedTable(Path build, Path demoWeek, int repeats) {
        this.folder = build.resolve("speed");
        this.launcher = build.resolve("workup-tally");
        this.demoWeek = demoWeek;
        this.repeats = repeats;
    }

    /** Arguments: build folder with the launcher, folder of the demo week's CSV files, sizes with commas, repeats. */
    public static void main(String[] args) throws Exception {
        SpeedTable table =
                new SpeedTable(Path.of(args[0]).toAbsolutePath(), Path.of(args[1]), Integer.parseInt(args[3]));
        Files.createDirectories(table.folder);
        System.out.println("| work | seconds | processor s | peak MB | ratio | goal |");
        System.out.println("|---|---|---|---|---|---|");
        for (String size : args[2].split(",")) {
            table.time(Integer.parseInt(size));
        }
        table.growth();
        table.pdf();
    }

    private void time(int runs) throws Exception {
        Path book = book(runs);
        Path annotations = annotations(book);
        String heap = runs >= LARGE ? "-Xmx512m" : "";
        FreshProcess review = new FreshProcess(
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
        FreshProcess check =
                new FreshProcess("check of " + runs + " runs", Map.of(), launcher.toString(), "check", book.toString());
        FreshProcess annotate = plain(
                "library alone: load, annotate, save " + runs,
                book.toString(),
                annotations.toString(),
                folder.resolve("plain.xlsx").toString());
        FreshProcess load = plain("library alone: load " + runs, book.toString());
        List<FreshProcess> all = List.of(review, annotate, check, load);
        for (int i = 0; i < (runs >= LARGE ? 1 : repeats); i++) {
            for (FreshProcess process : all) {
                process.run(folder);
            }
        }
        reviews.put(runs, review);
        print(annotate, Optional.empty(), "", "");
        print(review, Optional.of(annotate), goal(runs, "0.6", "0.4", "0.2"), goal(runs, "", "0.25", ""));
        print(load, Optional.empty(), "", "");
        print(check, Optional.of(load), goal(runs, "0.35", "", ""), "");
    }

    private static String goal(int runs, String small, String middle, String large) {
        return runs >= LARGE ? large : runs >= 1000 ? middle : small;
    }

    private FreshProcess plain(String name, String... arguments) {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xmx10g",
                "-cp",
                System.getProperty("java.class.path"),
                PlainPoi.class.getName()));
        command.addAll(List.of(arguments));
        return new FreshProcess(name, Map.of(), command.toArray(String[]::new));
    }

    private Path book(int runs) throws Exception {
        Path book = folder.resolve("week-" + runs + ".xlsx");
        new ReplicatedWeek(demoWeek, runs).writeWorkbook(book);
        return book;
    }

    /** What the review of a book adds to it, taken from one review that is not timed. */
    private Path annotations(Path book) throws Exception {
        Path reviewed = folder.resolve(book.getFileName().toString().replace(".xlsx", "-review.xlsx"));
        Path target = folder.resolve(book.getFileName() + ".annotations");
        new ProcessBuilder(
                        launcher.toString(),
                        "review",
                        book.toString(),
                        "--reports",
                        "workbook",
                        "--quiet",
                        "--out",
                        folder.toString())
                .inheritIO()
                .start()
                .waitFor();
        Annotations.write(book, reviewed, target);
        return target;
    }

    private void print(FreshProcess process, Optional<FreshProcess> against, String goal, String memoryGoal) {
        FreshProcess.Cost cost = process.median();
        String ratio = against.map(FreshProcess::median)
                .map(other -> String.format(
                        Locale.ROOT,
                        "time %.2f, processor %.2f, memory %.2f",
                        cost.seconds() / other.seconds(),
                        cost.processorSeconds() / other.processorSeconds(),
                        cost.peakMegabytes() / other.peakMegabytes()))
                .orElse("");
        String goals = (goal.isEmpty() ? "" : "time " + goal) + (memoryGoal.isEmpty() ? "" : ", memory " + memoryGoal);
        System.out.printf(
                Locale.ROOT,
                "| %s | %.2f | %.2f | %.0f | %s | %s |%n",
                process.name(),
                cost.seconds(),
                cost.processorSeconds(),
                cost.peakMegabytes(),
                ratio,
                goals);
    }

    private void growth() {
        OptionalDouble middle = seconds(1000);
        OptionalDouble large = seconds(LARGE);
        if (middle.isPresent() && large.isPresent()) {
            System.out.printf(
                    Locale.ROOT,
                    "| review of %d against 1000 runs | | | | time %.1f | time 11 |%n",
                    LARGE,
                    large.getAsDouble() / middle.getAsDouble());
        }
    }

    private OptionalDouble seconds(int runs) {
        return Optional.ofNullable(reviews.get(runs))
                .map(review -> OptionalDouble.of(review.median().seconds()))
                .orElse(OptionalDouble.empty());
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
        System.out.printf(Locale.ROOT, "| PDF, warm | | | | %.0f pages/s | 500 pages/s |%n", best);
    }
}
