package workuptally.judgement.containers;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import workuptally.judgement.containers.ProposalFit.Clash;
import workuptally.judgement.containers.ProposalFit.StreamFit;
import workuptally.judgement.hazards.ContainerHazards;
import workuptally.model.Book;
import workuptally.model.Limit;
import workuptally.reference.Reference;
import workuptally.reference.waste.ContainerLabel;
import workuptally.tally.HeldOnCake;
import workuptally.tally.RunTally;
import workuptally.tally.UnassayedSolids;
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
public final class ContainerReviewing {

    private final Book book;
    private final Reference reference;
    private final Substances substances;
    private final List<ContainerTally> ledgers;
    private final ContainerStreams streams;
    private final CarriedMaterials carried;
    private final ContainerClashes clashes;
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
    public ContainerReviewing(Book book, List<RunTally> tallies, Substances substances) {
        this.book = book;
        this.reference = substances.reference();
        this.substances = substances;
        this.ledgers = new ContainerAccount(book, tallies, substances).ledgers();
        this.runs = new LinkedHashMap<>();
        tallies.forEach(t -> runs.put(t.run().id(), t));
        this.streams = new ContainerStreams(substances, runs, book.limits().value(Limit.HALOGEN_LIMIT));
        this.carried = new CarriedMaterials(substances, runs);
        this.clashes = new ContainerClashes(reference.reactivity());
        this.hazards = new ContainerHazards(book, tallies, substances);
        this.suspects = new ContainerSuspects(book, tallies, substances);
    }

    /** One review per container, in order of the table. */
    public List<ContainerReview> list() {
        return ledgers.stream().map(this::review).toList();
    }

    private ContainerReview review(ContainerTally ledger) {
        String label = ledger.container().wasteStream();
        ContainerLabel said = streams.ofContainer(label);
        Optional<String> contradicting =
                streams.contradicting(said, ledger.then().grams());
        ContainerLabel read = contradicting.isPresent() ? said.withDoubt() : said;
        double limit = book.limits().value(Limit.CONTAINER_FILL);
        List<Carried> present = carried.ofContainer(label, read, ledger.then().grams());
        ledger.done().forEach(d -> present.addAll(carried.ofAddition(d)));
        Map<String, List<Carried>> earlier = new LinkedHashMap<>();
        ContainerState state = ledger.now();
        boolean over = false; // where it is over already, the first proposal says so
        List<ProposalFit> proposals = new ArrayList<>();
        for (ContainerAddition addition : ledger.proposed()) {
            List<String> incoming = streams.ofAddition(addition);
            StreamFit byMakeUp = streams.fit(incoming, addition, read);
            boolean phaseKnown = isPhaseKnown(addition);
            StreamFit fit = phaseKnown ? byMakeUp : StreamFit.UNKNOWN;
            boolean waitsForPhase = !phaseKnown && byMakeUp != StreamFit.UNKNOWN;
            List<Carried> brought = carried.ofAddition(addition);
            ContainerState after = state.plus(addition);
            List<Clash> met = clashes.with(brought, present, earlier);
            boolean crosses = !over && isOver(after, limit);
            ProposalFit proposal = new ProposalFit(
                    addition,
                    fit,
                    waitsForPhase,
                    streams.names(incoming, addition, read),
                    met,
                    cakes(addition),
                    unassayedSolids(addition),
                    after,
                    limit,
                    crosses);
            if (proposal.fits()) {
                state = after;
                over |= crosses;
                earlier.put(addition.transfer().id(), brought);
            }
            proposals.add(proposal);
        }
        return new ContainerReview(
                ledger,
                clashes.within(present),
                contradicting,
                made(ledger, read),
                proposals,
                state,
                new RegulatoryFactChoice(substances).of(read.stream(), ledger.now()),
                hazards.of(ledger),
                suspects.of(ledger));
    }

    private List<HeldOnCake> cakes(ContainerAddition addition) {
        return Optional.ofNullable(runs.get(addition.transfer().run())).map(HeldOnCake::of).orElse(List.of()).stream()
                .filter(cake -> addition.transfer().layers().contains(cake.cake()))
                .toList();
    }

    private List<String> unassayedSolids(ContainerAddition addition) {
        return Optional.ofNullable(runs.get(addition.transfer().run()))
                .map(UnassayedSolids::of)
                .orElse(List.of())
                .stream()
                .filter(addition.transfer().layers()::contains)
                .toList();
    }

    private List<MadeTransfer> made(ContainerTally ledger, ContainerLabel read) {
        return ledger.done().stream()
                .map(addition -> {
                    List<String> brought = streams.ofAddition(addition);
                    return new MadeTransfer(
                            addition, streams.fit(brought, addition, read), streams.names(brought, addition, read));
                })
                .toList();
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
}
