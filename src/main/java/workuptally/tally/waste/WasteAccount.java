package workuptally.tally.waste;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import workuptally.chemistry.IllegalFormulaException;
import workuptally.model.Charge;
import workuptally.model.Field;
import workuptally.model.Field.Entered;
import workuptally.model.Layer;
import workuptally.model.Limit;
import workuptally.model.Limits;
import workuptally.model.Run;
import workuptally.reference.WasteStream;
import workuptally.tally.amounts.Ingredients;
import workuptally.tally.amounts.Substances;
import workuptally.tally.layers.LayerFlow;
import workuptally.tally.layers.LayerIdentity;
import workuptally.tally.layers.LayerTally;
import workuptally.tally.layers.SolidStream;

/**
 * The stream that a layer's make-up suggests, should somebody decide to let it go. The determination is made by trained people under the
 * local rules; the rules here are common practice and their streams come from the reference data.
 */
public final class WasteAccount {
    /** Metals whose aqueous solutions are collected apart (common practice; arsenic to mercury also in 40 CFR 261.24, table 1). */
    private static final Set<String> HEAVY_METALS = Set.of(
            "Cr", "Mn", "Co", "Ni", "Cu", "Zn", "Pd", "Ag", "Cd", "Sn", "Ba", "Pt", "Os", "Hg", "Pb", "Ru", "Rh", "As",
            "Se");

    /** Metals of supported catalysts, which can catch fire when dry (common practice). */
    private static final Set<String> CATALYST_METALS = Set.of("Pd", "Pt", "Rh", "Ru");

    private static final String BY_VOLUME = "; mass by its volume (estimate)";
    private static final String NO_AMOUNT = "; amount not recorded: weigh it";
    private static final String NO_PH = "pH not recorded: ask first";
    private static final double ACIDIC_BELOW_PH = 5;
    private static final double BASIC_ABOVE_PH = 9;
    private static final double ORGANIC_PERCENT_IN_WATER = 10;

    private final Run run;
    private final Limits limits;
    private final Substances substances;
    private final SolidStream solids;

    public WasteAccount(Run run, Limits limits, Substances substances) {
        this.run = run;
        this.limits = limits;
        this.substances = substances;
        this.solids = new SolidStream(run, substances);
    }

    /**
     * One line for each terminal layer: its mass as weighed, by its volume and make-up, or not recorded. What is only planned, and a sample
     * without an amount, has none.
     */
    public List<WasteLine> of(List<LayerTally> layers, LayerFlow flow, List<LayerIdentity> identities) {
        List<WasteLine> lines = new ArrayList<>();
        for (LayerTally layer : layers) {
            OptionalDouble grams = grams(layer, flow.portion(layer.label()));
            boolean counts =
                    !layer.isLost() && (grams.isPresent() || !layer.aliquot() && run.status() != Run.Status.PLANNED);
            if (layer.terminal() && counts) {
                Ingredients portion = flow.portion(layer.label());
                Layer.Phase phase = phaseByDensity(layer, identities);
                boolean unknown = grams.isEmpty()
                        && portion.parts().isEmpty()
                        && phase != Layer.Phase.AQUEOUS
                        && phase != Layer.Phase.SOLID;
                Assignment assignment = unknown
                        ? new Assignment("special", "make-up not known: ask first")
                        : assign(layer.label(), pH(layer), portion, phase);
                Optional<WasteStream> stream = substances.wasteStream(assignment.stream());
                lines.add(new WasteLine(
                        layer.label(),
                        assignment.stream(),
                        stream.map(WasteStream::name).orElse(assignment.stream()),
                        assignment.why()
                                + (grams.isEmpty()
                                        ? NO_AMOUNT
                                        : layer.massGrams().isPresent() ? "" : BY_VOLUME),
                        grams,
                        layer.entry()
                                .flatMap(Layer::status)
                                .map(s -> s == Layer.Status.KEPT || s == Layer.Status.RELEASED)
                                .orElse(true)));
            }
        }
        if (run.status() != Run.Status.PLANNED) {
            flow.unnamedLiquors().forEach((name, portion) -> {
                Assignment assignment = assign(name, Optional.empty(), portion, Layer.Phase.MOTHER_LIQUOR);
                lines.add(new WasteLine(
                        name,
                        assignment.stream(),
                        substances
                                .wasteStream(assignment.stream())
                                .map(WasteStream::name)
                                .orElse(assignment.stream()),
                        assignment.why() + NO_AMOUNT,
                        OptionalDouble.empty(),
                        true));
            });
        }
        return lines;
    }

    /** As weighed, else by the volume and the density of the estimated make-up. */
    private static OptionalDouble grams(LayerTally layer, Ingredients portion) {
        if (layer.massGrams().isPresent()) {
            return OptionalDouble.of(layer.massGrams().get().value());
        }
        if (layer.volumeMillilitres().isEmpty() || portion.millilitres() <= 0) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(
                layer.volumeMillilitres().get().value() * portion.totalGrams() / portion.millilitres());
    }

