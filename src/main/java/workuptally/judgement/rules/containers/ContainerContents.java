package workuptally.judgement.rules.containers;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import workuptally.judgement.containers.ContainerReview;
import workuptally.judgement.layers.LayerDecision;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.ProposalRule;
import workuptally.material.State;
import workuptally.material.Substance;
import workuptally.model.Book;
import workuptally.model.Container;
import workuptally.model.Field.Entered;
import workuptally.model.Figure;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Phrase;
import workuptally.model.Severity;
import workuptally.reference.bench.Threshold;
import workuptally.tally.amounts.Substances;
import workuptally.tally.containers.ContainerTally.Reconciliation;

/** A container whose contents are not stated, do not agree with the weighed bottle, cannot be held against it, or are named by abbreviations or formulas. */
public final class ContainerContents implements ProposalRule {

    /** Two capitals, or a capital and a digit: {@code DCM}, {@code EtOAc}, {@code Et2O}. */
    private static final Pattern SHORT = Pattern.compile("\\S*[A-Z]\\S*[A-Z0-9]\\S*");

    private final Substances substances;

    public ContainerContents(Substances substances) {
        this.substances = substances;
    }

    @Override
    public List<FindingCode> codes() {
        return List.of(
                FindingCode.CONTAINER_CONTENT_UNKNOWN,
                FindingCode.CONTAINER_CONTENT_DIFFERS,
                FindingCode.CONTAINER_WEIGHING_DIFFERS,
                FindingCode.CONTAINER_NAME_SHORT,
                FindingCode.TARE_MISSING);
    }

    @Override
    public List<Finding> judge(
            Book book, List<ContainerReview> containers, Map<String, List<LayerDecision>> decisions) {
        FindingList findings = new FindingList("");
        for (ContainerReview container : containers) {
            unknown(findings, container.tally().container());
            unlisted(findings, container.tally().container());
            ofAnotherStream(findings, container);
            container.tally().reconciliation().ifPresent(r -> differs(findings, container, r));
            abbreviated(findings, container.tally().container());
            withoutTare(findings, container.tally().container());
        }
        return findings.list();
    }

    private void unknown(FindingList findings, Container container) {
        if (!container.contentsThen().isEmpty()) {
            return;
        }
        Optional<Double> gross = container.grossThenGrams().entered().map(Entered::value);
        Optional<Double> net =
                gross.flatMap(g -> container.tareGrams().entered().map(t -> g - t.value()));
        boolean empty = gross.isEmpty()
                || net.filter(grams -> grams <= substances.value(Threshold.CONTAINER_EMPTY))
                        .isPresent();
        if (!empty) {
            findings.add(
                    FindingCode.CONTAINER_CONTENT_UNKNOWN,
                    Severity.CHECK,
                    container.row().at("Contents then"),
                    net.isPresent()
                            ? Phrase.of(
                                    "{} held {} of unknown contents",
                                    container.id(),
                                    Figure.decimals(net.get(), 0, "g"))
                            : Phrase.of(
                                    "{} held unknown contents; without a tare nobody can tell how much",
                                    container.id()),
                    Phrase.of("every component by its full name and mass"),
                    FindingList.PRACTICE,
                    Phrase.of("Find out what is in it from its label; nothing is added meanwhile."));
        }
    }

    /** A name that no table knows, and that tells no class either, hides what it must not meet. */
    private void unlisted(FindingList findings, Container container) {
        List<String> names = container.contentsThen().stream()
                .map(Container.Content::substance)
                .filter(name -> substances.material(name).state() != State.LISTED
                        && substances.material(name).classes().isEmpty())
                .distinct()
                .toList();
        if (!names.isEmpty()) {
            findings.add(
                    FindingCode.CONTAINER_CONTENT_UNKNOWN,
                    Severity.CHECK,
                    container.row().at("Contents then"),
                    Phrase.of(
                            "{} holds {}, which no table knows: what meets it is not judged",
                            container.id(),
                            String.join(", ", names)),
                    Phrase.of("every component by its full name and mass"),
                    "reference table of materials",
                    Phrase.of("Find out what it is from its label or whoever filled it; nothing is added meanwhile."));
        }
    }

