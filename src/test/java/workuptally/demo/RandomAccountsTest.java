package workuptally.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import workuptally.book.BookReader;
import workuptally.judgement.Review;
import workuptally.judgement.ReviewBuilder;
import workuptally.judgement.containers.ContainerReview;
import workuptally.reference.Reference;
import workuptally.tally.containers.ContainerState;
import workuptally.tally.layers.LayerMakeUp;
import workuptally.tally.waste.SolventUse;

/** Balances that hold for any book, tried on books of random workups; masses are drawn, nothing checks chemistry against the world. */
class RandomAccountsTest {
    private static final List<String> SOLVENTS =
            List.of("ethyl acetate", "dichloromethane", "diethyl ether", "toluene", "MTBE", "methanol", "acetone");
    private static final List<String> WASHES = List.of("water", "brine", "1 M HCl", "sat. NaHCO3", "1 M NaOH");
    private static final int RUNS = 30;

    @TempDir
    private Path folder;

    /** What was put in of each solvent by name, g, from the same numbers that the book holds. */
    private double chargedGrams;

    private double workupGrams;

    private Review review(long seed) throws Exception {
        Random random = new Random(seed);
        List<String> runs = new ArrayList<>(List.of("Run,Date,Kind,Status"));
        List<String> products = new ArrayList<>(List.of("Run,Product,Wanted,Formula"));
        List<String> charges = new ArrayList<>(List.of(
                "Run,Material,Role,Formula,Coefficient,Actual amount,Actual unit,Assay (% w/w),Density (g/mL)"));
        List<String> workup = new ArrayList<>(
                List.of(
                        "Run,Step,Operation,From,Material,Portions,Volume (mL),Density (g/mL),Gives organic,Gives aqueous,Gives other"));
        List<String> layers = new ArrayList<>(List.of("Run,Layer,Phase,Volume (mL),Net (g),pH,Composition,Status"));
        List<String> isolated = new ArrayList<>(List.of("Run,Lot,Product,Stage,From,Net (g),Assay (% w/w)"));
        List<String> transfers = new ArrayList<>(List.of("Transfer,Run,Layer,Material,Container,Amount (g),Status"));
        for (int i = 0; i < RUNS; i++) {
            String run = "Z" + i;
            String solvent = SOLVENTS.get(random.nextInt(SOLVENTS.size()));
            String extractant = SOLVENTS.get(random.nextInt(5));
            double charged = 20 + random.nextInt(80);
            double added = 20 + random.nextInt(80);
            double wash = 10 + random.nextInt(60);
            runs.add(run + ",2026-03-02,reaction,isolated");
            products.add(run + ",acetanilide,yes,C8H9NO");
            charges.add(run + ",aniline,substrate,C6H7N,1,4.66,g,99,");
            charges.add(run + "," + solvent + ",solvent,,," + charged + ",mL,,0.9");
            chargedGrams += 0.9 * charged;
            workup.add(run + ",1,extract,RM," + extractant + ",1," + added + ",0.8,O1,,");
            workupGrams += 0.8 * added;
            workup.add(run + ",2,wash,O1," + WASHES.get(random.nextInt(WASHES.size())) + ",1," + wash + ",1.05,O2,A1,");
            workup.add(run + ",3,concentrate,O2,,,,,,,D1+CR1");
            double aqueous = 1.05 * wash * (0.9 + 0.2 * random.nextDouble());
            double distillate = (0.9 * charged + 0.8 * added) * random.nextDouble();
            layers.add(number("%s,A1,aqueous,%.1f,%.2f,%d,,kept", run, wash, aqueous, 1 + random.nextInt(13)));
            layers.add(number(
                    "%s,D1,distillate,,%.2f,,%s %d %%,to reuse", run, distillate, extractant, 60 + random.nextInt(40)));
            isolated.add(number("%s,CR1,acetanilide,crude,O2,%.3f,95", run, 5 + random.nextDouble()));
            transfers.add(number("T%d,%s,A1,,W%d,%.2f,proposed", i, run, random.nextInt(3), aqueous));
        }
        write("runs", runs);
        write("products", products);
        write("charges", charges);
        write("workup", workup);
        write("layers", layers);
        write("isolated", isolated);
        write("transfers", transfers);
        write(
                "containers",
                List.of(
                        "Container,Waste stream,Capacity (L),Contents then",
                        "W0,\"aqueous, acidic\",10,water 3000 g; hydrogen chloride 100 g",
                        "W1,\"aqueous, basic\",10,water 3000 g; sodium hydroxide 77.7 g",
                        "W2,non-halogenated solvents,10,acetone 333 g; toluene 333 g; heptane 334 g"));
        return new ReviewBuilder(Reference.load(), "test").review(new BookReader().read(folder));
    }

    private static String number(String format, Object... values) {
        return String.format(Locale.ROOT, format, values);
    }

    private void write(String table, List<String> lines) throws IOException {
        Files.write(folder.resolve(table + ".csv"), lines);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 7, 42, 2026, 99_991})
    void accountsCloseForAnyBook(long seed) throws Exception {
        Review review = review(seed);
        assertEquals(chargedGrams + workupGrams, review.period().solventInGrams(), 1e-6);
        review.runs().forEach(run -> run.tally().solvents().forEach(use -> assertCloses(run.id(), use)));
        assertTrue(review.runs().stream().allMatch(r -> r.tally().makeUp("A1").isPresent()));
        review.runs()
                .forEach(run -> run.tally().evidence().makeUps().forEach(makeUp -> {
                    double grams = run.tally()
                            .layer(makeUp.layer())
                            .orElseThrow()
                            .massGrams()
                            .orElseThrow()
                            .value();
                    assertMakesUp(run.id(), makeUp, grams);
                }));
        for (ContainerReview container : review.containers()) {
            assertComposed(container.tally().now());
            assertComposed(container.afterProposals());
            double fitting = container.proposals().stream()
                    .filter(p -> p.fits())
                    .mapToDouble(p -> p.addition().totalGrams())
                    .sum();
            assertEquals(
                    container.tally().now().totalGrams() + fitting,
                    container.afterProposals().totalGrams(),
                    1e-6);
        }
    }

    private static void assertCloses(String run, SolventUse use) {
        String name = run + " " + use.solvent();
        double parts = use.recoveredGrams()
                + use.inDistillatesGrams()
                + use.inLayersGrams()
                + use.onCakesGrams()
                + use.inLotsGrams();
        assertEquals(use.inGrams(), parts + use.notFoundGrams(), 1e-9, name);
        assertTrue(
                use.recoveredGrams() >= 0
                        && use.inDistillatesGrams() >= 0
                        && use.inLayersGrams() >= 0
                        && use.onCakesGrams() >= 0,
                name);
        assertTrue(
                use.notFoundGrams() >= -1e-9 || use.recoveredGrams() + use.inDistillatesGrams() > use.inGrams(), name);
    }

    private static void assertMakesUp(String run, LayerMakeUp makeUp, double grams) {
        assertEquals(grams, makeUp.totalGrams(), 1e-6 * grams, run + " " + makeUp.layer());
        assertTrue(makeUp.grams().values().stream().allMatch(g -> g > 0), run + " " + makeUp.layer());
    }

    private static void assertComposed(ContainerState state) {
        for (OptionalDouble trace : List.of(OptionalDouble.empty(), OptionalDouble.of(1))) {
            assertEquals(
                    100,
                    state.composition(trace).stream()
                            .mapToDouble(ContainerState.Part::massPercent)
                            .sum(),
                    1e-9);
        }
    }
}
