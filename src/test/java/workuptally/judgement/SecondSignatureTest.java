package workuptally.judgement;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.examples.SmallBook;

/** What asks for a second signature; common practice. */
class SecondSignatureTest {
    @ParameterizedTest
    @CsvSource({"charges,sodium azide", "workup,sodium azide", "workup,water"})
    void anAzideAsksForOneWhereverItIsAdded(String table, String material) {
        SmallBook book = SmallBook.reaction();
        if (table.equals("charges")) {
            book.row("charges", "Material", material, "Role", "reagent", "Actual amount", "1", "Actual unit", "g");
        } else {
            book.row("workup", "Step", "1", "Operation", "other", "From", "RM", "Material", material, "Mass", "1")
                    .but("workup", "Gives other", "X1");
        }
        assertEquals(
                material.equals("sodium azide"),
                SecondSignature.reasons(book.reviewOfRun()).contains(material));
    }
}
