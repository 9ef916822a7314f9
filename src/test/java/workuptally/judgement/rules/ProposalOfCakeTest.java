package workuptally.judgement.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.judgement.Review;
import workuptally.report.view.lines.ProposalLine;

/** A wet cake holds about its own mass of solution (common practice): it is not let go on an open balance, and is on a closed one. */
class ProposalOfCakeTest {

    private static ProposalLine proposal(Path folder, String cakeGrams, String crudeGross) throws Exception {
        Review review = ExampleBook.clean()
                .with("layers", "6.92", cakeGrams)
                .with("isolated", "96.9022", crudeGross)
                .with("workup", "X1,5,rinse,O4,ethyl acetate,1,5", "X1,5,dilute,O4,ethyl acetate,1,5")
                .table(
                        "containers",
                        "Container,Waste stream,Capacity (L),Contents then\nW1,drying agents and silica,20,silica gel 500 g\n")
                .table(
                        "transfers",
                        "Transfer,Run,Layer,Material,Container,Amount (g),Status\nT1,X1,K1,,W1," + cakeGrams
                                + ",proposed\n")
                .review(folder);
        return ProposalLine.of(review).get(0);
    }

    @ParameterizedTest
    @CsvSource({"12.40,96.3022,ASK", "6.92,96.9022,FITS", "12.40,96.9022,FITS"})
    void aCakeThatMayHoldMoreThanALayerMayIsAskedAbout(
            String cakeGrams, String crudeGross, ProposalLine.Group group, @TempDir Path folder) throws Exception {
        ProposalLine line = proposal(folder, cakeGrams, crudeGross);
        assertEquals(group, line.group(), () -> String.join("; ", line.reasons()));
    }
}
