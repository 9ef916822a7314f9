package workuptally.report.pdf;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import workuptally.book.BookReader;
import workuptally.book.files.UnreadableBookException;
import workuptally.judgement.Review;
import workuptally.judgement.ReviewBuilder;
import workuptally.reference.Reference;

/** Invented books of one preparation made many times, written as CSV files and read the way a user's book is. */
final class CourseBook {
    /** Net masses of 24 students, g: the ninth has the numbers of the fourth, the twelfth is far off, the twentieth is wet. */
    private static final double[] NET_GRAMS = {
        4.812, 5.104, 4.655, 4.987, 5.231, 4.402, 5.018, 4.769, 4.987, 5.310, 4.873, 1.954, 5.166, 4.590, 4.931, 5.077,
        4.702, 5.252, 4.848, 7.912, 4.519, 5.140, 4.794, 5.003
    };

    private final Map<String, List<String>> tables = new LinkedHashMap<>();
    private final String product;

    private CourseBook(String product) {
        this.product = product;
        tables.put("runs", lines("Run,Date,Chemist,Reaction,Kind,Series,Status,Notes"));
        tables.put("products", lines("Run,Product,Wanted,Formula,Coefficient,Skeleton,Planned yield (%)"));
        tables.put(
                "charges",
                lines("Run,Material,Role,Formula,Coefficient,Planned amount,Planned unit,Actual amount,Actual unit,"
                        + "Assay (% w/w),Density (g/mL)"));
        tables.put(
                "workup",
                lines("Run,Step,Operation,From,Material,Portions,Volume (mL),Funnel (mL),Loads,Gives organic,"
                        + "Gives aqueous,Gives other"));
        tables.put("layers", lines("Run,Layer,Phase,Vessel,Volume (mL),Net (g),pH,Status"));
        tables.put("assays", lines("Run,Sample,Substance,Method,Result,Unit,Relative standard uncertainty (%)"));
        tables.put(
                "isolated",
                lines(
                        "Run,Lot,Product,Stage,From,Net (g),Assay (% w/w),Relative standard uncertainty (%),Identity by"));
        tables.put("history", lines("Series,Date,Yield (%)"));
        tables.put("limits", lines("Name,Value", "As of,2026-03-06", "Group,Course B"));
    }

    private static List<String> lines(String... lines) {
        return new ArrayList<>(List.of(lines));
    }

    /** A class of 24. */
    static Review ofTwentyFour() throws IOException {
        CourseBook book = new CourseBook("acetanilide");
        for (int i = 0; i < NET_GRAMS.length; i++) {
            book.run("S%02d".formatted(i + 1), "Course B", NET_GRAMS[i], i);
        }
        return book.review();
    }

    /** Three runs after ten earlier results, the last of them far below. */
    static Review withASignal() throws IOException {
        CourseBook book = new CourseBook("acetanilide");
        double[] earlier = {76.9, 78.4, 77.6, 79.0, 76.2, 78.1, 77.3, 79.3, 78.6, 77.0};
        for (int i = 0; i < earlier.length; i++) {
            book.tables.get("history").add("M-07,2026-01-%02d,%s".formatted(5 + i, earlier[i]));
        }
        book.run("R-1", "M-07", 5.301, 0);
        book.run("R-2", "M-07", 5.247, 1);
        book.run("R-3", "M-07", 3.901, 2);
        return book.review();
    }

    /** Two runs with names longer than any line, one with umlauts. */
    static Review withLongNames() throws IOException {
        CourseBook book = new CourseBook(
                "(2S;3R)-2-[(tert-butoxycarbonyl)amino]-3-hydroxy-4-phenylbutanoic acid methyl ester".repeat(2));
        book.run(
                "R26-Process-Development-Campaign-17-Batch-0000000000000001",
                "M-" + "long ".repeat(30).strip(),
                4.9,
                0);
        book.run("Süßstoff-Überprüfung-Würzburg-2", "M-" + "long ".repeat(30).strip(), 4.7, 1);
        return book.review();
    }

    private void run(String run, String series, double netGrams, int number) {
        double aniline = 4.56 + 0.02 * (number % 5);
        add("runs", "%s,2026-03-02,%s,Acetylation of aniline in ethyl acetate,reaction,%s,isolated,", run, run, series);
        add("products", "%s,%s,yes,C8H9NO,1,aniline 1,85", run, product);
        add("charges", "%s,aniline,substrate,C6H7N,1,4.60,mL,%.2f,mL,99.5,1.022", run, aniline);
        add("charges", "%s,acetic anhydride,reagent,C4H6O3,1,5.20,mL,5.25,mL,99,1.08", run);
        add("charges", "%s,ethyl acetate,solvent,C4H8O2,,60,mL,%d,mL,,0.902", run, 60 + number % 3 * 5);
        add("workup", "%s,1,wash,RM,water,1,30,250,1,O1,A1,", run);
        add("workup", "%s,2,wash,O1,sat. NaHCO3,1,30,250,1,O2,A2,", run);
        add("workup", "%s,3,concentrate,O2,,,,,,,,D1+C1", run);
        add("layers", "%s,A1,aqueous,E-%d,32,32.1,3,kept", run, 2 * number + 1);
        add("layers", "%s,A2,aqueous,E-%d,31,33.0,8,kept", run, 2 * number + 2);
        add("layers", "%s,D1,distillate,,,48.5,,to reuse", run);
        add("assays", "%s,A1,%s,HPLC,%.2f,mg/mL,2.0", run, product, 4.1 + 0.1 * (number % 4));
        add("isolated", "%s,C1,%s,crude,O2,%.3f,%s,1.0,melting point", run, product, netGrams, "97.5");
    }

    private void add(String table, String line, Object... values) {
        tables.get(table).add(String.format(Locale.ROOT, line, values));
    }

    private Review review() throws IOException {
        Path folder = Files.createTempDirectory("course-book");
        List<Path> files = new ArrayList<>();
        try {
            for (Map.Entry<String, List<String>> table : tables.entrySet()) {
                Path file = folder.resolve(table.getKey() + ".csv");
                files.add(file);
                Files.write(file, table.getValue());
            }
            return new ReviewBuilder(Reference.load(), "0.1.0").review(new BookReader().read(folder));
        } catch (UnreadableBookException e) {
            throw new IOException(e);
        } finally {
            for (Path file : files) {
                Files.deleteIfExists(file);
            }
            Files.delete(folder);
        }
    }
}
