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
 * Prints a table of ratios, which travel between machines, with goals and verdicts. Needs GNU time, LibreOffice and the launcher of a
 * finished build.
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
        System.out.println("| work | seconds | processor s | peak MB | ratio | goal | verdict |");
        System.out.println("|---|---|---|---|---|---|---|");
        table.warmOffice();
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
        List<FreshProcess> all = new ArrayList<>(List.of(review, annotate, check, load));
        FreshProcess print = office(folder.resolve("week-" + runs + "-review.xlsx"), runs);
        if (runs < LARGE) {
            all.add(print);
        }
        for (int i = 0; i < (runs >= LARGE ? 1 : repeats); i++) {
            for (FreshProcess process : all) {
                process.run(folder);
            }
        }
        reviews.put(runs, review);
        Optional<Goal> noGoal = Optional.empty();
        print(annotate, Optional.empty(), noGoal);
        print(review, Optional.of(annotate), Goal.ofReview(runs));
        print(load, Optional.empty(), noGoal);
        print(check, Optional.of(load), runs < 1000 ? Optional.of(Goal.time(0.35)) : noGoal);
        if (runs < LARGE) {
            print(print, Optional.empty(), noGoal);
            print(
                    review.named("the same review against the spreadsheet engine"),
                    Optional.of(print),
                    Optional.of(Goal.time(runs >= 1000 ? 1 / 8.0 : 1 / 2.5)));
        }
    }

    /**
     * Largest ratios to reach.
     *
     * @param time of seconds
     * @param memory of peak sizes, if there is such a goal
     */
    private record Goal(double time, OptionalDouble memory) {
        static Goal time(double time) {
            return new Goal(time, OptionalDouble.empty());
        }

        static Optional<Goal> ofReview(int runs) {
            if (runs >= LARGE) {
                return Optional.of(time(0.2));
            }
            return Optional.of(runs >= 1000 ? new Goal(0.4, OptionalDouble.of(0.25)) : time(0.6));
        }

        boolean isMet(FreshProcess.Cost cost, FreshProcess.Cost other) {
            return cost.seconds() <= time * other.seconds()
                    && (memory.isEmpty() || cost.peakMegabytes() <= memory.getAsDouble() * other.peakMegabytes());
        }

        String text() {
            return "time " + time + (memory.isPresent() ? ", memory " + memory.getAsDouble() : "");
        }
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

    private void print(FreshProcess process, Optional<FreshProcess> against, Optional<Goal> goal) {
        FreshProcess.Cost cost = process.median();
        String ratio = against.map(FreshProcess::median)
                .map(other -> String.format(
                        Locale.ROOT,
                        "time %.2f, processor %.2f, memory %.2f",
                        cost.seconds() / other.seconds(),
                        cost.processorSeconds() / other.processorSeconds(),
                        cost.peakMegabytes() / other.peakMegabytes()))
                .orElse("");
        String verdict = goal.flatMap(g -> against.map(other -> verdict(g.isMet(cost, other.median()))))
                .orElse("");
        System.out.printf(
                Locale.ROOT,
                "| %s | %.2f | %.2f | %.0f | %s | %s | %s |%n",
                process.name(),
                cost.seconds(),
                cost.processorSeconds(),
                cost.peakMegabytes(),
                ratio,
                goal.map(Goal::text).orElse(""),
                verdict);
    }

    private static String verdict(boolean met) {
        return met ? "met" : "not met";
    }

    private void growth() {
        OptionalDouble middle = seconds(1000);
        OptionalDouble large = seconds(LARGE);
        if (middle.isPresent() && large.isPresent()) {
            System.out.printf(
                    Locale.ROOT,
                    "| review of %d against 1000 runs | | | | time %.1f | time 11 | %s |%n",
                    LARGE,
                    large.getAsDouble() / middle.getAsDouble(),
                    verdict(large.getAsDouble() <= 11 * middle.getAsDouble()));
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
        System.out.printf(
                Locale.ROOT, "| PDF, warm | | | | %.0f pages/s | 500 pages/s | %s |%n", best, verdict(best >= 500));
    }
}
