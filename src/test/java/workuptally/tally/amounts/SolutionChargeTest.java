package workuptally.tally.amounts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.examples.SmallBook;
import workuptally.measure.MeasuredValue;
import workuptally.measure.Reading;
import workuptally.measure.Readings;
import workuptally.model.Charge;
import workuptally.model.Limits;

/** 20.0 mL, taken as exact here, of a solution; n = V·c. */
class SolutionChargeTest {
    private final Readings readings = new Readings();
    private final SolutionCharge solutions = new SolutionCharge(readings, Limits.defaults(), SmallBook.substances());

    @ParameterizedTest
    @CsvSource({
        "n-BuLi 2.5 M in hexanes, '', '', '', 2.5",
        "n-BuLi 2.5 M in hexanes, 1.6, '', '', 1.6",
        "n-BuLi 2.5 M in hexanes, 1.6, 1.52, '', 1.52",
        // a content or a strength that was typed goes before the name, readable or not
        "n-BuLi 2.5 M in hexanes, '', '', 23, ",
        "n-BuLi 2.5 M in hexanes, smudged, '', '', ",
        // a listed solution in water is reckoned by mass
        "2 M NaOH, '', '', '', ",
        "S, '', '', '', "
    })
    void strengthIsThatOfTheTitreElseTheLabelElseTheName(
            String material, String label, String titre, String assay, Double molesPerLitre) {
        Charge charge = charge(material, label, titre, assay);
        assertEquals(
                molesPerLitre == null ? OptionalDouble.empty() : OptionalDouble.of(molesPerLitre),
                solutions.molesPerLitre(charge));
    }

    @Test
    void amountIsVolumeTimesStrengthWithTheUncertaintyOfTheStrength() {
        // 1 % of the label by the default limit
        ChargeAmount label = of(charge("S", "1.6", "", ""));
        assertEquals(32.0, millimoles(label).value(), 1e-12);
        assertEquals(0.01, millimoles(label).relativeStandardUncertainty(), 1e-12);
        assertEquals("label molarity of S", reading(label).name());
        assertEquals("charges.csv line 2, Molarity", reading(label).where());
        assertTrue(label.labelAmountMillimoles().isEmpty());
    }

    @Test
    void titrationStandsBesideTheLabel() {
        ChargeAmount titrated = of(charge("S", "1.6", "1.52", ""));
        assertEquals(30.4, millimoles(titrated).value(), 1e-12);
        // 0.5 % as stated
        assertEquals(0.005, millimoles(titrated).relativeStandardUncertainty(), 1e-12);
        assertEquals(32.0, titrated.labelAmountMillimoles().orElseThrow(), 1e-12);
        assertEquals("titre of S", reading(titrated).name());
        assertTrue(of(charge("S", "", "1.52", "")).labelAmountMillimoles().isEmpty());
    }

    @Test
    void spanOfAStrengthWidensTheAmount() {
        assertEquals(
                Math.hypot(0.01, 0.1 / 1.6 / Math.sqrt(3)),
                millimoles(of(charge("S", "1.6 ± 0.1", "", ""))).relativeStandardUncertainty(),
                1e-12);
        assertEquals(
                Math.hypot(0.005, 0.04 / 1.6 / Math.sqrt(3)),
                millimoles(of(charge("S", "1.7", "1.6 ± 0.04", ""))).relativeStandardUncertainty(),
                1e-12);
    }

    @Test
    void strengthByTheNameIsNamedSo() {
        ChargeAmount named = of(charge("n-BuLi 2.5 M in hexanes", "", "", ""));
        assertEquals(50.0, millimoles(named).value(), 1e-12);
        assertEquals(0.01, millimoles(named).relativeStandardUncertainty(), 1e-12);
        assertEquals(
                "molarity of n-BuLi 2.5 M in hexanes by its name",
                reading(named).name());
        assertEquals("n = V·c = 20.00 mL × 2.500 mol/L (name)", named.equation());
    }

    private ChargeAmount of(Charge charge) {
        return solutions.of(charge, false, readings.exact(20), Optional.empty(), OptionalDouble.empty());
    }

    private static MeasuredValue millimoles(ChargeAmount amount) {
        return amount.amountMillimoles().orElseThrow();
    }

    private static Reading reading(ChargeAmount amount) {
        return millimoles(amount).budget().get(0).reading();
    }

    private static Charge charge(String material, String label, String titre, String assay) {
        List<Charge> charges = SmallBook.reaction()
                .but("charges", "Material", material)
                .but("charges", "Molar mass", "")
                .but("charges", "Molarity", label)
                .but("charges", "Titre", titre)
                .but("charges", "Titre uncertainty", titre.isEmpty() ? "" : "0.5")
                .but("charges", "Assay", assay)
                .run()
                .charges();
        return charges.get(0);
    }
}
