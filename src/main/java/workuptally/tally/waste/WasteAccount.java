package workuptally.tally.waste;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import workuptally.model.Field;
import workuptally.model.Field.Entered;
import workuptally.model.Layer;
import workuptally.model.Limit;
import workuptally.model.Limits;
import workuptally.model.Run;
import workuptally.reference.waste.LayerFacts;
import workuptally.reference.waste.StreamRule;
import workuptally.reference.waste.WasteStream;
import workuptally.tally.amounts.Ingredients;
import workuptally.tally.amounts.Substances;
import workuptally.tally.amounts.UnreadParts;
import workuptally.tally.layers.LayerFlow;
import workuptally.tally.layers.LayerGraph;
import workuptally.tally.layers.LayerIdentity;
import workuptally.tally.layers.LayerTally;
import workuptally.tally.layers.SolidOrigin;
import workuptally.tally.layers.SolventMismatch;
import workuptally.tally.layers.StatedDistillates;

/**
 * The stream that a layer's make-up suggests, should somebody decide to let it go. The determination is made by trained people under the
 * local rules; rules and streams come from the reference data.
 */
public final class WasteAccount {
    private static final String BY_VOLUME = "; mass by its volume (estimate)";
    private static final String NO_AMOUNT = "; amount not recorded: weigh it";
    private static final String NO_RULE = "no rule for streams fits: ask first";

    /** Organic solvent from which on a liquid goes by it, mass %; the rules of liquids ask the same. */
    private static final double HALF = 50;

    private final Run run;
    private final Limits limits;
    private final Substances substances;
    private final LayerGraph graph;
    private final SolidOrigin solids;
    private final PortionClasses classes;
    private final UnreadParts unreadParts;

    /** With what the layers may still hold. */
    public WasteAccount(Run run, Limits limits, Substances substances, PortionClasses classes) {
        this.run = run;
        this.limits = limits;
        this.substances = substances;
        this.graph = LayerGraph.of(run);
        this.solids = new SolidOrigin(run, substances, graph);
        this.classes = classes;
        this.unreadParts = new UnreadParts(run, substances);
    }

