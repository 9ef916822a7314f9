package workuptally.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import workuptally.examples.DemoReview;
import workuptally.judgement.Review;
import workuptally.judgement.ReviewBuilder;
import workuptally.judgement.RunReview;
import workuptally.judgement.containers.ContainerReview;
import workuptally.judgement.containers.ProposalFit;
import workuptally.judgement.layers.LayerDecision.State;
import workuptally.model.Book;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Severity;
import workuptally.model.Transfer;
import workuptally.reference.Reference;
import workuptally.report.view.wording.Wording;
import workuptally.tally.containers.ContainerState;
import workuptally.tally.waste.SolventUse;

/** Containers and proposals of the invented week, against what its authors planted and computed by hand. */
class DemoWasteTest {
    private static Book book;
    private static Review review;

    @BeforeAll
    static void reviewTheWeek() throws Exception {
        book = DemoReview.book();
        review = DemoReview.review();
    }

    private static Review review(Book book) {
        return new ReviewBuilder(Reference.load(), "test").review(book);
    }

    private static ContainerReview container(Review review, String id) {
        return review.containers().stream()
                .filter(c -> c.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static ProposalFit proposal(String id) {
        return review.containers().stream()
                .flatMap(c -> c.proposals().stream())
                .filter(p -> p.addition().transfer().id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    /** The most severe finding about each transfer, by the word before the colon. */
    private static Map<String, Severity> worstByTransfer() {
        Map<String, Severity> worst = new LinkedHashMap<>();
        for (Transfer transfer : book.transfers()) {
            review.findings().stream()
                    .filter(f -> f.run().isEmpty() && Wording.POINT.of(f.seen()).startsWith(transfer.id() + ":"))
                    .map(Finding::severity)
                    .min(Severity::compareTo)
                    .ifPresent(s -> worst.put(transfer.id(), s));
        }
        return worst;
    }

    private static Optional<Finding> finding(String code, String about) {
        return review.findings().stream()
                .filter(f -> f.code().word().startsWith(code)
                        && Wording.POINT.of(f.seen()).startsWith(about))
                .findFirst();
    }

    @Test
    void everyProposalGetsTheSeverityOfTheKeyAndTheOthersNone() {
        assertEquals(
                Map.of(
                        "T5", Severity.STOP,
                        "T6", Severity.STOP,
                        "T7", Severity.HOLD,
                        "T8", Severity.HOLD,
                        "T9", Severity.STOP,
                        "T10", Severity.NOTE,
                        "T11", Severity.HOLD,
                        "T12", Severity.HOLD),
                worstByTransfer());
    }

    @Test
    void nothingElseAboutContainersIsMoreThanANote() {
        review.findings().stream()
                .filter(f -> f.run().isEmpty() && Wording.POINT.of(f.seen()).startsWith("W-"))
                .filter(f ->
                        f.code() != FindingCode.CONTAINER_DUE_SOON) // its last working day is the day of the review
                .forEach(f -> assertEquals(Severity.NOTE, f.severity(), f::toString));
    }

    @Test
    void swappedLayerIsStoppedForItsStreamAndHeldForItsProduct() {
        assertTrue(Wording.POINT
                .of(finding("proposal-wrong-stream", "T5:").orElseThrow().seen())
                .contains("Halogenated"));
        assertTrue(Wording.POINT
                .of(finding("proposal-holds-product", "T5:").orElseThrow().seen())
                .contains("4-nitrobenzaldehyde"));
    }

    @Test
    void bicarbonateAndThiosulfateInAcidNameBothGases() {
        Finding stop = finding("proposal-incompatible", "T6:").orElseThrow();
        assertTrue(
                Wording.POINT.of(stop.seen()).contains("CO2")
                        && Wording.POINT.of(stop.seen()).contains("SO2"),
                Wording.POINT.of(stop.seen()));
    }

    @Test
    void ninthTransferCrossesTheFillAndNamesWhatFollows() {
        assertEquals(90.5, proposal("T9").after().fillPercent().orElseThrow(), 0.3);
        assertEquals(9.05, proposal("T9").after().litres(), 0.03);
        assertEquals(
                92, container(review, "W-AQB-05").afterProposals().fillPercent().orElseThrow(), 0.5);
        assertTrue(Wording.POINT
                .of(finding("container-overfull", "T9:").orElseThrow().seen())
                .contains("with T11, T12"));
        assertEquals(
                List.of("T9"),
                review.containers().stream()
                        .flatMap(c -> c.proposals().stream())
                        .filter(ProposalFit::crossesFill)
                        .map(p -> p.addition().transfer().id())
                        .toList());
    }

    @Test
    void labelOfTheTenthTransferListsItsSolvents() {
        Finding note = finding("proposal-label", "T10:").orElseThrow();
        assertTrue(
                Wording.POINT.of(note.action()).contains("ethanol")
                        && Wording.POINT.of(note.action()).contains("tert-butyl methyl ether"),
                Wording.POINT.of(note.action()));
        ContainerReview container = container(review, "W-AQA-04");
        assertEquals(
                77,
                container
                        .tally()
                        .now()
                        .plus(proposal("T10").addition())
                        .fillPercent()
                        .orElseThrow(),
                0.77);
    }

    @Test
    void solventContainerAfterThreeTransfersIsAsPrinted() {
        ContainerState after = proposal("T3").after();
        assertEquals(6130, after.totalGrams(), 0.5);
        assertEquals(7.55, after.litres(), 0.02);
        Map<String, Double> percent = new LinkedHashMap<>();
        after.composition(OptionalDouble.empty()).forEach(p -> percent.put(p.substance(), p.massPercent()));
        assertEquals(
                Map.of(
                        "acetone", 45.7,
                        "ethyl acetate", 26.8,
                        "methanol", 13.4,
                        "n-heptane", 9.8,
                        "water", 4.1,
                        "ethanol", 0.2),
                percent);
    }

    @Test
    void tracesAreGroupedOnlyWhereALimitSaysSo() {
        ContainerState after = container(review, "W-AQA-04").afterProposals();
        List<ContainerState.Part> grouped = after.composition(OptionalDouble.of(1));
        assertTrue(grouped.stream().anyMatch(p -> p.substance().equals(ContainerState.TRACES)));
        assertTrue(after.composition(OptionalDouble.empty()).stream()
                .noneMatch(p -> p.substance().equals(ContainerState.TRACES)));
        assertEquals(
                100,
                grouped.stream().mapToDouble(ContainerState.Part::massPercent).sum(),
                1e-9);
    }

    @Test
    void everyCompositionAddsUpToOneHundred() {
        for (ContainerReview container : review.containers()) {
            for (ContainerState state : List.of(container.tally().now(), container.afterProposals())) {
                assertEquals(
                        100,
                        state.composition(OptionalDouble.empty()).stream()
                                .mapToDouble(ContainerState.Part::massPercent)
                                .sum(),
                        1e-9,
                        container.id());
            }
        }
    }

    @Test
    void containerDueOnASundayNamesTheFridayBefore() {
        var age = container(review, "W-HAL-03").tally().age().orElseThrow();
        assertEquals(88, age.daysOpen());
        assertEquals(Optional.of(LocalDate.of(2026, 3, 8)), age.dueOn());
        assertEquals(Optional.of(LocalDate.of(2026, 3, 6)), age.lastWorkingDay());
        assertTrue(finding("container-due-soon", "W-HAL-03").isPresent());
    }

    @Test
    void ledgersAgreeWithTheWeighedBottles() {
        review.containers()
                .forEach(
                        c -> assertTrue(c.tally().reconciliation().orElseThrow().agrees(), c.id()));
    }

    @Test
    void conditionAboutTheContainerFollowsTheProposal() {
        assertEquals(State.NOT_MET, containerCondition("R26-050", "A2"));
        assertEquals(State.MET, containerCondition("R26-050", "A1a"));
        assertEquals(State.NOT_MET, containerCondition("R26-045", "L1"));
        assertEquals(State.NOT_ASKED, containerCondition("R26-050", "A3"));
    }

    private static State containerCondition(String run, String layer) {
        return review.runs().stream()
                .filter(r -> r.id().equals(run))
                .findFirst()
                .flatMap(r -> r.decision(layer))
                .orElseThrow()
                .conditions()
                .stream()
                .filter(c -> c.id().equals("R10"))
                .findFirst()
                .orElseThrow()
                .state();
    }

    @Test
    void addingATransferChangesExactlyTheContainerItNames() {
        Transfer model = book.transfers().get(2);
        List<Transfer> transfers = new ArrayList<>(book.transfers());
        transfers.add(new Transfer(
                "T13",
                "",
                List.of(),
                "toluene",
                "W-NH-08",
                model.massGrams(),
                Transfer.Status.DONE,
                "C1",
                Optional.empty(),
                model.row()));
        Review changed = review(new Book(
                book.name(),
                book.files(),
                book.runs(),
                book.containers(),
                transfers,
                book.vesselTares(),
                book.history(),
                book.corrections(),
                book.limits(),
                book.findings()));
        for (ContainerReview before : review.containers()) {
            ContainerReview after = container(changed, before.id());
            if (before.id().equals("W-NH-08")) {
                assertEquals(
                        before.tally().now().totalGrams() + 850,
                        after.tally().now().totalGrams(),
                        1e-9);
            } else {
                assertEquals(before.tally().now(), after.tally().now(), before.id());
                assertEquals(before.afterProposals(), after.afterProposals(), before.id());
            }
        }
    }

    @Test
    void massIntensityOfTheWeekIsSumOverSumAndTheMeanStandsBeside() {
        assertEquals(22.7, review.period().metrics().pmi().orElseThrow(), 0.23);
        assertEquals(46.7, review.period().metrics().meanOfPmis().orElseThrow(), 0.47);
        assertEquals(8, review.period().metrics().runs().size());
    }

    @Test
    void weightedYieldIsShownWithAndWithoutTheLargestRun() {
        assertEquals(91.7, review.period().amountWeightedYieldPercent().orElseThrow(), 0.3);
        assertEquals("R26-050", review.period().withoutLargest().orElseThrow().run());
        assertEquals(84.9, review.period().withoutLargest().orElseThrow().percent(), 0.3);
    }

    @Test
    void everySolventGoesSomewhere() {
        for (RunReview run : review.runs()) {
            for (SolventUse use : run.tally().solvents()) {
                assertEquals(
                        use.inGrams(),
                        use.recoveredGrams()
                                + use.inDistillatesGrams()
                                + use.inLayersGrams()
                                + use.onCakesGrams()
                                + use.inLotsGrams()
                                + use.notFoundGrams(),
                        1e-9,
                        run.id() + " " + use.solvent());
            }
        }
        assertEquals(
                100,
                review.period().solventRecoveredPercent()
                        + review.period().solventInDistillatesPercent()
                        + review.period().solventNotFoundPercent()
                        + 100
                                * review.period().solvents().stream()
                                        .mapToDouble(u -> u.inLayersGrams() + u.onCakesGrams() + u.inLotsGrams())
                                        .sum()
                                / review.period().solventInGrams(),
                1e-9);
    }

    @Test
    void factsOfRegulationsNameTheirSourceAndOnlyWhatMayBearOnTheContainer() {
        List<String> halogenated = keys("W-HAL-03");
        assertTrue(halogenated.contains("us-tc-chloroform") && halogenated.contains("us-ignitable"));
        assertTrue(!halogenated.contains("us-corrosive-low"));
        assertTrue(keys("W-AQA-04").contains("us-corrosive-low"));
        assertTrue(review.containers().stream()
                .flatMap(c -> c.facts().stream())
                .noneMatch(f -> f.source().isBlank()));
    }

    private static List<String> keys(String id) {
        return container(review, id).facts().stream().map(f -> f.key()).toList();
    }
}
