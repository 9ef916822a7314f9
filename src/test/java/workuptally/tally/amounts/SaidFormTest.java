package workuptally.tally.amounts;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.reference.Reference;
import workuptally.reference.substances.SaltForm;

class SaidFormTest {
    private static final Reference REFERENCE = Reference.load();

    @ParameterizedTest
    @CsvSource({
        // name, formula, word of the form that the formula does not show; none where they agree
        "benzylamine hydrochloride, C7H9N, hydrochloride",
        "benzylamine hydrochloride, C7H10ClN, ''",
        "benzylamine hydrochloride, '', ''",
        "benzylamine hydrochloride, not a formula, ''",
        "benzylamine, C7H9N, ''",
        "oxalic acid hydrate, C2H2O4, hydrate",
        "oxalic acid hydrate, CH2O2, hydrate",
        "oxalic acid hydrate, C2H2O4.2H2O, ''",
        "oxalic acid hydrate, C2H2O4·2H2O, ''",
        "oxalic acid hydrate, C2H2O4*2H2O, ''",
        "oxalic acid hydrate, C2H2O4·H₂O, ''",
        "potassium carbonate hydrate, K2CO3.1.5H2O, ''",
        "calcium sulfate hydrate, CaSO4 · ½ H2O, ''",
        "calcium sulfate hydrate, CaSO4 x 2 H2O, ''",
        "glucose hydrate, C6H12O6, hydrate",
        "cobalt chloride hydrate, CoCl2(H2O)6, ''",
        "cobalt chloride hydrate, CoCl2{H2O}6, ''",
        "cobalt chloride hydrate, [Co(OH2)6]Cl2, ''"
    })
    void formulaHasToShowTheFormThatTheNameSpeaksOf(String name, String formula, String missing) {
        assertEquals(
                missing,
                SaidForm.contradicted(REFERENCE, name, formula)
                        .map(SaltForm::word)
                        .orElse(""));
    }
}
