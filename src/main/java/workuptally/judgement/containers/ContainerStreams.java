package workuptally.judgement.containers;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import workuptally.judgement.containers.ProposalFit.StreamFit;
import workuptally.reference.Hazard;
import workuptally.reference.Reference;
import workuptally.reference.Solvent;
import workuptally.reference.WasteStream;
import workuptally.tally.RunTally;
import workuptally.tally.containers.ContainerAddition;
import workuptally.tally.waste.WasteLine;

/** Compares the stream that an addition suggests with the stream that a container is labelled for, under whatever words the lab uses. */
final class ContainerStreams {
    private static final String HALOGENATED = "halogenated-organic";
    private static final String NON_HALOGENATED = "non-halogenated-organic";
    private static final String ACIDIC = "aqueous-acidic";
    private static final String BASIC = "aqueous-basic";
    private static final String AQUEOUS = "aqueous-neutral";
    private static final String ASK = "special";

    private static final Set<String> AQUEOUS_FAMILY = Set.of(ACIDIC, BASIC, AQUEOUS, "aqueous-organic");

    private final Reference reference;
    private final Map<String, RunTally> runs;

    ContainerStreams(Reference reference, Map<String, RunTally> runs) {
        this.reference = reference;
        this.runs = runs;
    }

    /** The stream of a container by its label: a listed key or name, else by the words in it. */
    Optional<String> ofContainer(String label) {
        Optional<WasteStream> listed = reference.wasteStream(label);
        if (listed.isPresent()) {
            return listed.map(WasteStream::key);
        }
        String words = label.toLowerCase(Locale.ROOT);
        if (words.matches(".*\\bnon[- ]?(halogen|chlor).*")) {
            return Optional.of(NON_HALOGENATED);
        }
        if (words.contains("halogen") || words.contains("chlorinated")) {
            return Optional.of(HALOGENATED);
        }
        if (words.contains("cyanide") || words.contains("azide")) {
            return Optional.of("cyanide-azide");
        }
        if (words.contains("metal")) {
            return Optional.of("aqueous-heavy-metal");
        }
        if (words.contains("oxidis") || words.contains("oxidiz")) {
            return Optional.of("oxidiser");
        }
        if (words.contains("acid")) {
            return Optional.of(ACIDIC);
        }
        if (words.contains("basic") || words.contains("alkali") || words.contains("caustic")) {
            return Optional.of(BASIC);
        }
        if (words.contains("aqueous") || words.contains("brine") || words.contains("water wash")) {
            return Optional.of(AQUEOUS);
        }
        return words.contains("solvent") ? Optional.of(NON_HALOGENATED) : Optional.empty();
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

    private Optional<String> ofMaterial(String material) {
        Optional<Solvent> solvent = reference.solvent(material);
        if (solvent.isPresent()) {
            return Optional.of(
                    solvent.get().key().equals("water")
                            ? AQUEOUS
                            : solvent.get().halogenated() ? HALOGENATED : NON_HALOGENATED);
        }
        return reference.hazard(material).map(Hazard::usualWasteStream);
    }

    /** Whether the streams of an addition fit the stream of a container; the least fitting decides. */
    StreamFit fit(List<String> incoming, Optional<String> container) {
        if (incoming.isEmpty() || container.isEmpty()) {
            return incoming.contains(ASK) ? StreamFit.ASK_FIRST : StreamFit.UNKNOWN;
        }
        StreamFit worst = StreamFit.SAME;
        for (String stream : incoming) {
            StreamFit one = fit(stream, container.get());
            worst = one.compareTo(worst) > 0 ? one : worst;
        }
        return incoming.stream().anyMatch(s -> fit(s, container.get()) == StreamFit.OTHER) ? StreamFit.OTHER : worst;
    }

    private static StreamFit fit(String incoming, String container) {
        if (incoming.equals(container)) {
            return StreamFit.SAME;
        }
        if (incoming.equals(ASK)) {
            return StreamFit.ASK_FIRST;
        }
        if (AQUEOUS_FAMILY.contains(incoming) && AQUEOUS_FAMILY.contains(container)) {
            boolean opposed = Set.of(incoming, container).equals(Set.of(ACIDIC, BASIC));
            return opposed ? StreamFit.OTHER : StreamFit.SAME;
        }
        return incoming.equals(NON_HALOGENATED) && container.equals(HALOGENATED) ? StreamFit.DEARER : StreamFit.OTHER;
    }

    /** Names of streams for a reader. */
    String names(List<String> streams) {
        return streams.isEmpty()
                ? "not known"
                : String.join(
                        "; ",
                        streams.stream()
                                .map(s -> reference
                                        .wasteStream(s)
                                        .map(WasteStream::name)
                                        .orElse(s))
                                .toList());
    }
}
