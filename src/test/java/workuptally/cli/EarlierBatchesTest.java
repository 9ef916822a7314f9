package workuptally.cli;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/** Earlier batches of a series, by the JSON that this program wrote of them, beside the unassayed layers of the next one. */
@Tag("slow")
class EarlierBatchesTest {
    /** Results of six earlier batches, mg/mL in 100 mL of 20.0 g theory: 0.20 to 0.30 % of theory. */
    private static final String[] EARLIER = {"0.40", "0.44", "0.48", "0.52", "0.56", "0.60"};

    @TempDir
    private Path folder;

    /** A batch with two aqueous layers, one of them assayed or none. */
    private Path book(String run, int day, String assays, String limits) throws IOException {
        Path book = Files.createDirectories(folder.resolve("books").resolve(run));
        Files.writeString(
                book.resolve("runs.csv"),
                "Run,Date,Chemist,Reaction,Kind,Status,Series\n" + run + ",2026-03-0" + day
                        + ",C1,S to P,reaction,isolated,S-1\n");
        Files.writeString(
                book.resolve("products.csv"), "Run,Product,Wanted,Molar mass,Coefficient\n" + run + ",P,yes,200,1\n");
        Files.writeString(
                book.resolve("charges.csv"),
                "Run,Material,Role,Molar mass,Coefficient,Actual amount,Actual unit\n" + run
                        + ",S,substrate,100,1,10.00,g\n");
        Files.writeString(
                book.resolve("isolated.csv"), "Run,Lot,Product,Stage,Net,Assay\n" + run + ",C1,P,crude,18.00,100\n");
        Files.writeString(
                book.resolve("layers.csv"),
                "Run,Layer,Phase,Volume,Net,Status\n" + run + ",A1,aqueous,100,100,kept\n" + run
                        + ",A2,aqueous,100,100,kept\n");
        Files.writeString(book.resolve("assays.csv"), "Run,Sample,Substance,Method,Result,Unit\n" + assays);
        if (!limits.isEmpty()) {
            Files.writeString(book.resolve("limits.csv"), "Limit,Value\n" + limits);
        }
        return book;
    }

    private Path earlier() {
        return folder.resolve("earlier");
    }

    @BeforeEach
    void reviewsEarlierBatches() throws IOException {
        for (int i = 0; i < EARLIER.length; i++) {
            String run = "B-" + (i + 1);
            String row = run + ",%s,P,HPLC," + EARLIER[i] + ",mg/mL\n";
            Path book = book(run, i + 1, row.formatted("A1") + row.formatted("A2"), "");
            Call call = Call.of("review", book, "--out", earlier(), "--reports", "json");
            assertTrue(call.code() < 2, call::err);
        }
    }

    private JsonNode review(String limits, boolean experience) throws IOException {
        Path book = book("B-9", 9, "", limits);
        Path out = folder.resolve("out");
        Call call = experience
                ? Call.of("review", book, "--experience", earlier(), "--out", out, "--reports", "json")
                : Call.of("review", book, "--out", out, "--reports", "json");
        assertTrue(call.code() < 2, call::err);
        return new ObjectMapper().readTree(Files.readString(out.resolve("B-9-review.json")));
    }

    private static String notAssayed(JsonNode review) {
        for (JsonNode finding : review.get("findings")) {
            if (finding.get("code").asString().equals("layers-not-assayed")) {
                return finding.toString();
            }
        }
        return "";
    }

    private static String restsOn(JsonNode review) {
        return review.at("/runs/0/layers/0/contents/0/restsOn").asString();
    }

    /**
     * x̄ = 0.25 %, s = 0.03742 %, k = 3.708 for six batches (ISO 16269-6:2014, one-sided, 95 % of the population with 95 % confidence, also
     * in NIST/SEMATECH e-Handbook 7.2.6.3 from memory): 0.389 %.
     */
    @Test
    void boundOfEarlierBatchesIsShownAndDoesNotCount() throws IOException {
        JsonNode review = review("", true);
        String told = notAssayed(review);
        assertTrue(told.contains("6 earlier batches: at most 0.39 % of theory"), told);
        assertTrue(told.contains("which does not count here"), told);
        assertFalse(restsOn(review).contains("experience"), restsOn(review));
    }

    @Test
    void withoutTheFolderNothingIsKnown() throws IOException {
        assertFalse(notAssayed(review("", false)).contains("earlier batches"));
    }
}
