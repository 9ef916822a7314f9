package workuptally.chemistry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.published.ReferenceWeights;
import workuptally.reference.Reference;

class FormDifferenceTest {
    private static final AtomicWeights WEIGHTS = ReferenceWeights.load();
    private static final List<FormDifference.Form> FORMS = Reference.load().addedForms().stream()
            .map(row -> new FormDifference.Form(
                    row.name(), Formula.parse(row.added()), row.removed().map(Formula::parse), row.numbers()))
            .toList();

    /** Differences by stoichiometry, common practice: HCl 36.46, water 18.02, Na for H 21.98, K for H 38.09. */
    @ParameterizedTest
    @CsvSource({
        "36.46, HCl",
        "-36.46, HCl",
        "72.92, 2 HCl",
        "18.23, 0.5 HCl",
        "18.02, H2O",
        "126.11, 7 H2O",
        "27.02, 1.5 H2O",
        "21.98, Na−H",
        "38.09, K−H",
        "43.96, 2 Na−H",
        "114.02, TFA",
        "80.91, HBr",
        "60.05, AcOH",
        "17.03, NH3",
        "98.07, H2SO4",
        "49.04, 0.5 H2SO4"
    })
    void usualFormsAreNamed(double difference, String words) {
        assertEquals(
                Optional.of(words),
                FormDifference.of(difference, WEIGHTS, FORMS).map(FormDifference::words));
    }

    @Test
    void differenceThatNothingExplainsIsEmpty() {
        assertTrue(FormDifference.of(0, WEIGHTS, FORMS).isEmpty());
        assertTrue(FormDifference.of(25.0, WEIGHTS, FORMS).isEmpty());
        assertTrue(FormDifference.of(36.52, WEIGHTS, FORMS).isEmpty());
        assertTrue(FormDifference.of(36.50, WEIGHTS, FORMS).isPresent());
        assertThrows(IllegalArgumentException.class, () -> FormDifference.of(Double.NaN, WEIGHTS, FORMS));
    }

    @Test
    void benzylamineHydrochlorideTypedAsTheFreeBaseIsHcl() {
        double salt = Formula.parse("C7H10ClN").molarMass(WEIGHTS).gramsPerMole();
        FormDifference difference =
                FormDifference.of(salt - 107.15, WEIGHTS, FORMS).orElseThrow();
        assertEquals("HCl", difference.name());
        assertEquals(36.46, difference.gramsPerMole(), 0.01);
        assertEquals(1, difference.count(), 0);
    }
}
