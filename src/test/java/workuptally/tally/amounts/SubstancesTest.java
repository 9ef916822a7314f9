package workuptally.tally.amounts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import workuptally.examples.SmallBook;
import workuptally.reference.tables.Cited;

/** What is looked up by name, and that the rows it came from are remembered. */
class SubstancesTest {
    private final Substances substances = SmallBook.substances();

    private List<String> used() {
        return substances.used().stream().map(Cited::key).toList();
    }

    /** CRC Handbook at 20 °C, as the tables have it; the mixture of 0.7914 and 0.9982 is 0.6 × 0.7914 + 0.4 × 0.9982 = 0.87412 g/mL. */
    @ParameterizedTest
    @CsvSource({"water, 0.9982", "MeOH, 0.7914", "brine, 1.2007", "aniline, 1.0217", "methanol/water 3:2, 0.87412"})
    void densitiesComeFromTheTables(String name, double gramsPerMillilitre) {
        assertEquals(
                gramsPerMillilitre, substances.densityGramsPerMillilitre(name).orElseThrow(), 1e-9);
        assertFalse(used().isEmpty());
    }

    @Test
    void whatNoTableHasHasNoDensity() {
        assertEquals(OptionalDouble.empty(), substances.densityGramsPerMillilitre("unobtainium"));
        assertEquals(0, substances.densityUncertaintyGramsPerMillilitre("unobtainium"));
        assertEquals(List.of(), used());
    }

    /** 0.3 % of 1.0217 g/mL rounded up for aniline of the handbook; none for what is bought pure or made up by weight. */
    @ParameterizedTest
    @CsvSource({"aniline, 0.004", "methanol, 0", "brine, 0", "methanol/water 3:2, 0"})
    void onlyReagentsHaveAnUncertainDensity(String name, double gramsPerMillilitre) {
        assertEquals(gramsPerMillilitre, substances.densityUncertaintyGramsPerMillilitre(name), 1e-12);
    }

    /**
     * At 30 °C. Toluene by its slope, (0.8668 − 0.0090)/0.8668; methanol without one by the usual expansion, 1/1.012; brine by the slope of
     * water, (0.9982 − 0.0023)/0.9982.
     */
    @ParameterizedTest
    @CsvSource({"toluene, 0.989617", "methanol, 0.988142", "brine, 0.997696", "water, 0.997696"})
    void densitiesFallWithTemperature(String name, double over20) {
        assertEquals(over20, substances.densityOver20(name, 30), 1e-6);
        assertEquals(1, substances.densityOver20(name, 20), 1e-12);
    }

    /**
     * In ether tetrahydrofuran by octanol, log P 0.46 (CRC Handbook): 10^0.46 = 2.884; acetone by its own row, 10^-0.21 = 0.617 (Leo 1971);
     * acetonitrile, which octanol does not prefer, by the bench rule; half toluene, half ester: the mean of both.
     */
    @Test
    void solventsThatMixWithWaterGoByTheNearestRow() {
        MiscibleSolvents ratios = new MiscibleSolvents(substances);
        Map<String, Double> ether = Map.of("diethyl ether", 50.0);
        assertEquals(2.884, ratios.ratio("tetrahydrofuran", ether), 1e-3);
        assertEquals(1, used().size());
        assertEquals(0.617, ratios.ratio("acetone", ether), 1e-3);
        assertEquals(0.3, ratios.ratio("acetonitrile", ether), 1e-12);
        assertEquals(0.3, ratios.ratio("acetonitrile", Map.of()), 1e-12);
        double toluene = ratios.ratio("methanol", Map.of("toluene", 9.0));
        assertEquals(
                (toluene + 0.3) / 2, ratios.ratio("methanol", Map.of("toluene", 9.0, "ethyl acetate", 9.0)), 1e-12);
    }

