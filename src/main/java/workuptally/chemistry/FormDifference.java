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

    /**
     * What may be there beside a substance.
     *
     * @param name for example {@code HCl}
     * @param added formula of what is added
     * @param removed formula of what it replaces, if anything
     * @param counts how many of it are usual
     */
    public record Form(String name, Formula added, Optional<Formula> removed, List<Double> counts) {
        /** Copies the list. */
        public Form {
            counts = List.copyOf(counts);
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
     * @param forms the forms that come into question
     * @return empty where nothing comes within 0.05 g/mol
     */
    public static Optional<FormDifference> of(double differenceGramsPerMole, AtomicWeights weights, List<Form> forms) {
        double size = Math.abs(Require.finite(differenceGramsPerMole, "difference"));
        List<FormDifference> near = new ArrayList<>();
        for (Form form : forms) {
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
