package workuptally.book.words;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FootnoteMarksTest {
    @ParameterizedTest
    @CsvSource({
        "Material, benzoic acid¹, benzoic acid",
        "Material, benzoic acidᵃ, benzoic acid",
        "Material, benzoic acid *, benzoic acid",
        "Product, P², P",
        "Actual unit, mg¹, mg",
        "Formula, C7H6O2¹, C7H6O2",
        "Formula, C7H6OHᵃ, C7H6OH",
        // may be C7H6O2 with its last digit raised for lowered
        "Formula, C7H6O², C7H6O²",
        "Actual unit, cm³, cm³",
        "Vessel, E², E²",
        "Material, Na⁺, Na⁺",
        "Material, benzoic acid, benzoic acid"
    })
    void aMarkBehindANameOrUnitIsNoPartOfIt(String heading, String typed, String name) {
        assertEquals(name, FootnoteMarks.off(heading, typed));
    }
}
