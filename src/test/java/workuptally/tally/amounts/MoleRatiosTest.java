package workuptally.tally.amounts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import workuptally.examples.SmallBook;
import workuptally.measure.Readings;
import workuptally.model.Limits;
import workuptally.model.Run;

/** P of 200 g/mol with 0.10 mol of S, 100 g/mol, and 0.20 mol of ethyl acetate, 88.106 g/mol, beside each mole. */
class MoleRatiosTest {
    @Test
    void fractionIsTheProductOverAllThatTheSpectrumShows() {
        // 200 / (200 + 10 + 17.6212)
        MoleRatios.Ratios ratios = of(book()).orElseThrow();
        assertEquals(200 / 227.6212, ratios.fraction().value(), 1e-5);
        assertEquals(List.of("S", "ethyl acetate"), ratios.counted());
    }

    @Test
    void uncertaintyIsThatOfTheRatios() {
        // NMR at 5 %: u(w)/w = √((0.05 × 10)² + (0.05 × 17.6212)²) / 227.6212
        SmallBook book = book().but("assays", "Relative standard uncertainty", "5");
        book.first("assays", "Relative standard uncertainty", "5");
        assertEquals(
                0.05 * Math.hypot(10, 17.6212) / 227.6212,
                of(book).orElseThrow().fraction().relativeStandardUncertainty(),
                1e-6);
    }

    @Test
    void onlyRatiosOfTheLotThatAreNumbersCount() {
        assertEquals(200 / 210.0, fraction(book().but("assays", "Sample", "C9")), 1e-9);
        assertEquals(200 / 210.0, fraction(book().but("assays", "Unit", "% w/w")), 1e-9);
        assertEquals(200 / 210.0, fraction(book().but("assays", "Result", "<0.2")), 1e-9);
        assertEquals(200 / 210.0, fraction(book().but("assays", "Substance", "unobtainium")), 1e-9);
        assertEquals(200 / 227.6212, fraction(book().but("assays", "Result", "ca. 0.2")), 1e-5);
    }

    @Test
    void withoutARatioOrAMolarMassThereIsNone() {
        assertEquals(Optional.empty(), of(book().first("products", "Molar mass", "")));
        assertEquals(Optional.empty(), of(book().first("assays", "Sample", "C9").but("assays", "Sample", "C9")));
    }

    @Test
    void anotherProductOfTheLotHasItsShareByItsOwnRatio() {
        // 0.5 mol of Q, 60 g/mol, beside each mole of P: 30 / (200 + 10 + 17.6212 + 30)
        SmallBook book = book().row("products", "Product", "Q", "Wanted", "yes", "Molar mass", "60")
                .row("isolated", "Lot", "C1", "Product", "Q", "Stage", "crude", "Net", "20.00")
                .row("assays", "Sample", "C1", "Substance", "q", "Method", "NMR", "Result", "0.5");
        book.but("assays", "Unit", "mol ratio to product");
        Run run = book.run();
        assertEquals(30 / 257.6212, fraction(run, 1).orElseThrow().fraction().value(), 1e-5);
        assertEquals(200 / 257.6212, fraction(run, 0).orElseThrow().fraction().value(), 1e-5);
        // without a ratio of its own its share is not known
        assertEquals(
                Optional.empty(), fraction(book.but("assays", "Sample", "C9").run(), 1));
    }

    @Test
    void boundBesideAnAssayIsNamedWithWhatWasCounted() {
        Run run = book().run();
        LotMoleRatios.Fraction fraction = LotMoleRatios.of(
                        run, run.lots().get(0), Limits.defaults(), SmallBook.substances())
                .orElseThrow();
        assertEquals(200 / 227.6212, fraction.value(), 1e-5);
        assertEquals("S, ethyl acetate", fraction.counted());
        assertTrue(fraction.standardUncertainty() > 0);
    }

    private static double fraction(SmallBook book) {
        return of(book).orElseThrow().fraction().value();
    }

    private static Optional<MoleRatios.Ratios> of(SmallBook book) {
        return fraction(book.run(), 0);
    }

    private static Optional<MoleRatios.Ratios> fraction(Run run, int lot) {
        return new MoleRatios(run, new Readings(), Limits.defaults(), new MolarMassAccount(run, SmallBook.substances()))
                .of(run.lots().get(lot));
    }

    private static SmallBook book() {
        return SmallBook.reaction()
                .row("isolated", "Lot", "C1", "Product", "P", "Stage", "crude", "Net", "20.00")
                .row("assays", "Sample", "C1", "Substance", "S", "Method", "NMR", "Result", "0.10")
                .but("assays", "Unit", "mol ratio to product")
                .row("assays", "Sample", "C1", "Substance", "ethyl acetate", "Method", "NMR", "Result", "0.20")
                .but("assays", "Unit", "mol ratio to product");
    }
}
