package workuptally.book;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What headings of lists mean by themselves; common practice. */
class HeadingWordsTest {
    private static final HeadingWords WORDS = new HeadingWords();

    private static Set<String> meanings(String heading) {
        List<HeadingSense> senses = WORDS.senses(heading);
        return senses.stream()
                .map(s -> s.subject() + (s.number() > 1 ? s.number() : "") + "." + s.quantity()
                        + s.unit().map(u -> " " + u.symbol()).orElse(""))
                .collect(Collectors.toSet());
    }

    @ParameterizedTest
    @CsvSource({
        "Exp. No., run.id",
        "Versuchs-Nr., run.id",
        "N° essai, run.id",
        "Datum, run.date",
        "Starting material, substrate.",
        "SM 2, substrate2.",
        "SM2 (mg), substrate2.mass mg",
        "Edukteinwaage [g], substrate.mass g",
        "m (Edukt) / mg, substrate.mass mg",
        "Masse in mg, .mass mg",
        "mg, .mass mg",
        "g crude, crude.mass g",
        "Rohprodukt: Masse (g), crude.mass g",
        "Masse molaire (g/mol), .molar mass g/mol",
        "Product: g/mol, product.molar mass g/mol",
        "M / g/mol, .molar mass g/mol",
        "c (M), .molarity mol/L",
        "Equiv., .equivalents equiv",
        "Catalyst loading (mol %), catalyst.equivalents mol %",
        "Ausbeute (%), product.yield %",
        "Yield (g), product.mass g",
        "Rendement, product.yield",
        "Lösungsmittel, solvent.",
        "Solvent volume (mL), solvent.volume mL",
        "Theoretical yield (g), run.computed here g",
        "Reaction time (h), run.no table"
    })
    void understood(String heading, String meaning) {
        assertEquals(Set.of(meaning), meanings(heading), heading);
    }

    @ParameterizedTest
    @ValueSource(strings = {"Menge", "M", "Brut", "Titre", "%", "Product (%)"})
    void severalMeanings(String heading) {
        assertTrue(WORDS.senses(heading).size() > 1, () -> heading + meanings(heading));
    }

    @ParameterizedTest
    @ValueSource(strings = {"Zebra", "Starting material reagent", "HPLC purity (%)", "Mass (°C)", "SM batch no", ""})
    void notUnderstood(String heading) {
        assertEquals(List.of(), WORDS.senses(heading), heading);
    }
}
