package workuptally.judgement.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.examples.SmallBook;
import workuptally.judgement.Review;
import workuptally.model.FindingCode;
import workuptally.report.view.lines.ProposalLine;

/** What is taken off cannot be more than what was there, and a halogenated solvent comes over with the rest (conservation of mass). */
class CompositionContradictedTest {

    /** 50 mL ethyl acetate (45 g) and 120 mL dichloromethane (159 g), all taken off at once. */
    private static SmallBook takenOff(String composition, String grams) {
        return SmallBook.reaction()
                .row(
                        "charges",
                        "Material",
                        "ethyl acetate",
                        "Role",
                        "solvent",
                        "Actual amount",
                        "50",
                        "Actual unit",
                        "mL")
                .row("workup", "Step", "1", "Operation", "dilute", "From", "RM", "Material", "dichloromethane")
                .but("workup", "Volume", "120")
                .but("workup", "Gives organic", "O1")
                .row("workup", "Step", "2", "Operation", "concentrate", "From", "O1", "Gives other", "D1+C1")
                .row("layers", "Layer", "D1", "Phase", "distillate", "Net", grams, "Status", "kept")
                .but("layers", "Composition", composition)
                .row("containers", "Container", "W-2", "Waste stream", "non-halogenated solvents", "Capacity", "10")
                .row("transfers", "Transfer", "T1", "Layer", "D1", "Container", "W-2", "Amount", grams)
                .but("transfers", "Status", "proposed");
    }

    private static String told(Review review) {
        return review.findings().stream()
                .filter(f -> f.code() == FindingCode.COMPOSITION_CONTRADICTED)
                .map(f -> f.severity().name())
                .sorted()
                .collect(Collectors.joining("; "));
    }

    @ParameterizedTest
    @CsvSource({
        "ethyl acetate 97 %; water 3 %,190,CHECK; HOLD",
        "ethyl acetate 22 %; dichloromethane 77 %,190,''",
        "ethyl acetate 40 %; dichloromethane 60 %,190,CHECK",
        "dichloromethane 97 %,190,''",
        "water 100 %,190,HOLD",
        "'',190,''"
    })
    void aCompositionIsHeldAgainstWhatWentIn(String composition, String grams, String severities) {
        assertEquals(severities, told(takenOff(composition, grams).review()));
    }

    @Test
    void aTransferOfItIsAskedAbout() {
        Review review = takenOff("ethyl acetate 97 %; water 3 %", "190").review();
        assertEquals(ProposalLine.Group.ASK, ProposalLine.of(review).get(0).group());
    }

    /** Nine tenths of the dichloromethane went over before; what the pump took is not looked for in the next distillate. */
    @Test
    void whatWentOverBeforeIsNotLookedForAgain() {
        SmallBook book = SmallBook.reaction()
                .row(
                        "charges",
                        "Material",
                        "dichloromethane",
                        "Role",
                        "solvent",
                        "Actual amount",
                        "120",
                        "Actual unit",
                        "mL")
                .row("workup", "Step", "1", "Operation", "strip", "From", "RM", "Gives other", "RM+D1")
                .row("workup", "Step", "2", "Operation", "dilute", "From", "RM", "Material", "toluene")
                .but("workup", "Volume", "100")
                .but("workup", "Gives organic", "O1")
                .row("workup", "Step", "3", "Operation", "concentrate", "From", "O1", "Gives other", "D2+C1")
                .row("layers", "Layer", "D1", "Phase", "distillate", "Net", "145", "Status", "kept")
                .but("layers", "Composition", "dichloromethane 99 %")
                .row("layers", "Layer", "D2", "Phase", "distillate", "Net", "84", "Status", "kept")
                .but("layers", "Composition", "toluene 98 %");
        assertEquals("", told(book.review()));
    }

    @Test
    void aSolventChargedWithoutAnAmountTellsNothing() {
        SmallBook book =
                takenOff("ethyl acetate 97 %; dichloromethane 3 %", "190").but("charges", "Actual amount", "");
        assertEquals("", told(book.review()));
    }
}
