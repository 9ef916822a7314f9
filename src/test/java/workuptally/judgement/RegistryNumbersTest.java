package workuptally.judgement;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.examples.SmallBook;

/** A name has its registry number unless a run of the book means something else by it, in whatever order the runs stand. */
class RegistryNumbersTest {
    @ParameterizedTest
    @CsvSource({"C3H6O, C3H6O, 67-64-1", "C3H6O, C3H5NaO, ''", "C3H5NaO, C3H6O, ''", "'', C3H6O, 67-64-1"})
    void oneRunThatMeansSomethingElseTakesTheNumber(String first, String second, String number) {
        SmallBook book = SmallBook.reaction()
                .row("runs", "Run", "X2", "Date", "2026-03-02", "Status", "isolated")
                .row("products", "Run", "X1", "Product", "acetone", "Formula", first)
                .row("products", "Run", "X2", "Product", "acetone", "Formula", second);
        assertEquals(number, book.review().registryNumbers().getOrDefault("acetone", ""));
    }
}
