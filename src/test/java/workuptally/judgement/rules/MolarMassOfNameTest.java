package workuptally.judgement.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.examples.SmallBook;
import workuptally.model.FindingCode;

/** Molar masses by the formulas of the CRC Handbook: anisole 108.14, methyl benzoate 136.15, citric acid 192.12 and its monohydrate 210.14 g/mol. */
class MolarMassOfNameTest {
    @ParameterizedTest
    @CsvSource({
        "anisole,118.14,STOP",
        "methyl benzoate,163.15,CHECK",
        "methyl benzoate,136.15,''",
        "citric acid,210.14,CHECK",
        "a new ester,163.15,''",
        "P1,310.40,''",
        "C1,310.40,''",
        "K1,310.40,''",
        "W2,310.40,''"
    })
    void aMolarMassIsHeldAgainstTheNameWhereNoFormulaStands(String name, String molarMass, String severities) {
        SmallBook book = SmallBook.reaction()
                .row("charges", "Material", name, "Role", "reagent", "Molar mass", molarMass, "Actual amount", "1.0")
                .but("charges", "Actual unit", "g");
        assertEquals(
                severities,
                book.review().findings().stream()
                        .filter(f -> f.code() == FindingCode.MOLAR_MASS_MISMATCH)
                        .map(f -> f.severity().name())
                        .collect(Collectors.joining("; ")));
    }
}
