package workuptally.published;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import workuptally.book.BookReader;
import workuptally.model.Book;
import workuptally.model.Run;
import workuptally.reference.Reference;
import workuptally.tally.RunTally;
import workuptally.tally.RunTallying;
import workuptally.tally.amounts.Substances;

/** Whole published procedures, read as a book by the reader that users have, and tallied. */
class PublishedProceduresTest {
    private static final Path BOOK = Path.of("src/test/resources/workuptally/published/procedures");
    private static final Map<String, RunTally> TALLIES = new HashMap<>();

    private static Book book;

    @BeforeAll
    static void tallyTheProcedures() throws Exception {
        book = new BookReader().read(BOOK);
        RunTallying tallying = new RunTallying(book.limits(), new Substances(Reference.load()));
        book.runs().forEach(run -> TALLIES.put(run.id(), tallying.tally(run)));
    }

    static List<ProcedureCase> cases() {
        return ProcedureCase.all();
    }

    static Stream<ProcedureCase> casesWithSomethingWrongInPrint() {
        return cases().stream()
                .filter(c -> c.expected().stream()
                        .anyMatch(e -> e.printed().filter(p -> !p.agrees()).isPresent()));
    }

    private static double figure(ProcedureCase.Expected expected) {
        return new ProcedureFigures(TALLIES.get(expected.run())).number(expected);
    }

    @ParameterizedTest
    @MethodSource("cases")
    void figuresAgreeWithTheRecomputedOnes(ProcedureCase each) {
        for (ProcedureCase.Expected expected : each.expected()) {
            String what = each + ", " + expected.figure() + " of " + expected.subject() + " in " + expected.run();
            if (expected.text().isPresent()) {
                assertEquals(
                        expected.text().get(), new ProcedureFigures(TALLIES.get(expected.run())).text(expected), what);
            } else {
                assertEquals(expected.value(), figure(expected), expected.tolerance(), what);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("cases")
    void figuresAgreeWithThePrintedOnesWhereThoseAreRight(ProcedureCase each) {
        for (ProcedureCase.Expected expected : each.expected()) {
            expected.printed()
                    .filter(ProcedureCase.Printed::agrees)
                    .ifPresent(printed -> assertEquals(
                            printed.number(), figure(expected), printed.tolerance(), each + ", " + expected));
        }
    }

    @ParameterizedTest
    @MethodSource("casesWithSomethingWrongInPrint")
    void figuresContradictThePrintedOnesThatAreWrong(ProcedureCase each) {
        for (ProcedureCase.Expected expected : each.expected()) {
            expected.printed()
                    .filter(printed -> !printed.agrees())
                    .ifPresent(printed -> assertTrue(
                            Math.abs(printed.number() - figure(expected)) > printed.tolerance(),
                            each + ", " + expected));
        }
    }

    @Test
    void theBookOfProceduresHasNoFaultOfForm() {
        assertEquals(List.of(), book.findings());
    }

    @Test
    void everyProcedureIsAssertedAndEveryRunBelongsToOne() {
        Set<String> ids = new HashSet<>();
        Set<String> asserted = new HashSet<>();
        for (ProcedureCase each : cases()) {
            assertTrue(ids.add(each.id()), each.id());
            for (String run : each.runs()) {
                List<String> figures = each.expected().stream()
                        .filter(e -> e.run().equals(run))
                        .map(ProcedureCase.Expected::figure)
                        .toList();
                assertFalse(figures.isEmpty(), each + " asserts nothing in " + run);
                assertTrue(asserted.add(run), run);
            }
        }
        assertEquals(20, ids.size());
        assertEquals(book.runs().stream().map(Run::id).collect(Collectors.toSet()), asserted);
    }

    /** Only the lidocaine preparation prints neither a yield nor a mass. */
    @Test
    void everyProcedureWithAPrintedMassHasItsYieldAsserted() {
        List<String> without = cases().stream()
                .filter(c -> c.expected().stream().noneMatch(e -> e.figure().equals("overTheoryPercent")))
                .map(ProcedureCase::id)
                .toList();
        assertEquals(List.of("procedure-19"), without);
    }

    /** Without a purity no procedure may give more than an upper bound; the one with a purity printed gives a yield. */
    @Test
    void yieldsWithoutAnAssayAreUpperBounds() {
        for (RunTally tally : TALLIES.values()) {
            boolean assayed = tally.run().id().equals("P04");
            tally.yields()
                    .forEach(y -> assertEquals(
                            !assayed, y.basis().isUpperBound(), tally.run().id()));
        }
    }

    @Test
    void partnersThatCannotBeToldApartAreBothNamed() {
        List<String> limiting = TALLIES.get("P01").theory().orElseThrow().limiting().stream()
                .map(l -> l.material())
                .toList();
        assertEquals(List.of("phenylmagnesium bromide in THF", "furfural"), limiting);
    }

    @Test
    void solventAccountCountsThePrintedVolumesOfTheWorkup() {
        assertEquals(300, ProcedureFigures.accountedMillilitres(TALLIES.get("P01"), "Ethyl acetate"), 1e-6);
        assertEquals(250, ProcedureFigures.accountedMillilitres(TALLIES.get("P03"), "Ethyl acetate"), 1e-6);
        assertEquals(600, ProcedureFigures.accountedMillilitres(TALLIES.get("P03"), "Dichloromethane"), 1e-6);
        assertEquals(2500, ProcedureFigures.accountedMillilitres(TALLIES.get("P16-low"), "Diethyl ether"), 1e-6);
    }
}
