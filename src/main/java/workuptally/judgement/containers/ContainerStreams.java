package workuptally.judgement.containers;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import workuptally.judgement.containers.ProposalFit.StreamFit;
import workuptally.material.Material;
import workuptally.material.State;
import workuptally.reference.bench.Threshold;
import workuptally.reference.hazards.Hazard;
import workuptally.reference.substances.MaterialClass;
import workuptally.reference.waste.ContainerLabel;
import workuptally.reference.waste.WasteStream;
import workuptally.reference.waste.WasteStreams;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.Substances;
import workuptally.tally.containers.ContainerAddition;
import workuptally.tally.waste.SolventContent;
import workuptally.tally.waste.WasteLine;

/** Compares the stream that an addition suggests with the stream that a container is labelled for, under whatever words the lab uses. */
final class ContainerStreams {

    private final Substances substances;
    private final WasteStreams streams;
    private final Map<String, RunTally> runs;
    private final ContentsStream contents;

    ContainerStreams(Substances substances, Map<String, RunTally> runs, double halogenLimitPercent) {
        this.substances = substances;
        this.streams = substances.reference().streams();
        this.runs = runs;
        this.contents = new ContentsStream(substances, halogenLimitPercent);
    }

    /** What a container's label says of its stream and of what it keeps out. */
    ContainerLabel ofContainer(String label) {
        ContainerLabel read = streams.ofLabel(label);
        boolean allKnown = read.keptOutByName().stream()
                .allMatch(name -> substances.material(name).state() == State.LISTED);
        return allKnown ? read : read.withDoubt();
    }

    /** Names of materials that a label keeps out and an addition holds, as typed on the label. */
    List<String> keptOutIn(ContainerAddition addition, ContainerLabel label) {
        Set<String> held = new HashSet<>();
        addition.grams()
                .keySet()
                .forEach(name -> substances.material(name).parts().forEach(part -> held.add(part.name())));
        Optional.ofNullable(runs.get(addition.transfer().run()))
                .ifPresent(run -> addition.transfer()
                        .layers()
                        .forEach(layer -> run.evidence()
                                .meetings()
                                .in(layer)
                                .forEach(present -> held.add(present.part().name()))));
        return label.keptOutByName().stream()
                .filter(name -> held.contains(substances.material(name).main().name()))
                .toList();
    }

    /** The streams of what an addition brings, one per layer. */
    List<String> ofAddition(ContainerAddition addition) {
        if (addition.transfer().layers().isEmpty()) {
            return ofMaterial(addition.transfer().material()).stream().toList();
        }
        Optional<RunTally> run =
                Optional.ofNullable(runs.get(addition.transfer().run()));
        return run.stream()
                .flatMap(r -> r.waste().stream())
                .filter(w -> addition.transfer().layers().contains(w.layer()))
                .map(WasteLine::stream)
                .distinct()
                .toList();
    }

    /** By the row of its hazards, else by the rules with the pure solvent. */
    private Optional<String> ofMaterial(String material) {
        Material meant = substances.material(material);
        Optional<String> usual = meant.hazard().map(Hazard::usualWasteStream);
        return usual.or(() -> meant.solvent().flatMap(solvent -> contents.stream(Map.of(solvent.name(), 1.0))));
    }

    /**
     * Another stream that the stated contents of a container suggest than its label: acid under a label for base, a halogenated solvent
     * under one for the others, an oxidant under either. A container for something special may list what it stands in alone.
     *
     * @return its name; empty where label and contents agree, or nothing tells
     */
    Optional<String> contradicting(ContainerLabel label, Map<String, Double> grams) {
        Optional<WasteStream> told = label.stream().filter(stream -> !stream.asksFirst());
        if (told.isEmpty() || contents.holdsAnyOf(told.get().impliedClasses(), grams)) {
            return Optional.empty();
        }
        boolean ofAcidOrBase = implies(told.get(), MaterialClass.ACID) || implies(told.get(), MaterialClass.BASE);
        if (!ofAcidOrBase && !told.get().impliedClasses().isEmpty()) {
            return Optional.empty();
        }
        return contents.stream(grams)
                .filter(suggested -> fit(suggested, told.get()).compareTo(StreamFit.OTHER) >= 0)
                .map(suggested -> names(List.of(suggested)));
    }

