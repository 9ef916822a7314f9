package workuptally.tally.amounts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.examples.SmallBook;
import workuptally.measure.MeasuredValue;
import workuptally.measure.Reading;
import workuptally.measure.Readings;
import workuptally.model.Limits;

class ChargeContentTest {
    @Test
    void typedDensityIsExactUnlessASpanStandsWithIt() {
        assertEquals(0, density("S", "0.80").orElseThrow().standardUncertainty(), 0);
        // rectangular: 0.02 over the root of 3
        MeasuredValue spanned = density("S", "0.80 ± 0.02").orElseThrow();
        assertEquals(0.80, spanned.value(), 1e-12);
        assertEquals(0.02 / Math.sqrt(3), spanned.standardUncertainty(), 1e-12);
        assertEquals("charges.csv line 2, Density", reading(spanned).where());
    }

    @Test
    void densityOfAListedLiquidHasTheUncertaintyOfItsRow() {
        // acetic anhydride 1.082 ± 0.004 g/mL by its row (CRC Handbook); toluene, a solvent, is taken as exact
        MeasuredValue listed = density("acetic anhydride", "").orElseThrow();
        assertEquals(1.082, listed.value(), 1e-12);
        assertEquals(0.004, listed.standardUncertainty(), 1e-12);
        assertEquals("liquids.csv", reading(listed).where());
        assertEquals(0, density("toluene", "").orElseThrow().standardUncertainty(), 0);
        assertEquals(Optional.empty(), density("unobtainium", ""));
        assertEquals(Optional.empty(), density("toluene", "smudged"));
    }

    @ParameterizedTest
    @CsvSource({
        // 8 % of sodium hydroxide are 2.17 mol/L (CRC Handbook): 2 M is 7.4 % by mass; the same composition counts
        // however
        // it is written, another one or one that cannot be read does not
        "2 M NaOH, NaOH, 0.074, by its name",
        "2 M NaOH, HNaO, 0.074, by its name",
        "2 M NaOH, '', 0.074, by its name",
        "2 M NaOH, KOH, 1, taken as 100 %",
        "2 M NaOH, Xy2Q, 1, taken as 100 %",
        "sodium hydride 60 %, NaH, 0.60, by its name",
        // a strength by volume is no content by mass
        "n-BuLi 2.5 M in hexanes, C4H9Li, 1, taken as 100 %",
        "unobtainium, '', 1, taken as 100 %",
        "water, H2O, 1, taken as 100 %"
    })
    void contentIsThatOfTheNameWhereNoneIsTyped(String material, String formula, double fraction, String from) {
        MeasuredValue content = content(material, formula, "");
        assertEquals(fraction, content.value(), 0.001);
        assertTrue(reading(content).name().endsWith(from), reading(content).name());
        assertEquals("charges.csv line 2, Assay", reading(content).where());
    }

    @Test
    void typedContentGoesBeforeTheNameWithTheUsualUncertainty() {
        MeasuredValue content = content("sodium hydride 60 %", "NaH", "55");
        assertEquals(0.55, content.value(), 1e-12);
        assertEquals("assay of sodium hydride 60 %", reading(content).name());
        // 0.3 % of it by the default limit
        assertEquals(0.003 * 0.55, content.standardUncertainty(), 1e-12);
        // and a span of ± 1 beside it
        assertEquals(
                Math.hypot(0.003, 1 / 55.0 / Math.sqrt(3)),
                content("sodium hydride", "NaH", "55 ± 1").relativeStandardUncertainty(),
                1e-12);
    }

    private static Reading reading(MeasuredValue value) {
        return value.budget().get(0).reading();
    }

    private static Optional<MeasuredValue> density(String material, String density) {
        SmallBook book =
                SmallBook.reaction().but("charges", "Material", material).but("charges", "Density", density);
        return content().density(book.run().charges().get(0));
    }

    private static MeasuredValue content(String material, String formula, String assay) {
        SmallBook book = SmallBook.reaction()
                .but("charges", "Material", material)
                .but("charges", "Formula", formula)
                .but("charges", "Molar mass", "")
                .but("charges", "Assay", assay);
        return content().assayFraction(book.run().charges().get(0));
    }

    private static ChargeContent content() {
        return new ChargeContent(new Readings(), Limits.defaults(), SmallBook.substances());
    }
}
