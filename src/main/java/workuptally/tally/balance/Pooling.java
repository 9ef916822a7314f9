package workuptally.tally.balance;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import workuptally.model.Field.Entered;
import workuptally.model.Layer;
import workuptally.model.Run;
import workuptally.model.Step;
import workuptally.reference.bench.Threshold;
import workuptally.reference.hazards.Reactivity;
import workuptally.reference.hazards.ReactivityPair;
import workuptally.reference.hazards.ReactivityPair.InWorkup;
import workuptally.tally.amounts.Substances;
import workuptally.tally.layers.LayerTally;
import workuptally.tally.layers.Meetings;
import workuptally.tally.layers.Present;

/**
 * Which layers may be put together into one composite sample: clear liquids of measured volume that end the workup, whose meeting the
 * tables call ordinary. Acid never with azide or cyanide, nor with a carbonate wash, which foams in the vial, nor with what is basic by the
 * pH written down: what was charged washes out under no name of its own. What a step added to a layer counts as there, whichever phase takes
 * it and whatever water or acid makes of it in time.
 */
public final class Pooling {
    private static final String WATER = "water";

    private final Run run;
    private final Meetings meetings;
    private final Reactivity reactivity;
    private final Substances substances;

    /** Over what each portion of a run may still hold. */
    public Pooling(Run run, Meetings meetings, Substances substances) {
        this.run = run;
        this.meetings = meetings;
        this.reactivity = substances.reference().reactivity();
        this.substances = substances;
    }

    /** Why a layer is no part of any composite sample, as a clause; empty where it may be. */
    public Optional<String> whyNot(LayerTally layer) {
        String label = layer.label();
        if (layer.entry().isEmpty()) {
            return Optional.of(label + " has no row in Layers");
        }
        boolean saidToBeSolid = layer.entry()
                .flatMap(Layer::phase)
                .or(layer::phase)
                .filter(p -> p == Layer.Phase.SOLID)
                .isPresent();
        if (saidToBeSolid) {
            return Optional.of(label + " is a solid");
        }
        if (!isClear(layer)) {
            return Optional.of(label + " is no clear layer, so that no aliquot stands for it");
        }
        if (layer.volumeMillilitres().isEmpty()) {
            return Optional.of(label + " has no volume");
        }
        if (!layer.terminal() || !layer.endsWorkup() || layer.aliquot()) {
            return Optional.of(label + " is not among the layers that end the workup");
        }
        return Optional.empty();
    }

    private boolean isClear(LayerTally layer) {
        boolean between = layer.phase().filter(p -> p == Layer.Phase.RAG).isPresent()
                || layer.entry()
                        .flatMap(Layer::position)
                        .filter(p -> p == Layer.Position.MIDDLE)
                        .isPresent();
        return !between
                && run.steps().stream()
                        .filter(s -> s.gives().contains(layer.label()))
                        .noneMatch(s -> s.funnel()
                                .emulsion()
                                .filter(e -> e == Step.Emulsion.PERSISTENT)
                                .isPresent());
    }

    /** True where the steps tell what a layer was made with. */
    public boolean isFollowed(LayerTally layer) {
        return meetings.contents().containsKey(layer.label());
    }

    /** Why two layers must not be put together, as a clause with both labels; empty where their meeting is ordinary. */
    public Optional<String> whyNotTogether(String one, String other) {
        if (isAcidOnBase(one, other)) {
            return Optional.of("one of " + one + " and " + other
                    + " is acidic and the other basic by the pH written down: heat, gas");
        }
        List<Present> first = holds(one);
        List<Present> second = holds(other);
        Set<String> classes = new LinkedHashSet<>();
        first.forEach(p -> classes.addAll(p.membership().classes()));
        second.forEach(p -> classes.addAll(p.membership().classes()));
        for (Present here : first) {
            for (Present there : second) {
                // what stands in water already meets nothing new in the water of the other
                boolean knownWater = there.is(WATER) && first.stream().anyMatch(p -> p.is(WATER))
                        || here.is(WATER) && second.stream().anyMatch(p -> p.is(WATER));
                if (here.name().equals(there.name()) || knownWater) {
                    continue;
                }
                for (ReactivityPair pair : reactivity.between(here.membership(), there.membership(), classes)) {
                    if (!pair.ofChart() && !isOrdinary(pair, here, there)) {
                        return Optional.of(one + " holds " + here.name() + ", " + other + " " + there.name() + ": "
                                + pair.consequence());
                    }
                }
            }
        }
        return Optional.empty();
    }

    /** By the pH written down, whatever acid or base it comes from. */
    private boolean isAcidOnBase(String one, String other) {
        Optional<Double> first = pH(one);
        Optional<Double> second = pH(other);
        return first.isPresent()
                && second.isPresent()
                && Math.min(first.get(), second.get()) < substances.value(Threshold.POOLED_ACIDIC_BELOW)
                && Math.max(first.get(), second.get()) > substances.value(Threshold.POOLED_BASIC_ABOVE);
    }

    private Optional<Double> pH(String label) {
        return run.layer(label)
                .flatMap(l -> l.pH().entered())
                .or(() -> run.steps().stream()
                        .filter(s -> s.given().aqueous().contains(label))
                        .flatMap(s -> s.pHAfter().entered().stream())
                        .findFirst())
                .map(Entered::value);
    }

    /** What the steps leave in a layer, and what the step that gave it brought, each name once. */
    public List<Present> holds(String label) {
        Map<String, Present> all = new LinkedHashMap<>();
        meetings.in(label).forEach(p -> all.put(p.name(), p));
        run.steps().stream()
                .filter(s -> s.gives().contains(label) && !s.added().material().isBlank())
                .flatMap(s -> substances.material(s.added().material()).parts().stream())
                .forEach(p -> all.putIfAbsent(
                        p.name(),
                        new Present(p.name(), p, p.membership(), Present.Share.TRACE, OptionalDouble.empty(), false)));
        return List.copyOf(all.values());
    }

    /** Ordinary in a workup, and without gas where both are there in quantity. */
    private static boolean isOrdinary(ReactivityPair pair, Present here, Present there) {
        boolean much = here.share() == Present.Share.MAIN && there.share() == Present.Share.MAIN;
        boolean foams = !pair.gases().isEmpty() && pair.where().contains(ReactivityPair.FUNNEL);
        return pair.inWorkup() == InWorkup.ORDINARY && !(much && foams);
    }
}
