package workuptally.judgement.rules;

import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import workuptally.examples.SmallBook;
import workuptally.judgement.Review;
import workuptally.model.FindingCode;
import workuptally.report.view.wording.Wording;

/**
 * A planned wash that is too small and a funnel that is too full speak of one volume. By hand: 150 mmol acetic acid (9.01 g) that nothing
 * uses up against 50 mL of 1.10 mol/L hydrogencarbonate, 55 mmol; 150/1.10 = 136 mL; 55 mmol give 1.3 L of carbon dioxide at 24 L/mol.
 */
class ShortWashTest {
    private static final SmallBook BOOK = book("9.01", "60", "50");

    private static SmallBook book(String acidGrams, String solventMillilitres, String washMillilitres) {
        return SmallBook.empty()
                .first("runs", "Status", "planned")
                .row("products", "Product", "P", "Wanted", "yes", "Molar mass", "200", "Coefficient", "1")
                .row("charges", "Material", "S", "Role", "substrate", "Molar mass", "100", "Coefficient", "1")
                .but("charges", "Planned amount", "2.00")
                .but("charges", "Planned unit", "g")
                .row("charges", "Material", "acetic acid, glacial", "Role", "reagent", "Formula", "C2H4O2")
                .but("charges", "Planned amount", acidGrams)
                .but("charges", "Planned unit", "g")
                .row("charges", "Material", "MTBE", "Role", "solvent")
                .but("charges", "Planned amount", solventMillilitres)
                .but("charges", "Planned unit", "mL")
                .row(
                        "workup",
                        "Step",
                        "1",
                        "Operation",
                        "wash",
                        "From",
                        "RM",
                        "Material",
                        "sat. NaHCO3",
                        "Volume",
                        washMillilitres)
                .but("workup", "Funnel (mL)", "125")
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "A1");
    }

    private static String action(Review review, FindingCode code) {
        return review.findings().stream()
                .filter(f -> f.code() == code)
                .map(f -> Wording.POINT.of(f.action()))
                .findFirst()
                .orElseThrow();
    }

    /** On a tenth of the scale: 5.7 mmol (0.340 g) against 5.0 mL with 5.5 mmol, of which 5.1 mL would do. Rounded, both were 6 and 5. */
    @Test
    void shortWashOfMillilitresIsToldFromWhatWasPlanned() {
        Review review = book("0.340", "6", "5").review();
        String seen = review.findings().stream()
                .filter(f -> f.code() == FindingCode.WASH_TOO_SMALL)
                .map(f -> Wording.POINT.of(f.seen()))
                .findFirst()
                .orElseThrow();
        assertTrue(seen.contains("brings 5.5 mmol for 5.7 mmol"), seen);
        String action = action(review, FindingCode.WASH_TOO_SMALL);
        assertTrue(action.contains(": plan 5.1 mL of this wash"), action);
    }

    @Test
    void funnelIsChosenForTheWashThatIsAdvised() {
        Review review = BOOK.review();
        assertTrue(action(review, FindingCode.WASH_TOO_SMALL).contains(": plan 136 mL of this wash"));
        String funnel = action(review, FindingCode.FUNNEL_OVERFULL);
        assertTrue(funnel.startsWith("Step 1: with the 136 mL of wash that it takes use"), funnel);
        assertTrue(funnel.contains("of the worst case"), funnel);
    }
}
