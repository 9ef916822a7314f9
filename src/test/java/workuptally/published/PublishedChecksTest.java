package workuptally.published;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class PublishedChecksTest {
    private static final List<String> CHEMISTRY =
            List.of("extraction", "assay", "gas", "vapour-pressure", "statistics", "drying", "waste", "trade");
    private static final String STATEMENT = "statement";

    private static final ChemistryFigures FIGURES = new ChemistryFigures();

    static Stream<PublishedCase> chemistryCases() {
        return CHEMISTRY.stream()
                .flatMap(file -> PublishedCase.of(file).stream())
                .filter(each -> !each.kind().equals(STATEMENT));
    }

    static Stream<PublishedCase> uncertaintyCases() {
        return PublishedCase.of("uncertainty").stream();
    }

    static Stream<PublishedCase> metricsCases() {
        return PublishedCase.of("metrics").stream();
    }

    static Stream<PublishedCase> allCases() {
        return Stream.concat(
                Stream.concat(metricsCases(), uncertaintyCases()),
                CHEMISTRY.stream().flatMap(file -> PublishedCase.of(file).stream()));
    }

    private static void check(PublishedCase each, CaseFigures figures) {
        assertFalse(each.expected().isEmpty(), each.id());
        each.expected()
                .forEach(expected -> assertEquals(
                        expected.value(),
                        figures.get(expected.figure()),
                        expected.tolerance(),
                        each + ": " + expected.figure()));
    }

    @ParameterizedTest
    @MethodSource("chemistryCases")
    void chemistryAgreesWithPublishedWork(PublishedCase each) {
        check(each, FIGURES.of(each));
    }

    @ParameterizedTest
    @MethodSource("uncertaintyCases")
    void uncertaintyAgreesWithPublishedWork(PublishedCase each) {
        check(each, UncertaintyFigures.of(each));
    }

    @ParameterizedTest
    @MethodSource("metricsCases")
    void massMetricsAgreeWithPublishedWork(PublishedCase each) throws Exception {
        check(each, MetricsFigures.of(each));
    }

    @Test
    void everyCaseHasItsOwnNameAndNoneIsLost() {
        Set<String> names = new HashSet<>();
        allCases().forEach(each -> assertTrue(names.add(each.id()), each.id()));
        assertEquals(66, names.size());
    }

    @Test
    void onlyStatementsWithoutAFigureAreNotComputed() {
        assertEquals(7, allCases().filter(each -> each.expected().isEmpty()).count());
        assertTrue(allCases()
                .filter(each -> each.expected().isEmpty())
                .allMatch(each -> each.kind().equals(STATEMENT)));
    }
}
