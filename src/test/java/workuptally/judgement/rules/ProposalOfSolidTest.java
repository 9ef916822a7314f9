package workuptally.judgement.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.judgement.Review;
import workuptally.report.view.lines.ProposalLine;

/** A wet cake holds about its own mass of solution (common practice): it is not let go on an open balance, and is on a closed one. */
class ProposalOfSolidTest {

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

    /** A salt cake of a quench, never assayed: where the balance is open it may be the place, where it closes it is not. */
    @ParameterizedTest
    @CsvSource({"96.3022,true", "96.9022,false"})
    void aSolidThatNobodyAssayedIsAskedAboutOnAnOpenBalance(String crudeGross, boolean asked, @TempDir Path folder)
            throws Exception {
        Review review = ExampleBook.clean()
                .with("isolated", "96.9022", crudeGross)
                .with("workup", "X1,1,wash,RM,water", "X1,0,filter,RM,,,,,,,,,,,,,,RM,,S1\nX1,1,wash,RM,water")
                .plus("layers", "X1,S1,solid,,,,,,2.5,,kept")
                .table("containers", "Container,Waste stream,Capacity (L),Contents then\nW1,other solids,20,\n")
                .table(
                        "transfers",
                        "Transfer,Run,Layer,Material,Container,Amount (g),Status\nT1,X1,S1,,W1,2.5,proposed\n")
                .review(folder);
        ProposalLine line = ProposalLine.of(review).get(0);
        assertEquals(asked, line.reasons().contains("what it holds is not settled"));
    }
}
