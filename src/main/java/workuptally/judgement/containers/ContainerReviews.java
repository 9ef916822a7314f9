package workuptally.judgement.containers;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import workuptally.judgement.containers.ProposalFit.Clash;
import workuptally.judgement.containers.ProposalFit.StreamFit;
import workuptally.judgement.hazards.ContainerHazards;
import workuptally.model.Book;
import workuptally.model.Limit;
import workuptally.reference.Reference;
import workuptally.reference.hazards.Reactivity;
import workuptally.reference.hazards.ReactivityPair;
import workuptally.reference.hazards.ReactivityPair.InWorkup;
import workuptally.reference.substances.MaterialClass;
import workuptally.reference.waste.ContainerLabel;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.Substances;
import workuptally.tally.containers.ContainerAccount;
import workuptally.tally.containers.ContainerAddition;
import workuptally.tally.containers.ContainerState;
import workuptally.tally.containers.ContainerTally;
import workuptally.tally.suspects.ContainerSuspects;

/**
 * Looks at every proposed transfer in order of the table. A proposal of another stream, or one that meets what it must not, is not added
 * before the next is looked at; every other one is.
 */
public final class ContainerReviews {

    private final Book book;
    private final Reference reference;
    private final Substances substances;
    private final List<ContainerTally> ledgers;
    private final ContainerStreams streams;
    private final CarriedMaterials carried;
    private final Reactivity reactivity;
    private final ContainerHazards hazards;
    private final Map<String, RunTally> runs;
    private final ContainerSuspects suspects;

    /**
     * Reviews of the containers of a book.
     *
     * @param book the entries
     * @param tallies results of its runs
     * @param substances reference data in force
     */
    public ContainerReviews(Book book, List<RunTally> tallies, Substances substances) {
        this.book = book;
        this.reference = substances.reference();
        this.substances = substances;
        this.ledgers = new ContainerAccount(book, tallies, substances).ledgers();
        this.runs = new LinkedHashMap<>();
        tallies.forEach(t -> runs.put(t.run().id(), t));
        this.streams = new ContainerStreams(substances, runs);
        this.carried = new CarriedMaterials(substances, runs);
        this.reactivity = reference.reactivity();
        this.hazards = new ContainerHazards(book, tallies, substances);
        this.suspects = new ContainerSuspects(book, tallies, substances);
    }

    /** One review per container, in order of the table. */
    public List<ContainerReview> list() {
        return ledgers.stream().map(this::review).toList();
    }

    private ContainerReview review(ContainerTally ledger) {
        String label = ledger.container().wasteStream();
        ContainerLabel read = streams.ofContainer(label);
        double limit = book.limits().value(Limit.CONTAINER_FILL);
        List<Carried> present =
                carried.ofContainer(label, read, ledger.then().grams().keySet());
        ledger.done().forEach(d -> present.addAll(carried.ofAddition(d)));
        Map<String, List<Carried>> earlier = new LinkedHashMap<>();
        ContainerState state = ledger.now();
        boolean over = isOver(state, limit);
        List<ProposalFit> proposals = new ArrayList<>();
        for (ContainerAddition addition : ledger.proposed()) {
            List<String> incoming = streams.ofAddition(addition);
            StreamFit byMakeUp = streams.fit(incoming, read);
            boolean phaseKnown = isPhaseKnown(addition);
            StreamFit fit = phaseKnown ? byMakeUp : StreamFit.UNKNOWN;
            boolean waitsForPhase = !phaseKnown && byMakeUp != StreamFit.UNKNOWN;
            List<Carried> brought = carried.ofAddition(addition);
            ContainerState after = state.plus(addition);
            List<Clash> clashes = clashes(brought, present, earlier);
            boolean crosses = !over && isOver(after, limit);
            ProposalFit proposal = new ProposalFit(
                    addition, fit, waitsForPhase, streams.names(incoming), clashes, after, limit, crosses);
            if (proposal.fits()) {
                state = after;
                over |= crosses;
                earlier.put(addition.transfer().id(), brought);
            }
            proposals.add(proposal);
        }
        return new ContainerReview(
                ledger,
                proposals,
                state,
                new RegulatoryFacts(substances).of(read.stream(), ledger.now()),
                hazards.of(ledger),
                suspects.of(ledger));
    }

    /** False where a layer of a contact has no density that tells which phase it is, and no check at the bench says so: its stream is a guess. */
    private boolean isPhaseKnown(ContainerAddition addition) {
        Optional<RunTally> run =
                Optional.ofNullable(runs.get(addition.transfer().run()));
        return run.isEmpty()
                || addition.transfer().layers().stream()
                        .allMatch(label -> run.get().isPhaseKnown(label));
    }

    private static boolean isOver(ContainerState state, double limitPercent) {
        return state.fillPercent().isPresent() && state.fillPercent().getAsDouble() > limitPercent;
    }

    private List<Clash> clashes(List<Carried> brought, List<Carried> present, Map<String, List<Carried>> earlier) {
        Map<String, Clash> clashes = new LinkedHashMap<>();
        Set<String> there = new LinkedHashSet<>();
        brought.forEach(c -> there.addAll(c.membership().classes()));
        present.forEach(c -> there.addAll(c.membership().classes()));
        earlier.values()
                .forEach(list -> list.forEach(c -> there.addAll(c.membership().classes())));
        clashes(brought, present, "", there, clashes);
        earlier.forEach((transfer, list) -> clashes(brought, list, transfer, there, clashes));
        return List.copyOf(clashes.values());
    }

    private void clashes(
            List<Carried> brought,
            List<Carried> present,
            String transfer,
            Set<String> there,
            Map<String, Clash> clashes) {
        for (Carried incoming : brought) {
            for (Carried other : present) {
                if (incoming.material().equals(other.material())
                        || isWater(other) && holdsWater(brought)
                        || isWater(incoming) && holdsWater(present)) {
                    continue;
                }
                for (ReactivityPair pair : reactivity.between(incoming.membership(), other.membership(), there)) {
                    if (concernsContainer(pair)) {
                        Clash clash = new Clash(
                                pair,
                                incoming.material(),
                                other.material(),
                                transfer,
                                incoming.shown() && other.shown());
                        clashes.merge(pair.key(), clash, (first, next) -> first.shownPresent() ? first : next);
                    }
                }
            }
        }
    }

    /** What stands in water already meets nothing new in the water of a container. */
    private static boolean holdsWater(List<Carried> portion) {
        return portion.stream().anyMatch(ContainerReviews::isWater);
    }

    private static boolean isWater(Carried carried) {
        return carried.membership().classes().contains(MaterialClass.WATER);
    }

    /** Whatever is not ordinary, and what sets gas free in a closed bottle; the published chart where it is grave. */
    private static boolean concernsContainer(ReactivityPair pair) {
        if (pair.inWorkup() == InWorkup.ORDINARY) {
            return !pair.ofChart() && !pair.gases().isEmpty();
        }
        return !pair.ofChart() || pair.severity() != ReactivityPair.Severity.CAUTION;
    }
}
