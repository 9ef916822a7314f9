package workuptally.report.explain;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import workuptally.book.BookReader;
import workuptally.examples.SmallBook;
import workuptally.model.Book;
import workuptally.model.Run;
import workuptally.reference.Reference;
import workuptally.tally.RunTally;
import workuptally.tally.RunTallying;
import workuptally.tally.amounts.Substances;

/** The demo week is invented; what is checked is that its figures can be redone from what an explanation prints. */
class ExplainedRunTest {
    private static final Pattern NUMBER = Pattern.compile("-?\\d+(\\.\\d+)?");
    private static final Set<FigureKind> SUMS_OR_CHAINS = EnumSet.of(FigureKind.ROUTES);

    private static final List<RunTally> TALLIES = new ArrayList<>();

    private final ExplainedRun explanations = new ExplainedRun(2);

    @BeforeAll
    static void tallyTheWeek() throws Exception {
        Book book = new BookReader().read(Path.of("input-templates", "demo-week"));
        RunTallying tallying = new RunTallying(book.limits(), new Substances(Reference.load()));
        book.runs().forEach(run -> TALLIES.add(tallying.tally(run)));
    }

    private static RunTally run(String id) {
        return TALLIES.stream().filter(t -> t.run().id().equals(id)).findFirst().orElseThrow();
    }

    private Explanation figure(String id, String title) {
        return explanations.of(run(id)).stream()
                .filter(e -> e.title().equals(title))
                .findFirst()
                .orElseThrow();
    }

    private static double number(String result) {
        Matcher number = NUMBER.matcher(result.replace('−', '-'));
        assertTrue(number.find(), result);
        return Double.parseDouble(number.group());
    }

    /** Half a unit of the last digit printed, and a little for the five digits of what goes in. */
    private static double tolerance(String result) {
        Matcher number = NUMBER.matcher(result.replace('−', '-'));
        assertTrue(number.find(), result);
        int point = number.group().indexOf('.');
        int decimals = point < 0 ? 0 : number.group().length() - point - 1;
        double half = 0.5 * Math.pow(10, -decimals);
        double hundreds = result.contains("±") || decimals > 0 ? 0 : Math.abs(number(result)) * 5e-3;
        return half + hundreds + 2e-4 * Math.abs(number(result));
    }

    private static boolean isWorkedOut(Explanation figure) {
        return !SUMS_OR_CHAINS.contains(figure.kind())
                && figure.equations().size() > 1
                && figure.equations().stream().noneMatch(e -> e.startsWith("n as entered"));
    }

    @Test
    void everyEquationWithItsNumbersGivesThePrintedResult() {
        int worked = 0;
        for (RunTally tally : TALLIES) {
            for (Explanation figure : explanations.of(tally)) {
                if (isWorkedOut(figure)) {
                    String last = figure.equations().get(figure.equations().size() - 1);
                    assertEquals(
                            number(figure.result()),
                            OnPaper.value(last),
                            tolerance(figure.result()),
                            tally.run().id() + ", " + figure.title() + ": " + last);
                    worked++;
                }
            }
        }
        assertTrue(worked > 400, "only " + worked);
    }

    @Test
    void partsOfEachTotalMassAddUpToIt() {
        int totals = 0;
        for (RunTally tally : TALLIES) {
            for (Explanation figure : explanations.of(tally, "mass")) {
                if (!figure.parts().rows().isEmpty()) {
                    double sum = figure.parts().rows().stream()
                            .mapToDouble(row -> Double.parseDouble(row.get(2)))
                            .sum();
                    assertEquals(number(figure.result()), sum, tolerance(figure.result()), figure.title());
                    totals++;
                }
            }
        }
        assertEquals(22, totals);
    }

    @Test
    void sharesOfEveryBudgetAddUpToAHundred() {
        for (RunTally tally : TALLIES) {
            for (Explanation figure : explanations.of(tally)) {
                if (!figure.budget().isEmpty()) {
                    double sum = figure.budget().stream()
                            .mapToDouble(b -> Double.parseDouble(b.sharePercent()))
                            .sum();
                    assertEquals(100, sum, 0.05 * (figure.budget().size() + 1), figure.title());
                }
            }
        }
    }

    @Test
    void uncertaintyFollowsFromTheBudgetOfTheTheory() {
        double variance = 0;
        for (Explanation.BudgetLine line :
                figure("R26-042", "Theory of benzoic acid").budget()) {
            double part = Double.parseDouble(line.standardUncertainty()) * Double.parseDouble(line.sensitivity());
            variance += part * part;
        }
        assertEquals(0.081, 2 * Math.sqrt(variance), 0.001);
    }

    /** Benzoic acid, C7H6O2, by the abridged atomic weights of IUPAC and their half-widths: 122.123 g/mol, u = 0.0082 g/mol. */
    @Test
    void uncertaintyOfAMolarMassIsSaidThoughNoAccountCountsIt() {
        assertTrue(
                figure("R26-042", "Theory of benzoic acid").notes().get(0).startsWith("u(M) = 0.0082"),
                figure("R26-042", "Theory of benzoic acid").notes().toString());
    }