    /**
     * Whether the streams of an addition fit the label of a container; the least fitting decides. What the label keeps out is of another
     * stream; where what it keeps out was not understood, nothing is known to fit.
     */
    StreamFit fit(List<String> incoming, ContainerAddition addition, ContainerLabel label) {
        boolean keptOut = !keptOutIn(addition, label).isEmpty()
                || holdsOrganicsKeptOut(addition, label)
                || incoming.stream()
                        .flatMap(key -> streams.find(key).stream())
                        .anyMatch(stream -> label.keptOut().stream().anyMatch(out -> streams.isKeptOut(stream, out)));
        StreamFit fit = keptOut ? StreamFit.OTHER : fit(incoming, label.stream());
        return label.unread() && (fit == StreamFit.SAME || fit == StreamFit.DEARER) ? StreamFit.UNKNOWN : fit;
    }

    /** A label without organics takes no water that is to more than a trace solvent. */
    private boolean holdsOrganicsKeptOut(ContainerAddition addition, ContainerLabel label) {
        return label.keptOut().stream().anyMatch(streams::isOfSolvent)
                && new SolventContent(substances, addition.grams()).organicPercent()
                        >= substances.value(Threshold.LEAST_CLASS_SHARE);
    }

    private StreamFit fit(List<String> incoming, Optional<WasteStream> container) {
        if (incoming.isEmpty() || container.isEmpty()) {
            return incoming.stream().anyMatch(this::asksFirst) ? StreamFit.ASK_FIRST : StreamFit.UNKNOWN;
        }
        StreamFit worst = StreamFit.SAME;
        for (String stream : incoming) {
            StreamFit one = fit(stream, container.get());
            worst = one.compareTo(worst) > 0 ? one : worst;
        }
        return incoming.stream().anyMatch(s -> fit(s, container.get()) == StreamFit.OTHER) ? StreamFit.OTHER : worst;
    }

    private boolean asksFirst(String stream) {
        return streams.find(stream).filter(WasteStream::asksFirst).isPresent();
    }

    private StreamFit fit(String incoming, WasteStream container) {
        if (incoming.equals(container.key())) {
            return StreamFit.SAME;
        }
        if (asksFirst(incoming)) {
            return StreamFit.ASK_FIRST;
        }
        Optional<WasteStream> stream = streams.find(incoming);
        if (stream.isPresent()
                && stream.get().family().isPresent()
                && stream.get().family().equals(container.family())) {
            return areOpposed(stream.get(), container) ? StreamFit.OTHER : StreamFit.SAME;
        }
        return container.alsoTakes().contains(incoming) ? StreamFit.DEARER : StreamFit.OTHER;
    }

    /** Acid and base, which are two streams of one family. */
    private static boolean areOpposed(WasteStream one, WasteStream other) {
        return implies(one, MaterialClass.ACID) && implies(other, MaterialClass.BASE)
                || implies(one, MaterialClass.BASE) && implies(other, MaterialClass.ACID);
    }

    private static boolean implies(WasteStream stream, String materialClass) {
        return stream.impliedClasses().contains(materialClass);
    }

    /** Names of streams for a reader, with what of it a label keeps out by name. */
    String names(List<String> streams, ContainerAddition addition, ContainerLabel label) {
        List<String> keptOut = new ArrayList<>(keptOutIn(addition, label));
        if (holdsOrganicsKeptOut(addition, label)) {
            keptOut.add("organic solvent");
        }
        return keptOut.isEmpty() ? names(streams) : names(streams) + " with " + String.join(", ", keptOut);
    }

    private String names(List<String> streams) {
        return streams.isEmpty()
                ? "not known"
                : String.join(
                        "; ",
                        streams.stream()
                                .map(s -> this.streams
                                        .find(s)
                                        .map(WasteStream::name)
                                        .orElse(s))
                                .toList());
    }
}
