package workuptally.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import workuptally.book.BookReader;
import workuptally.judgement.Review;
import workuptally.judgement.ReviewBuilder;
import workuptally.reference.Reference;

/** Of runs that are all still to be made no weight and no assay is missing; once one is made, they are. */
class PlannedOnlyBookTest {
    @TempDir
    Path folder;

    @BeforeEach
    void chargesAndProducts() throws Exception {
        Files.writeString(
                folder.resolve("charges.csv"),
                "Run,Material,Role,Formula,Coefficient,Planned amount,Planned unit\nK01,aniline,substrate,C6H7N,1,4.61,g\n");
        Files.writeString(
                folder.resolve("products.csv"),
                "Run,Product,Wanted,Formula,Coefficient,Skeleton\nK01,acetanilide,yes,C8H9NO,1,aniline 1\n");
    }

    private Review review(String status) throws Exception {
        Files.writeString(folder.resolve("runs.csv"), "Run,Date,Status\nK01,2026-04-14," + status + "\n");
        return new ReviewBuilder(Reference.load(), "test").review(new BookReader().read(folder));
    }

    @Test
    void nothingIsMissingOfAPlan() throws Exception {
        Review planned = review("planned");
        assertTrue(planned.findings().stream().noneMatch(f -> f.code().word().equals("table-missing")));
        assertEquals(0, planned.runs().get(0).tally().notComputed().size());
    }

    @Test
    void ofARunThatWasMadeItIs() throws Exception {
        Review made = review("in workup");
        assertTrue(made.findings().stream().anyMatch(f -> f.code().word().equals("table-missing")));
        assertTrue(made.runs().get(0).tally().notComputed().stream()
                .anyMatch(gap -> gap.what().startsWith("closure")));
    }
}
