package workuptally.judgement.hazards;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import workuptally.examples.SmallBook;
import workuptally.judgement.Review;
import workuptally.judgement.RunReview;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Severity;

/**
 * Phenylmagnesium bromide that finds no partner gives benzene in the quench: 75 mmol charged, 44 mmol in the product, 31 mmol or 2.4 g of
 * benzene (78.11 g/mol). Benzene: H350 (Regulation (EC) 1272/2008, Annex VI, index 601-020-00-8).
 */
class QuenchByProductTest {
    private static SmallBook grignard(String status) {
        return SmallBook.empty()
                .row("products", "Product", "1-phenylcyclohexanol", "Wanted", "yes", "Formula", "C12H16O")
                .but("products", "Coefficient", "1")
                .but("products", "Skeleton", "cyclohexanone 1")
                .row("charges", "Material", "cyclohexanone", "Role", "substrate", "Formula", "C6H10O")
                .but("charges", "Coefficient", "1")
                .but("charges", "Actual amount", "4.91")
                .but("charges", "Actual unit", "g")
                .row("charges", "Material", "phenylmagnesium bromide in diethyl ether", "Role", "reagent")
                .but("charges", "Formula", "C6H5BrMg")
                .but("charges", "Coefficient", "1")
                .but("charges", "Molarity", "3.00")
                .but("charges", "Actual amount", "25.0")
                .but("charges", "Actual unit", "mL")
                .row("workup", "Step", "1", "Operation", "wash", "From", "RM", "Material", "brine", "Volume", "30")
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "A1")
                .row("workup", "Step", "2", "Operation", "concentrate", "From", "O1", "Gives other", "D1+C1")
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Volume", "32", "Net", "36", "Status", "kept")
                .row("layers", "Layer", "D1", "Phase", "distillate", "Net", "50", "Status", status)
                .but("layers", "Composition", "diethyl ether 98 %")
                .row("isolated", "Lot", "C1", "Product", "1-phenylcyclohexanol", "Stage", "crude", "From", "O1")
                .but("isolated", "Net", "7.80")
                .but("isolated", "Assay", "99");
    }

    @Test
    void distillateToReuseIsAskedAbout() {
        Review review = grignard("to reuse").review();
        Finding finding = review.findings().stream()
                .filter(f -> f.code() == FindingCode.QUENCH_BY_PRODUCT)
                .findFirst()
                .orElseThrow();
        assertEquals(Severity.CHECK, finding.severity());
        Finding kept = grignard("kept").review().findings().stream()
                .filter(f -> f.code() == FindingCode.QUENCH_BY_PRODUCT)
                .findFirst()
                .orElseThrow();
        assertEquals(Severity.NOTE, kept.severity());
    }

    @Test
    void benzeneIsNamedAmongTheHazardsAndOnTheDistillate() {
        RunReview run = grignard("to reuse").reviewOfRun();
        assertTrue(run.hazards().stream()
                .anyMatch(n -> n.subject().equalsIgnoreCase("benzene")
                        && n.statements().stream().anyMatch(s -> s.startsWith("H350"))));
        HazardNote distillate = run.hazards().stream()
                .filter(n -> n.isOfPortion("D1"))
                .findFirst()
                .orElseThrow();
        assertTrue(distillate.statements().stream().anyMatch(s -> s.startsWith("H350")), distillate.toString());
        assertTrue(distillate.caution().contains("of benzene from the quench"), distillate.caution());
        assertTrue(run.hazards().stream()
                .filter(n -> n.isOfPortion("A1"))
                .noneMatch(n -> n.caution().contains("benzene")));
    }
}
