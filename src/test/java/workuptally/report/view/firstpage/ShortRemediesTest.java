package workuptally.report.view.firstpage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import workuptally.model.FindingCode;
import workuptally.model.Severity;

/** An action says what to do: no stop and no hold stands on page one as the name of a fault. */
class ShortRemediesTest {
    /** Told together in the line of the product, or in that of the transfers. */
    private static boolean hasALineOfItsOwn(FindingCode code) {
        return code == FindingCode.LAYER_HOLDS_PRODUCT
                || code.word().startsWith("proposal-")
                || code.word().startsWith("transfer-")
                || code == FindingCode.CONTAINER_OVERFULL;
    }

    private static Stream<FindingCode> urgent() {
        return Stream.of(FindingCode.values())
                .filter(c -> c.severity() == Severity.STOP || c.severity() == Severity.HOLD)
                .filter(c -> !hasALineOfItsOwn(c));
    }

    @Test
    void everyCodeThatStopsOrHoldsHasARemedyInALine() {
        List<FindingCode> without =
                urgent().filter(c -> ShortRemedies.of(c).isEmpty()).toList();
        assertEquals(List.of(), without);
    }

    @Test
    void aRemedyLeavesRoomForWhatItIsAbout() {
        urgent().forEach(c -> {
            String remedy = ShortRemedies.of(c).orElseThrow();
            assertTrue(remedy.length() <= UrgentAction.MOST_CHARACTERS - 10, remedy);
        });
    }
}
