package workuptally.book.lists;

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
                .map(s -> s.subject() + (s.number() > 1 ? s.number() : "")
                        + (s.called().isEmpty() ? "" : ":" + s.called()) + "." + s.quantity()
                        + s.unit().map(u -> " " + u.symbol()).orElse(""))
                .collect(Collectors.toSet());
    }

    @ParameterizedTest
    @CsvSource({
        "Exp. No., run.id",
        "Lsm., solvent.",
        "Coupling agent, reagent.",
        "Titre (mol/L), .titre mol/L",
        "Titer (M), .titre mol/L",
        "\u03bd, .coefficient",
        "Stoich. coeff., .coefficient",
        "yield B, product2.yield",
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
        "MG (g/mol), .molar mass g/mol",
        "Edukt: MG (g/mol), substrate.molar mass g/mol",
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
        "Reaction time (h), run.no table",
        "purity (HPLC), run.no table",
        "HPLC purity (%), run.no table %",
        "KF %, run.no table %",
        "Lösemittel, solvent.",
        "Solvens, solvent.",
        "LM, solvent.",
        "M(Edukt) g/mol, substrate.molar mass g/mol",
        "Ausbeute (% d. Th.), product.yield %",
        "Yield %th, product.yield %",
        "Edukt B: m / g, substrate2.mass g",
        "Reagent C, reagent3.",
        "c (mol/L), .molarity mol/L",
        "Input (kg), substrate.mass kg",
        "Output (kg), product.mass kg",
        "Acid MW, acid.molar mass",
        "Amine (mg), amine.mass mg",
        "eq amine, amine.equivalents equiv",
        "HATU (eq), reagent:HATU.equivalents equiv",
        "m (HATU) / mg, reagent:HATU.mass mg",
        "DIPEA (mL), reagent:DIPEA.volume mL",
        "DMF (mL), solvent:DMF.volume mL",
        "benzaldehyde (g), reagent:benzaldehyde.mass g",
        "toluène (mL), solvent:toluène.volume mL",
        "dibenzalacetone crude (g), crude:dibenzalacetone.mass g"
    })
    void understood(String heading, String meaning) {
        assertEquals(Set.of(meaning), meanings(heading), heading);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Menge",
                "M",
                "MG",
                "Produkt: MG",
                "PRODUCT MG",
                "Brut",
                "Titre",
                "%",
                "Product (%)",
                "MgSO4 (g)",
                "brine (mL)"
            })
    void severalMeanings(String heading) {
        assertTrue(WORDS.senses(heading).size() > 1, () -> heading + meanings(heading));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Zebra",
                "Starting material reagent",
                "Product flask (g)",
                "V crude pot (mL)",
                "Mass (°C)",
                "SM batch no",
                ""
            })
    void notUnderstood(String heading) {
        assertEquals(List.of(), WORDS.senses(heading), heading);
    }
}