    /** The line of a layer that is only planned, by what it should be made of. An aqueous one without a pH is left to its pH. */
    public WasteLine expected(String label, Optional<Layer.Phase> phase, Ingredients mixture) {
        Layer.Phase assumed = phase.orElse(Layer.Phase.AQUEOUS);
        Assignment assignment = assign(label, Optional.empty(), mixture, assumed);
        boolean open = assignment.why().equals(NO_PH);
        return new WasteLine(
                label,
                open ? "" : assignment.stream(),
                open
                        ? "aqueous: the pH will tell"
                        : substances
                                .wasteStream(assignment.stream())
                                .map(WasteStream::name)
                                .orElse(assignment.stream()),
                open ? "pH not known yet" : assignment.why(),
                OptionalDouble.of(mixture.totalGrams()),
                false);
    }

    /** The phase as recorded, or the other one where the density contradicts the record. */
    private static Layer.Phase phaseByDensity(LayerTally layer, List<LayerIdentity> identities) {
        boolean swapped = identities.stream()
                .anyMatch(i -> i.label().equals(layer.label()) && i.verdict() == LayerIdentity.Verdict.SWAPPED);
        Layer.Phase recorded = layer.phase().orElse(Layer.Phase.AQUEOUS);
        if (!swapped) {
            return recorded;
        }
        return recorded == Layer.Phase.ORGANIC ? Layer.Phase.AQUEOUS : Layer.Phase.ORGANIC;
    }

    private Assignment assign(String label, Optional<Entered> pH, Ingredients mixture, Layer.Phase phase) {
        double halogenated = halogenatedPercent(mixture);
        boolean isHalogenated = halogenated > limits.value(Limit.HALOGEN_LIMIT);
        double organic = organicPercent(mixture);
        if (phase == Layer.Phase.SOLID) {
            if (isHalogenated) {
                return new Assignment("filter-cake-halogenated", "solid wet with halogenated solvent");
            }
            SolidStream.Suggestion solid = solids.of(label, metal(), holdsAny(CATALYST_METALS));
            return new Assignment(solid.stream(), solid.why());
        }
        if (isHalogenated && organic > 50) {
            return new Assignment("halogenated-organic", percent(halogenated) + " halogenated solvent");
        }
        if (phase == Layer.Phase.RAG && holdsHeavyMetal()) {
            return new Assignment("special", "rag layer with " + metal().orElse("metal") + " solids: ask first");
        }
        if (organic > 50 || (mixture.parts().isEmpty() && phase != Layer.Phase.AQUEOUS)) {
            return new Assignment("non-halogenated-organic", percent(organic) + " organic solvent");
        }
        if (phase == Layer.Phase.AQUEOUS && holdsHeavyMetal()) {
            return new Assignment("aqueous-heavy-metal", "run charged with " + metal().orElse("a heavy metal"));
        }
        if (pH.isPresent() && pH.get().value() < ACIDIC_BELOW_PH) {
            return new Assignment("aqueous-acidic", "aqueous, pH " + pH.get().asTyped());
        }
        if (pH.isPresent() && pH.get().value() > BASIC_ABOVE_PH) {
            return new Assignment("aqueous-basic", "aqueous, pH " + pH.get().asTyped());
        }
        if (organic > ORGANIC_PERCENT_IN_WATER) {
            return new Assignment("aqueous-organic", "aqueous with " + percent(organic) + " organic solvent");
        }
        return pH.isPresent()
                ? new Assignment("aqueous-neutral", "aqueous, pH " + pH.get().asTyped())
                : new Assignment("special", NO_PH);
    }

    private static Optional<Entered> pH(LayerTally layer) {
        return layer.entry().map(Layer::pH).flatMap(Field::entered);
    }

    private double halogenatedPercent(Ingredients mixture) {
        return share(
                mixture,
                name -> substances.solvent(name).filter(s -> s.halogenated()).isPresent());
    }

    private double organicPercent(Ingredients mixture) {
        return share(mixture, substances::isOrganicSolvent);
    }

    private static double share(Ingredients mixture, java.util.function.Predicate<String> counts) {
        double total = mixture.totalGrams();
        return total == 0
                ? 0
                : 100
                        * mixture.parts().entrySet().stream()
                                .filter(e -> counts.test(e.getKey()))
                                .mapToDouble(e -> e.getValue().grams())
                                .sum()
                        / total;
    }

    private boolean holdsHeavyMetal() {
        return metal().isPresent();
    }

    private boolean holdsAny(Set<String> metals) {
        return run.charges().stream().anyMatch(c -> elements(c).stream().anyMatch(metals::contains));
    }

    private Optional<String> metal() {
        return run.charges().stream()
                .filter(c -> elements(c).stream().anyMatch(HEAVY_METALS::contains))
                .map(Charge::material)
                .findFirst();
    }

    private Set<String> elements(Charge charge) {
        try {
            return charge.formula().isBlank()
                    ? Set.of()
                    : substances.formula(charge.formula()).composition().keySet();
        } catch (IllegalFormulaException e) {
            return Set.of();
        }
    }

    private static String percent(double value) {
        return String.format(Locale.ROOT, "%.0f %%", value);
    }

    private record Assignment(String stream, String why) {}
}
