package workuptally.chemistry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.openscience.cdk.interfaces.IMolecularFormula;
import org.openscience.cdk.silent.SilentChemObjectBuilder;
import org.openscience.cdk.tools.manipulator.MolecularFormulaManipulator;
import workuptally.published.ReferenceWeights;
import workuptally.reference.Reference;
import workuptally.reference.tables.ReferenceTable;

/** Molar masses against the Chemistry Development Kit (cdk-formula), which carries its own atomic weights. */
class FormulaAgainstCdkTest {
    /** Elements whose weight has not been revised by more than the tolerance between the two tables. */
    private static final List<String> ELEMENTS = List.of(
            "C", "H", "N", "O", "F", "Na", "Mg", "Al", "Si", "P", "S", "Cl", "K", "Ca", "Cr", "Mn", "Fe", "Co", "Ni",
            "Cu", "Br", "Pd", "Ag", "Sn", "I", "Cs", "Ba", "Pt", "Au", "B", "Ti");

    /** 0.02 %: the abridged weights are rounded to five digits and some ordinary values (S, Cl, B) differ in the fifth. */
    private static final double RELATIVE_TOLERANCE = 2e-4;

    private static final AtomicWeights WEIGHTS = ReferenceWeights.load();

    static Stream<String> referenceFormulas() {
        Set<String> formulas = new LinkedHashSet<>();
        for (ReferenceTable table : Reference.load().tables()) {
            for (String heading : List.of("formula", "hydrate")) {
                int column = table.columns().indexOf(heading);
                if (column >= 0) {
                    table.rows().forEach(row -> formulas.add(row.get(column)));
                }
            }
        }
        // The kit weighs zinc by isotope masses of its own, 65.396; the commission says 65.38.
        return formulas.stream().filter(formula -> formula.matches("[A-Z][A-Za-z0-9()]*") && !formula.equals("Zn"));
    }

    private static double kitMass(String hill) {
        IMolecularFormula formula =
                MolecularFormulaManipulator.getMolecularFormula(hill, SilentChemObjectBuilder.getInstance());
        return MolecularFormulaManipulator.getMass(formula, MolecularFormulaManipulator.MolWeight);
    }

    @ParameterizedTest
    @MethodSource("referenceFormulas")
    void molarMassesOfTheReferenceTablesAgree(String formula) {
        double kit = kitMass(formula);
        assertTrue(kit > 0, formula);
        assertEquals(kit, Formula.parse(formula).molarMass(WEIGHTS).gramsPerMole(), RELATIVE_TOLERANCE * kit, formula);
    }

    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13, 14, 15, 16, 17, 18, 19, 20})
    void molarMassesOfGeneratedFormulasAgree(long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < 50; i++) {
            String nested = nested(random);
            Formula parsed = Formula.parse(nested);
            double kit = kitMass(flat(parsed));
            assertEquals(
                    kit,
                    parsed.molarMass(WEIGHTS).gramsPerMole(),
                    RELATIVE_TOLERANCE * kit,
                    "seed " + seed + " " + nested);
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {21, 22, 23, 24, 25})
    void nestedBracketsGiveTheCompositionTheKitFinds(long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < 20; i++) {
            String nested = nested(random);
            IMolecularFormula kit =
                    MolecularFormulaManipulator.getMolecularFormula(nested, SilentChemObjectBuilder.getInstance());
            Map<String, Double> counts = new TreeMap<>();
            kit.isotopes()
                    .forEach(atom -> counts.merge(atom.getSymbol(), (double) kit.getIsotopeCount(atom), Double::sum));
            assertEquals(counts, new TreeMap<>(Formula.parse(nested).composition()), "seed " + seed + " " + nested);
        }
    }

    private static String nested(Random random) {
        StringBuilder text = new StringBuilder(group(random));
        if (random.nextBoolean()) {
            text.append('(').append(group(random)).append(')').append(2 + random.nextInt(4));
        }
        return text.append(group(random)).toString();
    }

    private static String group(Random random) {
        StringBuilder text = new StringBuilder();
        int parts = 1 + random.nextInt(4);
        for (int i = 0; i < parts; i++) {
            text.append(ELEMENTS.get(random.nextInt(ELEMENTS.size())));
            int count = 1 + random.nextInt(24);
            text.append(count == 1 ? "" : count);
        }
        return text.toString();
    }

    private static String flat(Formula formula) {
        StringBuilder text = new StringBuilder();
        formula.composition().forEach((symbol, count) -> text.append(symbol).append(Math.round(count)));
        return text.toString();
    }
}
