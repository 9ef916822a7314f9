package workuptally.tally.balance;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import workuptally.model.Layer;
import workuptally.model.Run;
import workuptally.model.Step;
import workuptally.reference.Reactivity;
import workuptally.reference.ReactivityPair;
import workuptally.reference.ReactivityPair.InWorkup;
import workuptally.tally.layers.LayerTally;
import workuptally.tally.layers.Meetings;
import workuptally.tally.layers.Present;

/**
 * Which layers may be put together into one composite sample: clear liquids of measured volume that end the workup, whose meeting the
 * tables call ordinary. Acid never with azide or cyanide, nor with a carbonate wash, which foams in the vial.
 */
public final class Pooling {
    private final Run run;
    private final Meetings meetings;
    private final Reactivity reactivity;

    /** Over what each portion of a run may still hold. */
    public Pooling(Run run, Meetings meetings, Reactivity reactivity) {
        this.run = run;
        this.meetings = meetings;
        this.reactivity = reactivity;
    }

    /** Why a layer is no part of any composite sample, as a clause; empty where it may be. */
    public Optional<String> whyNot(LayerTally layer) {
        String label = layer.label();
        if (layer.entry().isEmpty()) {
            return Optional.of(label + " has no row in Layers");
        }
        if (layer.phase().filter(p -> p == Layer.Phase.SOLID).isPresent()) {
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
                        .noneMatch(s -> s.emulsion()
                                .filter(e -> e == Step.Emulsion.PERSISTENT)
                                .isPresent());
    }

    /** True where the steps tell what a layer was made with. */
    public boolean isFollowed(LayerTally layer) {
        return meetings.contents().containsKey(layer.label());
    }

    /** Why two layers must not be put together, as a clause with both labels; empty where their meeting is ordinary. */
    public Optional<String> whyNotTogether(String one, String other) {
        List<Present> first = meetings.in(one);
        List<Present> second = meetings.in(other);
        Set<String> classes = new LinkedHashSet<>();
        first.forEach(p -> classes.addAll(p.membership().classes()));
        second.forEach(p -> classes.addAll(p.membership().classes()));
        for (Present here : first) {
            for (Present there : second) {
                if (here.name().equals(there.name())) {
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

    /** Ordinary in a workup, and without gas where both are there in quantity. */
    private static boolean isOrdinary(ReactivityPair pair, Present here, Present there) {
        boolean much = here.share() == Present.Share.MAIN && there.share() == Present.Share.MAIN;
        boolean foams = !pair.gases().isEmpty() && pair.where().contains(ReactivityPair.FUNNEL);
        return pair.inWorkup() == InWorkup.ORDINARY && !(much && foams);
    }
}
