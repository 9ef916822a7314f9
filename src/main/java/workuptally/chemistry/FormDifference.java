package workuptally.chemistry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Names the difference between two molar masses where one form of a substance was taken for another: salt, hydrate or solvate.
 *
 * @param name for example {@code HCl}, {@code H2O} or {@code Na−H} (sodium in place of a hydrogen)
 * @param count how many of it; halves for hemi-salts and hemihydrates
 * @param gramsPerMole count times the mass of one, g/mol
 */
public record FormDifference(String name, double count, double gramsPerMole) {
    /** How near a difference must come, g/mol. Source: common practice. */
    public static final double TOLERANCE_GRAMS_PER_MOLE = 0.05;

    private static final List<Form> FORMS = List.of(
            new Form("HCl", "HCl", "", 0.5, 1, 2, 3),
            new Form("H2O", "H2O", "", 0.5, 1, 1.5, 2, 2.5, 3, 4, 5, 6, 7, 8, 9, 10, 12),
            new Form("Na−H", "Na", "H", 1, 2, 3),
            new Form("K−H", "K", "H", 1, 2, 3),
            new Form("Li−H", "Li", "H", 1, 2),
            new Form("NH3", "NH3", "", 1, 2),
            new Form("HBr", "HBr", "", 1, 2),
            new Form("HI", "HI", "", 1),
            new Form("HF", "HF", "", 1),
            new Form("HBF4", "HBF4", "", 1),
            new Form("HPF6", "HPF6", "", 1),
            new Form("H2SO4", "H2SO4", "", 0.5, 1),
            new Form("HNO3", "HNO3", "", 1),
            new Form("H3PO4", "H3PO4", "", 1),
            new Form("TFA", "C2HF3O2", "", 1, 2),
            new Form("AcOH", "C2H4O2", "", 1, 2),
            new Form("HCO2H", "CH2O2", "", 1),
            new Form("oxalic acid", "C2H2O4", "", 0.5, 1),
            new Form("maleic or fumaric acid", "C4H4O4", "", 0.5, 1),
            new Form("succinic acid", "C4H6O4", "", 0.5, 1),
            new Form("tartaric acid", "C4H6O6", "", 0.5, 1),
            new Form("citric acid", "C6H8O7", "", 1),
            new Form("MsOH", "CH4O3S", "", 1),
            new Form("TsOH", "C7H8O3S", "", 1),
            new Form("HCl·H2O", "H3ClO", "", 1),
            new Form("MeOH", "CH4O", "", 1),
            new Form("EtOH", "C2H6O", "", 1),
            new Form("Et3N", "C6H15N", "", 1));

    private record Form(String name, Formula added, Optional<Formula> removed, List<Double> counts) {
        Form(String name, String added, String removed, double... counts) {
            this(
                    name,
                    Formula.parse(added),
                    removed.isEmpty() ? Optional.empty() : Optional.of(Formula.parse(removed)),
                    java.util.Arrays.stream(counts).boxed().toList());
        }

        double gramsPerMole(AtomicWeights weights) {
            return added.molarMass(weights).gramsPerMole()
                    - removed.map(formula -> formula.molarMass(weights).gramsPerMole())
                            .orElse(0.0);
        }
    }

    /**
     * The form that explains a difference, the nearest first if several come near.
     *
     * @param differenceGramsPerMole larger less smaller molar mass, g/mol; the sign is not looked at
     * @param weights atomic weights
     * @return empty where nothing comes within 0.05 g/mol
     */
    public static Optional<FormDifference> of(double differenceGramsPerMole, AtomicWeights weights) {
        double size = Math.abs(Require.finite(differenceGramsPerMole, "difference"));
        List<FormDifference> near = new ArrayList<>();
        for (Form form : FORMS) {
            double one = form.gramsPerMole(weights);
            for (double count : form.counts()) {
                if (Math.abs(count * one - size) <= TOLERANCE_GRAMS_PER_MOLE) {
                    near.add(new FormDifference(form.name(), count, count * one));
                }
            }
        }
        return near.stream().min(Comparator.comparingDouble(form -> Math.abs(form.gramsPerMole() - size)));
    }

    /** In words, for example {@code 2 HCl}; a single one without the number. */
    public String words() {
        if (count == 1) {
            return name;
        }
        return (count == Math.rint(count) ? Long.toString(Math.round(count)) : Double.toString(count)) + " " + name;
    }
}
