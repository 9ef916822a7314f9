package workuptally.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.material.MaterialReader;
import workuptally.reference.substances.MaterialRow;
import workuptally.reference.substances.UsualForm;

/** Goods as suppliers sell them; contents of labels, common practice. */
class UsualFormTest {
    private static UsualForm of(String material) {
        return MaterialReader.packed()
                .read(material)
                .main()
                .row()
                .flatMap(MaterialRow::usualForm)
                .orElseThrow();
    }

    @ParameterizedTest
    @CsvSource({"sodium hydride, 60", "peracetic acid, 40", "MMPP, 80"})
    void goodsThatAreNeverPureTellTheirMost(String material, double most) {
        UsualForm form = of(material);
        assertEquals(OptionalDouble.of(most), form.most(), form.words());
        assertTrue(form.isWeakerThan(90));
    }

    @Test
    void formWithoutAFigureTellsNone() {
        assertEquals(OptionalDouble.empty(), of("trifluoroperacetic acid").most());
        assertFalse(of("trifluoroperacetic acid").isWeakerThan(90));
    }
}
