package workuptally.judgement.containers;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import workuptally.judgement.containers.MaterialClasses.Origin;
import workuptally.judgement.containers.ProposalFit.Clash;
import workuptally.judgement.containers.ProposalFit.StreamFit;
import workuptally.model.Book;
import workuptally.model.Limit;
import workuptally.reference.Incompatibility;
import workuptally.reference.Reference;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.Substances;
import workuptally.tally.containers.ContainerAccount;
import workuptally.tally.containers.ContainerAddition;
import workuptally.tally.containers.ContainerState;
import workuptally.tally.containers.ContainerTally;

/**
 * Looks at every proposed transfer in order of the table. A proposal of another stream, or one that meets what it must not, is not added
 * before the next is looked at; every other one is.
 */
public final class ContainerReviews {
    private static final String WASTE = "waste";

    /** Bookkeeping pairs, which the comparison of streams covers. */
    private static final String NON_HALOGENATED = "non-halogenated";

    private final Book book;
    private final Reference reference;
    private final List<ContainerTally> ledgers;
    private final ContainerStreams streams;
    private final MaterialClasses classes;

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
        this.ledgers = new ContainerAccount(book, tallies, substances).ledgers();
        Map<String, RunTally> runs = new LinkedHashMap<>();
        tallies.forEach(t -> runs.put(t.run().id(), t));
        this.streams = new ContainerStreams(reference, runs);
        this.classes = new MaterialClasses(substances, runs);
    }

    /** One review per container, in order of the table. */
    public List<ContainerReview> list() {
        return ledgers.stream().map(this::review).toList();
    }

    private ContainerReview review(ContainerTally ledger) {
        String label = ledger.container().wasteStream();
        Optional<String> stream = streams.ofContainer(label);
        double limit = book.limits().value(Limit.CONTAINER_FILL);
        Map<String, Origin> present =
                classes.ofContainer(label, ledger.then().grams().keySet());
        ledger.done().forEach(d -> classes.ofAddition(d).forEach(present::putIfAbsent));
        Map<String, Map<String, Origin>> earlier = new LinkedHashMap<>();
        ContainerState state = ledger.now();
        boolean over = isOver(state, limit);
        List<ProposalFit> proposals = new ArrayList<>();
        for (ContainerAddition addition : ledger.proposed()) {
            List<String> incoming = streams.ofAddition(addition);
            StreamFit fit = streams.fit(incoming, stream);
            Map<String, Origin> brought = classes.ofAddition(addition);
            ContainerState after = state.plus(addition);
            List<Clash> clashes = clashes(brought, present, earlier);
            boolean crosses = !over && isOver(after, limit);
            ProposalFit proposal =
                    new ProposalFit(addition, fit, streams.names(incoming), clashes, after, limit, crosses);
            if (proposal.fits()) {
                state = after;
                over |= crosses;
                earlier.put(addition.transfer().id(), brought);
            }
            proposals.add(proposal);
        }
        return new ContainerReview(ledger, proposals, state, new RegulatoryFacts(reference).of(stream, ledger.now()));
    }

    private static boolean isOver(ContainerState state, double limitPercent) {
        return state.fillPercent().isPresent() && state.fillPercent().getAsDouble() > limitPercent;
    }

    private List<Clash> clashes(
            Map<String, Origin> brought, Map<String, Origin> present, Map<String, Map<String, Origin>> earlier) {
        List<Clash> clashes = new ArrayList<>();
        Set<String> met = new LinkedHashSet<>();
        for (Incompatibility pair : reference.incompatibilities()) {
            if (!pair.appliesTo().contains(WASTE) || pair.classB().equals(NON_HALOGENATED)) {
                continue;
            }
            clash(pair, brought, present, "").ifPresent(c -> {
                clashes.add(c);
                met.add(pair.key());
            });
            if (!met.contains(pair.key())) {
                for (Map.Entry<String, Map<String, Origin>> one : earlier.entrySet()) {
                    Optional<Clash> clash = clash(pair, brought, one.getValue(), one.getKey());
                    if (clash.isPresent()) {
                        clashes.add(clash.get());
                        break;
                    }
                }
            }
        }
        return clashes;
    }

    private static Optional<Clash> clash(
            Incompatibility pair, Map<String, Origin> brought, Map<String, Origin> there, String transfer) {
        Optional<Clash> one = clash(pair, pair.classA(), pair.classB(), brought, there, transfer);
        return one.or(() -> clash(pair, pair.classB(), pair.classA(), brought, there, transfer));
    }

    private static Optional<Clash> clash(
            Incompatibility pair,
            String incoming,
            String meeting,
            Map<String, Origin> brought,
            Map<String, Origin> there,
            String transfer) {
        if (!brought.containsKey(incoming) || !there.containsKey(meeting)) {
            return Optional.empty();
        }
        Origin from = brought.get(incoming);
        Origin with = there.get(meeting);
        return Optional.of(new Clash(pair, from.material(), with.material(), transfer, from.shown() && with.shown()));
    }
}