    /**
     * One line for each terminal layer: its mass as weighed, by its volume and make-up, or not recorded. What is only planned, and a sample
     * without an amount, has none.
     */
    public List<WasteLine> of(List<LayerTally> layers, LayerFlow flow, List<LayerIdentity> identities) {
        List<WasteLine> lines = new ArrayList<>();
        StatedDistillates distillates = new StatedDistillates(run, limits, substances, flow, layers);
        for (LayerTally layer : layers) {
            OptionalDouble grams = grams(layer, flow.portion(layer.label()));
            boolean counts =
                    !layer.isLost() && (grams.isPresent() || !layer.aliquot() && run.status() != Run.Status.PLANNED);
            if (layer.terminal() && counts) {
                Ingredients portion = flow.portion(layer.label());
                Layer.Phase phase = phaseByDensity(layer, identities);
                List<String> leftOut = distillates.of(layer).stream()
                        .filter(SolventMismatch::isLeftOut)
                        .map(SolventMismatch::solvent)
                        .toList();
                Assignment assignment =
                        assign(layer.label(), pH(layer), portion, phase, whole(layer, grams, flow), leftOut);
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
                                .flatMap(l -> l.custody().status())
                                .map(WasteLine.Standing::of)
                                .orElse(WasteLine.Standing.KEPT)));
            }
        }
        if (run.status() != Run.Status.PLANNED) {
            flow.unnamedLiquors().forEach((name, portion) -> {
                Assignment assignment = assign(
                        name, Optional.empty(), portion, Layer.Phase.MOTHER_LIQUOR, OptionalDouble.empty(), List.of());
                lines.add(new WasteLine(
                        name,
                        assignment.stream(),
                        substances
                                .wasteStream(assignment.stream())
                                .map(WasteStream::name)
                                .orElse(assignment.stream()),
                        assignment.why() + NO_AMOUNT,
                        OptionalDouble.empty(),
                        WasteLine.Standing.KEPT));
            });
        }
        return lines;
    }

    /** The mass that a metal is spread over: of a sample that of the layer it was taken from, g. */
    private OptionalDouble whole(LayerTally layer, OptionalDouble grams, LayerFlow flow) {
        double source = layer.aliquot()
                ? graph.parents(layer.label()).stream()
                        .mapToDouble(parent -> flow.portion(parent).totalGrams())
                        .sum()
                : 0;
        return source > 0 ? OptionalDouble.of(source) : grams;
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
        Assignment assignment =
                assign(label, Optional.empty(), mixture, assumed, OptionalDouble.of(mixture.totalGrams()), List.of());
        boolean open = assignment.waitsForPH();
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
                WasteLine.Standing.PLANNED);
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

    private Assignment assign(
            String label,
            Optional<Entered> pH,
            Ingredients mixture,
            Layer.Phase phase,
            OptionalDouble grams,
            List<String> leftOut) {
        SolventContent shares = shares(mixture);
        double halogenated = shares.halogenatedPercent();
        boolean organic = phase == Layer.Phase.ORGANIC || shares.organicPercent() > HALF;
        Map<String, String> holds = organic && phase != Layer.Phase.RAG && phase != Layer.Phase.SOLID
                ? classes.inOrganic(label, phase, grams)
                : classes.in(label, phase);
        Optional<SolidOrigin.Origin> solid = Optional.of(phase)
                .filter(p -> p == Layer.Phase.SOLID)
                .map(p -> solids.of(label, Optional.ofNullable(holds.get(PortionClasses.HEAVY_METAL))));
        List<String> unread = run.layer(label).map(unreadParts::of).orElse(List.of());
        LayerFacts facts = new LayerFacts(
                phase.word(),
                holds,
                halogenated > limits.value(Limit.HALOGEN_LIMIT),
                halogenated,
                shares.organicPercent(),
                shares.acidPercent(),
                pH.map(p -> OptionalDouble.of(p.value())).orElse(OptionalDouble.empty()),
                pH.map(WasteAccount::inWords).orElse(""),
                leftOut.isEmpty() ? makeUp(mixture, grams.isPresent(), unread) : LayerFacts.MakeUp.CONTRADICTED,
                leftOut.isEmpty() ? unread : leftOut,
                solid.map(SolidOrigin.Origin::kind),
                solid.map(SolidOrigin.Origin::words).orElse(""));
        Optional<StreamRule> rule = substances.streamRule(facts);
        return rule.map(r -> new Assignment(
                        r.stream(),
                        r.because(facts),
                        r.when().pH().known().filter(known -> !known).isPresent()))
                .orElseGet(() -> new Assignment(substances.askFirst().key(), NO_RULE, false));
    }

    private static LayerFacts.MakeUp makeUp(Ingredients mixture, boolean amountKnown, List<String> unread) {
        if (!unread.isEmpty()) {
            return LayerFacts.MakeUp.UNREAD;
        }
        if (!mixture.parts().isEmpty()) {
            return LayerFacts.MakeUp.KNOWN;
        }
        return amountKnown ? LayerFacts.MakeUp.UNLISTED : LayerFacts.MakeUp.UNKNOWN;
    }

    private static Optional<Entered> pH(LayerTally layer) {
        return layer.entry().map(Layer::pH).flatMap(Field::entered);
    }

    private SolventContent shares(Ingredients mixture) {
        Map<String, Double> grams = new LinkedHashMap<>();
        mixture.parts().forEach((name, part) -> grams.put(name, part.grams()));
        return new SolventContent(substances, grams);
    }

    private record Assignment(String stream, String why, boolean waitsForPH) {}

    /** The number; where a word was typed, or pH before the number, what that means. */
    private static String inWords(Entered pH) {
        return pH.asTyped().chars().anyMatch(Character::isLetter)
                ? BigDecimal.valueOf(pH.value()).stripTrailingZeros().toPlainString()
                : pH.asTyped();
    }
}