    private static void ofAnotherStream(FindingList findings, ContainerReview container) {
        Container entry = container.tally().container();
        container
                .otherStream()
                .filter(stream -> container.standing().isEmpty())
                .ifPresent(
                        stream -> findings.add(
                                FindingCode.CONTAINER_CONTENT_DIFFERS,
                                Severity.HOLD,
                                entry.row().at("Contents then"),
                                Phrase.of(
                                        "the contents of {} suggest '{}', it is labelled '{}'",
                                        entry.id(),
                                        stream,
                                        entry.wasteStream()),
                                Phrase.of("contents of the stream on the label"),
                                FindingList.PRACTICE,
                                Phrase.of(
                                        "Look at the container: correct the row if it is wrong, else tell the person responsible for waste; nothing is added meanwhile.")));
    }

    private static void withoutTare(FindingList findings, Container container) {
        if (container.grossThenGrams().entered().isPresent()
                && container.tareGrams().isBlank()) {
            findings.add(
                    FindingCode.TARE_MISSING,
                    Severity.CHECK,
                    container.row().at("Tare"),
                    Phrase.of(
                            "{}: gross {} g, tare not recorded; its contents are not held against its weighing",
                            container.id(),
                            container.grossThenGrams().entered().get().asTyped()),
                    Phrase.of("the mass of the empty container"),
                    "net = gross − tare",
                    Phrase.of("Find the tare on the container or weigh an empty one of the same kind, and say so."));
        }
    }

    private void differs(FindingList findings, ContainerReview container, Reconciliation reconciliation) {
        if (!reconciliation.agrees()) {
            findings.add(
                    FindingCode.CONTAINER_WEIGHING_DIFFERS,
                    Severity.CHECK,
                    container.tally().container().row().at("Gross then"),
                    Phrase.of(
                            "{}: contents add up to {}, the bottle weighs {} net, a difference of {}",
                            container.id(),
                            Figure.decimals(reconciliation.ledgerGrams(), 0, "g"),
                            Figure.decimals(reconciliation.weighedGrams(), 0, "g"),
                            Figure.signed(reconciliation.differenceGrams(), 0, "g")),
                    Phrase.of(
                            "within {} (the larger of {} and {})",
                            Figure.decimals(reconciliation.toleranceGrams(), 0, "g"),
                            Figure.brief(100 * substances.value(Threshold.CONTAINER_WEIGHING_RELATIVE), "%"),
                            Figure.brief(substances.value(Threshold.CONTAINER_WEIGHING_LEAST), "g")),
                    FindingList.PRACTICE,
                    Phrase.of("Look for an addition that was not written down, or for evaporation."));
        }
    }

    private void abbreviated(FindingList findings, Container container) {
        List<String> shortNames = container.contentsThen().stream()
                .map(Container.Content::substance)
                .filter(name -> SHORT.matcher(name).matches())
                .filter(name -> fullName(name)
                        .filter(full -> !full.equalsIgnoreCase(name))
                        .isPresent())
                .toList();
        if (!shortNames.isEmpty()) {
            findings.add(
                    FindingCode.CONTAINER_NAME_SHORT,
                    Severity.CHECK,
                    container.row().at("Contents then"),
                    Phrase.of("{} names {}", container.id(), String.join(", ", shortNames)),
                    shortNames.stream().map(n -> fullName(n).orElse(n)).collect(Phrase.joining(", ")),
                    FindingList.PRACTICE,
                    Phrase.of("Write full names on the label and in the book."));
        }
    }

    private Optional<String> fullName(String name) {
        return substances.material(name).main().substance().map(Substance::name);
    }
}
