package workuptally.tally.amounts;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import workuptally.model.Run;
import workuptally.model.SubstanceName;

/**
 * Products in several forms: what is found of a salt, base, hydrate or solvate counts as the form isolated, mole for mole of the substance.
 *
 * <p>m(isolated) = m(form)·(a(form)/a(isolated))·M(isolated)/M(form), with a the units of the common partner per molecule, so that one mole
 * of a hemisulfate counts as two of the base; a = 1 where the skeletons tell nothing.
 */
public final class FormAccount {
    private final Run run;
    private final MolarMassAccount molarMasses;
    private final Skeletons skeletons;

    public FormAccount(Run run, MolarMassAccount molarMasses) {
        this.run = run;
        this.molarMasses = molarMasses;
        this.skeletons = new Skeletons(run, List.of());
    }

    /** True for two names of one substance: the same one, or two forms of it. */
    public boolean same(String one, String other) {
        return SubstanceName.same(run.countsAs(one), run.countsAs(other));
    }

    /** Grams of the form isolated per gram of a substance: 1 for what has no other form; empty where a molar mass is not known. */
    public OptionalDouble gramsPerGram(String substance) {
        String isolated = run.countsAs(substance);
        if (SubstanceName.same(isolated, substance)) {
            return OptionalDouble.of(1);
        }
        OptionalDouble own = molarMasses.of(substance);
        OptionalDouble counted = molarMasses.of(isolated);
        return own.isPresent() && counted.isPresent()
                ? OptionalDouble.of(molesPerMole(substance) * counted.getAsDouble() / own.getAsDouble())
                : OptionalDouble.empty();
    }

    /** A content as the form isolated; empty where a molar mass for that is missing. */
    Optional<Content> counted(Content content) {
        String isolated = run.countsAs(content.substance());
        OptionalDouble grams = gramsPerGram(content.substance());
        if (SubstanceName.same(isolated, content.substance()) || grams.isEmpty()) {
            return grams.isEmpty() ? Optional.empty() : Optional.of(content);
        }
        return Optional.of(new Content(
                isolated,
                content.kind(),
                content.massGrams().map(m -> m.times(grams.getAsDouble())),
                content.amountMillimoles().map(n -> n.times(molesPerMole(content.substance()))),
                content.upperBoundGrams().isPresent()
                        ? OptionalDouble.of(content.upperBoundGrams().getAsDouble() * grams.getAsDouble())
                        : OptionalDouble.empty(),
                content.percentOf(),
                content.evidence() + " as " + content.substance(),
                content.rests()));
    }

    private double molesPerMole(String substance) {
        String isolated = run.countsAs(substance);
        for (String partner : skeletons.partners()) {
            double own = skeletons.units(substance, partner);
            double counted = skeletons.units(isolated, partner);
            if (own > 0 && counted > 0) {
                return own / counted;
            }
        }
        return 1;
    }
}