    @Test
    void everyEntryCarriesItsPlace() {
        Explanation amount = figure("R26-042", "Amount of methyl benzoate");
        assertEquals(
                "n = 1000 × 13.62 g [charges.csv line 6, Actual amount] × 99.5 %/100 [charges.csv line 6, Assay]"
                        + " / 136.150 g/mol [C8H8O2]",
                amount.equations().get(1));
    }

    @Test
    void theoryYieldAndClosureOfTheHydrolysisAreThoseOfItsKey() {
        assertEquals(12.155, number(figure("R26-042", "Theory of benzoic acid").result()), 0.002);
        assertEquals(66.9, number(figure("R26-042", "Yield of benzoic acid").result()), 0.05);
        assertEquals(
                69.3,
                number(figure("R26-042", "Conversion-adjusted yield of benzoic acid")
                        .result()),
                0.05);
        Explanation closure = figure("R26-042", "Closure on methyl benzoate");
        assertEquals(97.5, number(closure.result()), 0.05);
        assertEquals(5, closure.parts().rows().size());
        assertTrue(closure.notes().get(0).endsWith(": open."), closure::toString);
    }

    @Test
    void threeRoutesToTheLostProductStandSideBySide() {
        List<Explanation> routes = explanations.of(run("R26-042"), "routes");
        assertEquals(
                List.of(
                        "benzoic acid in layer A1 by assay",
                        "benzoic acid in layer A1 by charge balance",
                        "benzoic acid in layer A1 by partition at the pH"),
                routes.stream().map(Explanation::title).toList());
        assertEquals(3.27, number(routes.get(0).result()), 0.005);
        assertEquals(3.15, number(routes.get(1).result()), 0.005);
        assertEquals(3.22, number(routes.get(2).result()), 0.02);
        assertTrue(routes.get(1).equations().get(1).startsWith("150.0 mmol strong base − 124.2 mmol strong acid"));
        assertEquals(3.15, OnPaper.value(routes.get(1).equations().get(2)), 0.005);
    }

    @Test
    void aliquotsArePutBackOneByOne() {
        Explanation corrected = explanations.of(run("R26-051"), "yields").stream()
                .filter(e -> e.title().endsWith("with the aliquots put back"))
                .findFirst()
                .orElseThrow();
        assertEquals(90.4, number(corrected.result()), 0.3);
        assertFalse(corrected.parts().rows().isEmpty());
    }

    @Test
    void wordsChooseAKindOfFigureOrATitle() {
        RunTally tally = run("R26-042");
        assertTrue(explanations.of(tally, " Yield ").stream().allMatch(e -> e.kind() == FigureKind.YIELDS));
        assertEquals(2, explanations.of(tally, "Yield").size());
        assertTrue(explanations.of(tally, "layer a1").size() > 3);
        assertEquals(List.of(), explanations.of(tally, "unicorn"));
        assertEquals(List.of(), explanations.of(tally, ""));
        assertTrue(ExplainedRun.isKind("theory"));
        assertFalse(ExplainedRun.isKind("A1"));
    }

    @Test
    void lotWithoutATareIsNotExplained() {
        assertTrue(explanations.of(run("R26-047"), "lots").isEmpty());
    }

    @Test
    void typedMolarMassIsShownBesideTheFormulas() {
        assertTrue(explanations.of(run("R26-044"), "amounts").stream()
                .flatMap(e -> e.notes().stream())
                .anyMatch(n -> n.startsWith("With the molar mass as typed, 107.15 g/mol")));
    }

    @Test
    void everyRunOfTheWeekHasAFigureOrAReason() {
        for (RunTally tally : TALLIES) {
            assertFalse(explanations.of(tally).isEmpty(), tally.run().id());
            if (tally.run().kind() == Run.Kind.SEPARATION) {
                assertTrue(explanations.of(tally, "theory").stream()
                        .noneMatch(e -> e.title().equals("Limiting reagent")));
            }
        }
    }

    @Test
    void boundOfFewRepeatsNamesItsOwnFactor() {
        // 3 repeats are 2 degrees of freedom, however the result is divided into its own part and that of its
        // calibration: t(0.95; 2) = 2.920 (table of Student's distribution, ISO 2854).
        RunTally tally = SmallBook.reaction()
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Net", "50.00", "Status", "kept")
                .row("assays", "Sample", "A1", "Substance", "P", "Method", "HPLC", "Result", "1.00", "Unit", "g")
                .but("assays", "Relative standard uncertainty", "2")
                .but("assays", "Replicates", "3")
                .tally();
        List<String> notes = new ExplainedRun(2)
                .of(tally).stream().flatMap(e -> e.notes().stream()).toList();
        assertTrue(
                notes.stream()
                        .anyMatch(
                                n -> n.endsWith("= m + 2.921·u, Student's factor for 2 effective degrees of freedom.")),
                notes::toString);
    }
}
