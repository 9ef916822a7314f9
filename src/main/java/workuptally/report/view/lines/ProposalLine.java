package workuptally.report.view.lines;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import workuptally.judgement.Review;
import workuptally.judgement.RunReview;
import workuptally.judgement.containers.ContainerReview;
import workuptally.judgement.containers.ProposalFit;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Severity;
import workuptally.model.Transfer;
import workuptally.tally.containers.ContainerAddition;
import workuptally.tally.containers.ContainerState;
import workuptally.tally.layers.LayerFlow;

/**
 * A proposed transfer and what stands against it.
 *
 * @param group whether it fits
 * @param transfer id
 * @param source run and layers, or the free material
 * @param container container it is proposed for
 * @param grams mass, g
 * @param reasons what stands against it, in few words; empty where nothing does
 * @param addition what it would bring
 */
public record ProposalLine(
        Group group,
        String transfer,
        String source,
        String container,
        double grams,
        List<String> reasons,
        ContainerAddition addition) {
    /** What is said of a container stands against each transfer into it. */
    private static final Set<FindingCode> OF_THE_CONTAINER = Set.of(
            FindingCode.CONTAINER_CONTENT_UNKNOWN,
            FindingCode.CONTAINER_CONTENT_DIFFERS,
            FindingCode.CONTAINER_INCOMPATIBLE,
            FindingCode.CONTAINER_OVERDUE);

    /** What stands against a proposal, said to a reader who does not know our codes. */
    private static final Map<FindingCode, String> REASONS = Map.ofEntries(
            Map.entry(FindingCode.PROPOSAL_HOLDS_PRODUCT, "product still in it"),
            Map.entry(FindingCode.PROPOSAL_IS_EVIDENCE, "may be evidence of an open question"),
            Map.entry(FindingCode.PROPOSAL_EVIDENCE_OPEN, "what it holds is not settled"),
            Map.entry(FindingCode.PROPOSAL_WRONG_STREAM, "another stream than the container's"),
            Map.entry(FindingCode.PROPOSAL_STREAM_UNKNOWN, "its stream is not settled"),
            Map.entry(FindingCode.PROPOSAL_INCOMPATIBLE, "may react with what is in the container"),
            Map.entry(FindingCode.PROPOSAL_LABEL, "does not match the container's label"),
            Map.entry(FindingCode.TRANSFER_EXCEEDS_LAYER, "more than the layer has"),
            Map.entry(FindingCode.LAYER_LEFT_EARLY, "left before its evidence was complete"),
            Map.entry(FindingCode.TRANSFER_IN_WRONG_STREAM, "another stream than the container's"),
            Map.entry(FindingCode.CONTAINER_INCOMPATIBLE, "what the container holds should not stand together"),
            Map.entry(FindingCode.TRANSFER_OF_GONE, "by the book no longer there"),
            Map.entry(FindingCode.TRANSFER_OF_REUSED, "said to be used again"),
            Map.entry(FindingCode.CONTAINER_CONTENT_UNKNOWN, "what the container holds is not known"),
            Map.entry(FindingCode.CONTAINER_CONTENT_DIFFERS, "the container holds another stream than its label says"),
            Map.entry(FindingCode.CONTAINER_UNKNOWN, "no such container in the table of containers"),
            Map.entry(FindingCode.MATERIAL_UNLISTED, "no table knows it: its reactivity is not judged"),
            Map.entry(FindingCode.MATERIAL_AMBIGUOUS, "its name is not certain: its reactivity is not judged"),
            Map.entry(FindingCode.CONTAINER_OVERFULL, "the container would be above its largest fill"),
            Map.entry(FindingCode.CONTAINER_NEARLY_FULL, "the container would be nearly full"),
            Map.entry(FindingCode.CONTAINER_OVERDUE, "the container is past its date"),
            Map.entry(FindingCode.CONTAINER_DUE_SOON, "the container's date is near"));

    /** Copies the list. */
    public ProposalLine {
        reasons = List.copyOf(reasons);
    }

    /** What can be said of a proposal. */
    public enum Group {
        /** A stop stands against it. */
        DO_NOT("do not", "not to make"),
        /** A hold or a check stands against it. */
        ASK("ask", "to ask about"),
        /** Nothing that the record knows stands against it; a person decides. */
        FITS("fits", "that fit");

        private final String word;
        private final String several;

        Group(String word, String several) {
            this.word = word;
            this.several = several;
        }

        /** A number of such proposals, in words. */
        public String counted(long number) {
            return number + " " + several;
        }

        /** The word in reports. */
        public String word() {
            return word;
        }
    }

    /** All proposals of a book: those that must not be made first, then those to ask about, then those that fit. */
    public static List<ProposalLine> of(Review review) {
        Map<String, List<Finding>> against = against(review);
        List<ProposalLine> lines = new ArrayList<>(intoNoContainer(review));
        for (Group group : Group.values()) {
            for (ContainerReview container : review.containers()) {
                for (ProposalFit fit : container.proposals()) {
                    ProposalLine line = of(
                            container,
                            fit,
                            against.getOrDefault(fit.addition().transfer().id(), List.of()));
                    if (line.group() == group) {
                        lines.add(line);
                    }
                }
            }
        }
        return lines;
    }

    /** Proposals for a container that the table of containers does not have: nothing can be looked at, so they are not to be made. */
    private static List<ProposalLine> intoNoContainer(Review review) {
        Set<String> known = new LinkedHashSet<>();
        review.containers().forEach(c -> known.add(c.id()));
        return review.book().transfers().stream()
                .filter(t -> t.status() == Transfer.Status.PROPOSED && !known.contains(t.container()))
                .map(t -> new ContainerAddition(
                        t,
                        t.massGrams()
                                .entered()
                                .map(e -> Map.of(LayerFlow.UNSTATED, e.value()))
                                .orElse(Map.of()),
                        0,
                        0,
                        List.of()))
                .map(a -> new ProposalLine(
                        Group.DO_NOT,
                        a.transfer().id(),
                        a.source(),
                        a.transfer().container(),
                        a.totalGrams(),
                        List.of(REASONS.get(FindingCode.CONTAINER_UNKNOWN)),
                        a))
                .toList();
    }

    /** What speaks against transfers that were made, by their names: layers that left too early, another stream, what is gone. */
    public static Map<String, List<String>> againstMade(Review review) {
        Map<String, List<Finding>> byTransfer = against(review);
        Map<String, List<Finding>> leftEarly = review.findings().stream()
                .filter(f -> f.code() == FindingCode.LAYER_LEFT_EARLY)
                .collect(Collectors.groupingBy(Finding::run));
        Map<String, List<String>> reasons = new HashMap<>();
        for (Transfer transfer : review.book().transfers()) {
            if (transfer.status() == Transfer.Status.DONE) {
                reasons.put(
                        transfer.id(),
                        Stream.concat(
                                        byTransfer.getOrDefault(transfer.id(), List.of()).stream(),
                                        leftEarly.getOrDefault(transfer.run(), List.of()).stream()
                                                .filter(f -> transfer.layers()
                                                        .containsAll(f.subject().layers())))
                                .map(f -> REASONS.get(f.code()))
                                .filter(Objects::nonNull)
                                .distinct()
                                .toList());
            }
        }
        return reasons;
    }

    /** Findings about each transfer, and about the container that it goes into. */
    private static Map<String, List<Finding>> against(Review review) {
        Map<String, List<Finding>> against = new HashMap<>();
        Map<String, List<Transfer>> into =
                review.book().transfers().stream().collect(Collectors.groupingBy(Transfer::container));
        for (Finding finding : review.findings()) {
            String transfer = finding.subject().transfer();
            if (finding.severity() != Severity.NOTE && !transfer.isEmpty()) {
                against.computeIfAbsent(transfer, t -> new ArrayList<>()).add(finding);
            }
            if (OF_THE_CONTAINER.contains(finding.code())) {
                into.getOrDefault(finding.subject().container(), List.of())
                        .forEach(t -> against.computeIfAbsent(t.id(), id -> new ArrayList<>())
                                .add(finding));
            }
        }
        unjudgedInLayers(review, against);
        unjudgedMaterials(review, against);
        return against;
    }

    /** What was put into a run and is not judged may be in each of its layers. */
    private static void unjudgedInLayers(Review review, Map<String, List<Finding>> against) {
        Map<String, List<Transfer>> ofLayers = review.book().transfers().stream()
                .filter(t -> !t.layers().isEmpty())
                .collect(Collectors.groupingBy(Transfer::run));
        for (RunReview run : review.runs()) {
            List<Finding> unjudged = run.findings().stream()
                    .filter(f -> f.code() == FindingCode.MATERIAL_UNLISTED && f.severity() != Severity.NOTE)
                    .toList();
            ofLayers.getOrDefault(run.id(), List.of())
                    .forEach(t -> against.computeIfAbsent(t.id(), id -> new ArrayList<>())
                            .addAll(unjudged));
        }
    }

    /** A material that is not judged is said once a book and stands against every transfer of it. */
    private static void unjudgedMaterials(Review review, Map<String, List<Finding>> against) {
        Map<String, Finding> byMaterial = new HashMap<>();
        for (Finding finding : review.findings()) {
            if (finding.code() == FindingCode.MATERIAL_UNLISTED || finding.code() == FindingCode.MATERIAL_AMBIGUOUS) {
                byMaterial.putIfAbsent(finding.subject().substance().toLowerCase(Locale.ROOT), finding);
            }
        }
        for (Transfer transfer : review.book().transfers()) {
            Finding finding = byMaterial.get(transfer.material().toLowerCase(Locale.ROOT));
            if (finding != null
                    && transfer.layers().isEmpty()
                    && !finding.subject().transfer().equals(transfer.id())) {
                against.computeIfAbsent(transfer.id(), t -> new ArrayList<>()).add(finding);
            }
        }
    }

    private static ProposalLine of(ContainerReview container, ProposalFit fit, List<Finding> against) {
        boolean stop = against.stream().anyMatch(f -> f.severity() == Severity.STOP);
        boolean fillUnknown = fit.after().fillPercent().isEmpty();
        boolean open = !against.isEmpty() || !fit.fits() || fit.isOver() || fillUnknown;
        Set<String> reasons = new LinkedHashSet<>();
        List<Finding> gravestFirst = against.stream()
                .sorted(Comparator.comparing(f -> f.code() != FindingCode.PROPOSAL_INCOMPATIBLE))
                .toList();
        for (Finding finding : gravestFirst) {
            if (finding.code() == FindingCode.PROPOSAL_INCOMPATIBLE
                    && !fit.clashes().isEmpty()) {
                fit.clashes().stream()
                        .sorted(Comparator.comparing(clash -> !clash.isHazardous()))
                        .forEach(clash -> reasons.add(words(clash)));
            } else {
                reasons.add(REASONS.getOrDefault(finding.code(), finding.code().inWords()));
            }
        }
        if (against.isEmpty() && !fit.fits()) {
            reasons.add("its make-up suggests " + fit.streamName());
        }
        if (fit.isOver() && against.stream().noneMatch(f -> f.code() == FindingCode.CONTAINER_OVERFULL)) {
            reasons.add(overfull(container, fit));
        }
        if (fillUnknown) {
            reasons.add("the container's capacity is not recorded");
        }
        return new ProposalLine(
                stop ? Group.DO_NOT : open ? Group.ASK : Group.FITS,
                fit.addition().transfer().id(),
                fit.addition().source(),
                container.id(),
                fit.addition().totalGrams(),
                List.copyOf(reasons),
                fit.addition());
    }

    /** A proposal that is too much only behind an earlier one says which: without that one the reason is gone. */
    private static String overfull(ContainerReview container, ProposalFit fit) {
        boolean alone =
                container.tally().now().plus(fit.addition()).fillPercent().orElse(0) > fit.fillLimitPercent();
        Optional<String> crossing = container.proposals().stream()
                .takeWhile(p -> p != fit)
                .filter(ProposalFit::crossesFill)
                .map(p -> p.addition().transfer().id())
                .findFirst();
        return alone || crossing.isEmpty()
                ? "above the largest fill"
                : "above the largest fill if " + crossing.get() + " is made first";
    }

    /** The two materials, what comes of it and the gas: nobody asks whether a pair that is not named is grave. */
    private static String words(ProposalFit.Clash clash) {
        return clash.incoming() + " meets " + clash.present()
                + (clash.earlierTransfer().isEmpty() ? "" : " of " + clash.earlierTransfer())
                + ": " + clash.consequence() + clash.gasInBrackets();
    }

    /** The proposals that fit, by their container: looked for once, since a book may have thousands of both. */
    public static Map<String, List<ProposalLine>> fitting(Review review) {
        Map<String, List<ProposalLine>> fitting = new HashMap<>();
        for (ProposalLine line : of(review)) {
            if (line.group() == Group.FITS) {
                fitting.computeIfAbsent(line.container(), id -> new ArrayList<>())
                        .add(line);
            }
        }
        return fitting;
    }

    /** A container with the proposals made that fit. */
    public static ContainerState after(ContainerReview container, Map<String, List<ProposalLine>> fitting) {
        ContainerState state = container.tally().now();
        for (ProposalLine line : fitting.getOrDefault(container.id(), List.of())) {
            state = state.plus(line.addition());
        }
        return state;
    }
}
