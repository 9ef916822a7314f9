package workuptally.judgement.rules.containers;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import workuptally.judgement.containers.ContainerReview;
import workuptally.judgement.layers.LayerDecision;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.ProposalRule;
import workuptally.model.Book;
import workuptally.model.Figure;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Phrase;
import workuptally.model.Severity;
import workuptally.model.Transfer;
import workuptally.reference.bench.Threshold;
import workuptally.tally.amounts.Substances;
import workuptally.tally.containers.ContainerAddition;

/** A transfer of more than its layers weigh, transfers that together are, and one of a layer that nobody weighed. */
public final class ProposalAmount implements ProposalRule {

    private final Substances substances;

    /** With the reference data in force. */
    public ProposalAmount(Substances substances) {
        this.substances = substances;
    }

    @Override
    public List<FindingCode> codes() {
        return List.of(
                FindingCode.TRANSFER_EXCEEDS_LAYER,
                FindingCode.TRANSFER_ESTIMATED,
                FindingCode.TRANSFER_AMOUNT_UNKNOWN);
    }

    @Override
    public List<Finding> judge(
            Book book, List<ContainerReview> containers, Map<String, List<LayerDecision>> decisions) {
        FindingList findings = new FindingList("");
        for (ContainerReview container : containers) {
            Stream.concat(container.tally().done().stream(), container.tally().proposed().stream())
                    .filter(this::isTooMuch)
                    .forEach(a -> findings.add(
                            FindingCode.TRANSFER_EXCEEDS_LAYER,
                            Severity.CHECK,
                            a.transfer().row().at("Amount"),
                            Phrase.of(
                                    "{} takes {} of {}, which weigh {}",
                                    a.transfer().id(),
                                    Figure.digits(a.totalGrams(), 4, "g"),
                                    a.source(),
                                    Figure.digits(a.sourceGrams(), 4, "g")),
                            Phrase.of("no more than the layers weigh"),
                            FindingList.PRACTICE,
                            Phrase.of("Correct the amount, or the labels of the layers.")));
        }
        givenTwice(book, containers, findings);
        for (ContainerReview container : containers) {
            Stream.concat(container.tally().done().stream(), container.tally().proposed().stream())
                    .filter(a -> !a.unweighed().isEmpty())
                    .filter(a -> a.transfer().massGrams().entered().isEmpty())
                    .forEach(a -> unweighed(a, findings));
        }
        return findings.list();
    }

    /** Transfers that each take no more than a layer weighs, and together more, in whatever containers; told at the one that goes over. */
    private void givenTwice(Book book, List<ContainerReview> containers, FindingList findings) {
        Map<Transfer, ContainerAddition> additions = new IdentityHashMap<>();
        containers.forEach(
                c -> Stream.of(c.tally().before(), c.tally().done(), c.tally().proposed())
                        .flatMap(List::stream)
                        .forEach(a -> additions.put(a.transfer(), a)));
        Map<String, Given> ofLayer = new HashMap<>();
        for (Transfer transfer : inOrder(book)) {
            ContainerAddition addition = additions.get(transfer);
            if (addition != null && addition.sourceGrams() > 0 && !isTooMuch(addition)) {
                boolean told = false;
                for (String label : transfer.layers()) {
                    Given given = ofLayer.computeIfAbsent(transfer.run() + "\n" + label, key -> new Given());
                    boolean several = !given.first.isEmpty();
                    String before = given.inWords();
                    given.add(addition);
                    if (several && !told && given.shares > 1 + substances.value(Threshold.PROPOSAL_AMOUNT_RELATIVE)) {
                        told = true;
                        tellGoneOver(label, before, given.shares, addition, findings);
                    }
                }
            }
        }
    }

    /** What transfers took of one layer so far. */
    private static final class Given {
        private static final int NAMED = 3;

        private final List<String> first = new ArrayList<>();
        private double shares;
        private int others;

        void add(ContainerAddition addition) {
            shares += addition.totalGrams() / addition.sourceGrams();
            if (first.size() < NAMED) {
                first.add(addition.transfer().id());
            } else {
                others++;
            }
        }

        String inWords() {
            return String.join(", ", first) + (others == 0 ? "" : " and " + others + " more");
        }
    }

    /** Those made before those proposed. */
    private static List<Transfer> inOrder(Book book) {
        return book.transfers().stream()
                .sorted(Comparator.comparing(t -> t.status() == Transfer.Status.PROPOSED))
                .toList();
    }

    private static void tellGoneOver(
            String label, String before, double shares, ContainerAddition addition, FindingList findings) {
        findings.add(
                FindingCode.TRANSFER_EXCEEDS_LAYER,
                Severity.HOLD,
                addition.transfer().row().at("Layer"),
                Phrase.of(
                        "{} takes {} of {}, of which {} took or takes its part already: together {} of what it weighs",
                        addition.transfer().id(),
                        label,
                        addition.transfer().run(),
                        before,
                        Figure.decimals(100 * shares, 0, "%")),
                Phrase.of("no more than the layer weighs, in all containers together"),
                FindingList.PRACTICE,
                Phrase.of("Take out the transfer that is not so, or correct the amounts."));
    }

    private static void unweighed(ContainerAddition addition, FindingList findings) {
        String labels = String.join("+", addition.unweighed());
        boolean known = addition.totalGrams() > 0;
        findings.add(
                known ? FindingCode.TRANSFER_ESTIMATED : FindingCode.TRANSFER_AMOUNT_UNKNOWN,
                known ? Severity.CHECK : Severity.HOLD,
                addition.transfer().row().at("Amount"),
                known
                        ? Phrase.of(
                                "{} moves {}, which was not weighed: about {} and {} by what should be in it",
                                addition.transfer().id(),
                                labels,
                                Figure.digits(addition.totalGrams(), 3, "g"),
                                Figure.digits(addition.millilitres(), 3, "mL"))
                        : Phrase.of(
                                "{} moves {}, of which neither mass nor volume is known: it stands in the container with nothing",
                                addition.transfer().id(),
                                labels),
                Phrase.of("the mass of what is moved"),
                FindingList.PRACTICE,
                known
                        ? Phrase.of("Weigh the layer, or the container before and after, and enter the amount.")
                        : addition.transfer().status() == Transfer.Status.DONE
                                ? Phrase.of(
                                        "Find out how much it was, or weigh the container; until then its fill and contents are not known.")
                                : Phrase.of(
                                        "Weigh it before anything is moved; until then fill and contents of the container are not known."));
    }

    private boolean isTooMuch(ContainerAddition addition) {
        double tolerance = Math.max(
                substances.value(Threshold.PROPOSAL_AMOUNT_RELATIVE) * addition.sourceGrams(),
                substances.value(Threshold.PROPOSAL_AMOUNT_LEAST));
        return addition.sourceGrams() > 0 && addition.totalGrams() > addition.sourceGrams() + tolerance;
    }
}
