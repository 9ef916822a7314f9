package workuptally.tally.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.OptionalDouble;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.examples.SmallBook;
import workuptally.model.Step;

class ContactTest {
    private static final Step STEP = SmallBook.reaction()
            .row("workup", "Step", "1", "Operation", "wash", "From", "RM")
            .run()
            .steps()
            .get(0);

    @ParameterizedTest
    @CsvSource({
        // 66.8 % against 66.7 % would both read 67 %
        "66.8, 66.7, 1",
        "70, 66.7, 0",
        "50, 50, 0",
        "49.8, 50.4, 1",
        "40.0, 50.0, 0"
    })
    void fillAndLimitThatDifferDoNotReadAlike(double fill, double limit, int decimals) {
        Contact contact = new Contact(
                STEP, 1, 100, 200, true, fill, limit, 1, 1, false, OptionalDouble.empty(), OptionalDouble.empty());
        assertEquals(decimals, contact.percentDecimals());
    }
}
