package workuptally.book;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import workuptally.chemistry.Formula;
import workuptally.chemistry.IllegalFormulaException;
import workuptally.material.Material;
import workuptally.material.MaterialReader;
import workuptally.material.State;
import workuptally.material.Strength;
import workuptally.reference.solutions.Wash;

/** Names and formulas of {@code bench-entries.csv}: two spellings of one material mean the same parts; what is refused there is never used. */
class NamesOfEntriesTest {
    /** A solute and its solvent side by side: named as a material that no table has, since both might be one name. */
    private static final String WITHOUT_IN = "4N HCl dioxane";

    private static final String CARRIER = " + Water";

    @Test
    void everyNameOfAMaterialMeansWhatItsOtherSpellingMeans() throws Exception {
        List<String> wrong = new ArrayList<>();
        for (BenchEntry entry : BenchEntry.all()) {
            if (!entry.heading().equals("Material")
                    || !entry.kind().equals("text")
                    || entry.typed().equals(WITHOUT_IN)) {
                continue;
            }
            String expected = BenchEntry.cells(entry.value()).get("Material");
            Material got = MaterialReader.packed().read(entry.typed());
            if (!sameMeaning(got, MaterialReader.packed().read(expected)) || got.state() == State.UNLISTED) {
                wrong.add(entry.said() + ": " + meaning(got) + " for "
                        + meaning(MaterialReader.packed().read(expected)));
            }
        }
        assertEquals("", String.join("\n", wrong));
    }

    /** Grams per volume are a strength that is understood; the others are unlisted, or listed without the strength that is asked for. */
    @Test
    void nameThatIsRefusedIsNoMaterialOfKnownStrength() throws Exception {
        List<String> wrong = new ArrayList<>();
        for (BenchEntry entry : BenchEntry.all()) {
            if (entry.heading().equals("Material") && entry.kind().equals("refuse")) {
                Material read = MaterialReader.packed().read(entry.typed());
                boolean byVolume = read.main()
                        .strength()
                        .filter(s -> s.kind() == Strength.Kind.GRAMS_PER_100_MILLILITRES)
                        .isPresent();
                boolean strength = read.main()
                        .strength()
                        .filter(s -> s.value().isPresent())
                        .isPresent();
                boolean solvent = read.solvent().isPresent();
                if (!byVolume && (strength || solvent || read.main().solution().isPresent())) {
                    wrong.add(entry.said() + ": " + meaning(read));
                }
            }
        }
        assertEquals("", String.join("\n", wrong));
    }

    @Test
    void everyFormulaIsReadOrRefused() throws Exception {
        List<String> wrong = new ArrayList<>();
        for (BenchEntry entry : BenchEntry.all()) {
            if (entry.heading().equals("Formula")) {
                String got = formula(entry.typed());
                String expected = entry.kind().equals("refuse") ? "refused" : formula(entry.value());
                if (!got.equals(expected)) {
                    wrong.add(entry.said() + ": " + got + " for " + expected);
                }
            }
        }
        assertEquals("", String.join("\n", wrong));
    }

    private static String formula(String typed) {
        try {
            return Formula.parse(typed).toString();
        } catch (IllegalFormulaException e) {
            return "refused";
        }
    }

    private static boolean sameMeaning(Material one, Material other) {
        Optional<Wash> wash = one.wash().or(() -> one.main().solution());
        Optional<Wash> wanted = other.wash().or(() -> other.main().solution());
        boolean sameWash = wash.isPresent()
                && wanted.isPresent()
                && wash.get().formula().equals(wanted.get().formula())
                && Math.abs(strength(wash.get()) - strength(wanted.get())) < 1e-3 * strength(wanted.get());
        return sameWash
                || meaning(one).replace(CARRIER, "").equals(meaning(other).replace(CARRIER, ""));
    }

    private static double strength(Wash wash) {
        return wash.concentration().molarityMolesPerLitre().orElse(-1);
    }

    private static String meaning(Material material) {
        return material.parts().stream()
                .map(p -> p.name()
                        + p.strength().map(s -> " " + s.kind() + s.value()).orElse("")
                        + (p.volumeFraction().isPresent()
                                ? " " + p.volumeFraction().getAsDouble()
                                : ""))
                .sorted(Comparator.naturalOrder())
                .collect(Collectors.joining(" + "));
    }
}
