package workuptally.judgement.rules.layers;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.examples.SmallBook;
import workuptally.model.FindingCode;

/** 18.0 g isolated from O1 alone, which was assayed and never measured: 100 mL of solvent and 50 mL of water stood in the funnel. */
class PortionHeldMoreTest {
    @ParameterizedTest
    // 0.2 mg/mL × 150 mL = 0.03 g at most; 130 mg/mL × 150 mL = 19.5 g
    @CsvSource({"0.2, true", "130, false"})
    void strengthTimesTheFunnelBoundsWhatItHeld(String result, boolean told) {
        SmallBook book = SmallBook.reaction()
                .row("charges", "Material", "ethyl acetate", "Role", "solvent", "Actual amount", "100")
                .but("charges", "Actual unit", "mL")
                .row("workup", "Step", "1", "Operation", "wash", "From", "RM", "Material", "water", "Volume", "50")
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "A1")
                .row("workup", "Step", "2", "Operation", "concentrate", "From", "O1", "Gives other", "D1+C1")
                .row("isolated", "Lot", "C1", "Product", "P", "Stage", "crude", "From", "O1", "Net", "18.0")
                .but("isolated", "Assay", "99")
                .row("assays", "Sample", "O1", "Substance", "P", "Method", "HPLC", "Result", result, "Unit", "mg/mL");
        assertEquals(
                told, book.reviewOfRun().findings().stream().anyMatch(f -> f.code() == FindingCode.PORTION_HELD_MORE));
    }
}
