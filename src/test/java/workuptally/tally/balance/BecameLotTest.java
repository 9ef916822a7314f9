package workuptally.tally.balance;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.examples.SmallBook;
import workuptally.model.FindingCode;
import workuptally.report.view.wording.Wording;

/** The organic layer that nobody recorded because it became the crude, and no other one. Common practice of how workups are written. */
class BecameLotTest {
    @ParameterizedTest
    @CsvSource({
        // what step 2 gives, where the crude came from, where a purified lot came from ('none' for no such lot), what
        // is missing
        "O2,'',none,''",
        "O2+O3,'',none,O2",
        "O2,O2,none,''",
        "O2+O3,O2,none,O3",
        "O2+O3,O2,'',O3",
        "O2,none,'',''",
        "O2+O3,none,'',O2"
    })
    void oneLayerBecameOneLotOfUnstatedOrigin(String organic, String crudeFrom, String purifiedFrom, String missing) {
        SmallBook book = SmallBook.reaction()
                .row("workup", "Step", "1", "Operation", "wash", "From", "RM", "Material", "water", "Volume", "50")
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "A1")
                .row("workup", "Step", "2", "Operation", "wash", "From", "O1", "Material", "water", "Volume", "50")
                .but("workup", "Gives organic", organic)
                .but("workup", "Gives aqueous", "A2")
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Volume", "50", "Net", "49.90", "Status", "kept")
                .row("layers", "Layer", "A2", "Phase", "aqueous", "Volume", "50", "Net", "49.90", "Status", "kept");
        if (!crudeFrom.equals("none")) {
            book.row("isolated", "Lot", "C1", "Product", "P", "Stage", "crude", "Net", "19.00", "Assay", "98")
                    .but("isolated", "From", crudeFrom);
        }
        if (!purifiedFrom.equals("none")) {
            book.row("isolated", "Lot", "D1", "Product", "P", "Stage", "purified", "Net", "16.00", "Assay", "99")
                    .but("isolated", "From", purifiedFrom);
        }
        assertEquals(
                missing,
                book.review().findings().stream()
                        .filter(f -> f.code() == FindingCode.LAYER_MISSING)
                        .map(f -> Wording.POINT.of(f.seen()).replaceAll(".*gives (\\w+),.*", "$1"))
                        .collect(Collectors.joining(", ")));
    }
}
