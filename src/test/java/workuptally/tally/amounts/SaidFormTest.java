package workuptally.tally.amounts;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.reference.Reference;
import workuptally.reference.substances.SaltForm;

class SaidFormTest {
    private static final Substances SUBSTANCES = new Substances(Reference.load());

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
        "p-toluenesulfonic acid monohydrate, C7H10O4S, ''",
        "p-toluenesulfonic acid monohydrate, C7H8O3S, hydrate",
        "copper sulfate pentahydrate, CuH10O9S, ''",
        "citric acid monohydrate, C6H10O8, ''",
        "citric acid monohydrate, C6H8O7, hydrate",
        "sodium acetate trihydrate, C2H9NaO5, ''",
        "oxalic acid dihydrate, C2H6O6, ''",
        "oxalic acid dihydrate, C2H4O6, hydrate",
        "HOBt hydrate, C6H7N3O2, ''",
        "HOBt hydrate, C6H5N3O, hydrate",
        "a new acid monohydrate, C9H12O5, hydrate",
        "cobalt chloride hydrate, CoCl2(H2O)6, ''",
        "cobalt chloride hydrate, CoCl2{H2O}6, ''",
        "cobalt chloride hydrate, [Co(OH2)6]Cl2, ''"
    })
    void formulaHasToShowTheFormThatTheNameSpeaksOf(String name, String formula, String missing) {
        assertEquals(
                missing,
                SaidForm.contradicted(SUBSTANCES, name, formula)
                        .map(SaltForm::word)
                        .orElse(""));
    }
}