    /** C 12.011, H 1.008, O 15.999, N 14.007 g/mol (IUPAC, abridged): CH4O 32.042; C6H7N 93.129. */
    @ParameterizedTest
    @CsvSource({"methanol, 32.042", "aniline, 93.129"})
    void molarMassesOfLiquidsComeFromTheTablesAndAreRemembered(String name, double gramsPerMole) {
        assertEquals(gramsPerMole, substances.molarMassGramsPerMole(name).orElseThrow(), 1e-9);
        assertEquals(List.of(name), used());
        substances.molarMassGramsPerMole(name);
        assertEquals(1, used().size(), "once");
    }

    @Test
    void whatNoTableHasHasNoMolarMass() {
        assertTrue(substances.molarMassGramsPerMole("unobtainium").isEmpty());
    }

    /** H2O 18.015 g/mol more: one water of crystallisation; 5 g/mol is no form of anything. */
    @Test
    void differenceOfTwoMolarMassesNamesAForm() {
        assertEquals("H2O", substances.formDifference(18.02).orElseThrow().name());
        assertEquals(List.of("H2O"), used());
        assertTrue(substances.formDifference(5).isEmpty());
        assertEquals(List.of("H2O"), used());
    }

    /** Water is no organic liquid; a mixture is one where more than half of it is. */
    @ParameterizedTest
    @CsvSource({
        "water, false",
        "brine, false",
        "methanol, true",
        "methanol/water 3:2, true",
        "methanol/water 1:1, false",
        "methanol/water 2:3, false"
    })
    void moreThanHalfMakesAnOrganicLiquid(String name, boolean organic) {
        assertEquals(organic, substances.isOrganicLiquid(name));
    }

    /** CRC Handbook: diethyl ether boils at 34.4 °C, acetone at 56.1 °C; dichloromethane at 39.8 to 40.0 °C. */
    @ParameterizedTest
    @CsvSource({"diethyl ether, true", "DCM, true", "acetone, false", "unobtainium, false"})
    void solventsThatBoilUpTo40DegreesAreVeryVolatile(String name, boolean very) {
        assertEquals(very, substances.isVeryVolatile(name));
    }

    @ParameterizedTest
    @CsvSource({"silica gel, true", "MgSO4, true", "methanol, false", "unobtainium, false"})
    void sorbentsAndDryingAgentsHoldOn(String name, boolean sorbent) {
        assertEquals(sorbent, substances.isSorbent(name));
    }

    /** The bench rule asks for less than 150 °C. */
    @ParameterizedTest
    @CsvSource({"149, true", "150, false", "'', false"})
    void productThatBoilsBelow150DegreesGoesWithTheSolvent(String boiling, boolean isVolatile) {
        assertEquals(
                isVolatile,
                substances.isVolatile(SmallBook.reaction()
                        .but("products", "Boiling point", boiling)
                        .run()
                        .products()
                        .get(0)));
    }

    /** The formula decides where it stands beside a name; one that cannot be read tells nothing. */
    @Test
    void formulaBesideANameTellsWhatItIs() {
        assertEquals(
                "sodium chloride",
                substances
                        .soluteOf(substances.formulaIn("NaCl").orElseThrow())
                        .orElseThrow()
                        .name());
        assertEquals("Methanol", substances.material("MeOH", "?!").main().name());
        assertEquals("Methanol", substances.material("MeOH", "").main().name());
    }

    @Test
    void namesNearAWrongOneAreOffered() {
        assertTrue(substances.nearest("tolluene").contains("Toluene"));
    }

    @Test
    void classesOfAnElement() {
        assertEquals(List.of("heavy-metal", "noble-metal"), substances.classesOfElement("Pd"));
        assertEquals(List.of(), substances.classesOfElement("C"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"aqueous-acidic", "no-such-stream"})
    void streamsAreRemembered(String key) {
        boolean listed = substances.wasteStream(key).isPresent();
        assertEquals(listed ? List.of(key) : List.of(), used());
    }

    @Test
    void rowsUsedElsewhereComeAfterThose() {
        Substances other = substances.apart();
        other.densityGramsPerMillilitre("methanol");
        substances.densityGramsPerMillilitre("toluene");
        substances.use(other.used());
        assertEquals(List.of("toluene", "methanol"), used());
    }
}
