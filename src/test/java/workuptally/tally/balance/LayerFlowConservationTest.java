package workuptally.tally.balance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import workuptally.book.BookReader;
import workuptally.measure.Readings;
import workuptally.model.Book;
import workuptally.model.Run;
import workuptally.model.Step;
import workuptally.reference.Reference;
import workuptally.tally.RunTally;
import workuptally.tally.RunTallying;
import workuptally.tally.amounts.Addition;
import workuptally.tally.amounts.Ingredients;
import workuptally.tally.amounts.Substances;
import workuptally.tally.layers.AdditionAccount;
import workuptally.tally.layers.IngredientAccount;
import workuptally.tally.layers.LayerFlow;
import workuptally.tally.layers.LayerGraph;

/** Where nothing is measured, whatever was put in stands in the portions that are left, component by component. */
class LayerFlowConservationTest {
    private static final int RUNS = 300;
    private static final List<String> SOLVENTS =
            List.of("ethyl acetate", "dichloromethane", "MTBE", "toluene", "diethyl ether");
    private static final List<String> WASHES = List.of("water", "brine", "1 M HCl", "sat. NaHCO3", "1 M NaOH");

    @TempDir
    private Path folder;

    private Book book;

    /** A random chain of washes, extractions and joins of one run; the run id is the seed. */
    private static String steps(int seed) {
        Random random = new Random(seed);
        StringBuilder rows = new StringBuilder();
        List<String> organic = new ArrayList<>(List.of("RM"));
        List<String> aqueous = new ArrayList<>();
        int count = 1 + random.nextInt(8);
        for (int i = 1; i <= count; i++) {
            boolean extracts = !aqueous.isEmpty() && random.nextInt(3) == 0;
            List<String> sources = extracts ? aqueous : organic;
            String source = sources.remove(random.nextInt(sources.size()));
            if (!extracts && !organic.isEmpty() && random.nextBoolean()) {
                source += "+" + organic.remove(0);
            }
            List<String> materials = extracts ? SOLVENTS : WASHES;
            rows.append("seed-%d,%d,%s,%s,%s,%d,%d,%s,%s%n"
                    .formatted(
                            seed,
                            i,
                            extracts ? "extract" : "wash",
                            source,
                            materials.get(random.nextInt(materials.size())),
                            1 + random.nextInt(3),
                            10 + random.nextInt(90),
                            "O" + i,
                            "A" + i));
            organic.add("O" + i);
            aqueous.add("A" + i);
        }
        return rows.toString();
    }

    @BeforeEach
    void readTheRuns() throws Exception {
        StringBuilder runs = new StringBuilder("Run,Status\n");
        StringBuilder charges = new StringBuilder("Run,Material,Role,Actual amount,Actual unit\n");
        StringBuilder workup = new StringBuilder(
                "Run,Step,Operation,From,Material,Portions,Volume (mL),Gives organic,Gives aqueous\n");
        for (int seed = 1; seed <= RUNS; seed++) {
            Random random = new Random(-seed);
            runs.append("seed-%d,in workup%n".formatted(seed));
            charges.append("seed-%d,%s,solvent,%d,mL%n"
                    .formatted(seed, SOLVENTS.get(random.nextInt(SOLVENTS.size())), 20 + random.nextInt(200)));
            charges.append("seed-%d,ethanol,solvent,%d,mL%n".formatted(seed, 1 + random.nextInt(20)));
            workup.append(steps(seed));
        }
        write("runs.csv", runs);
        write("charges.csv", charges);
        write("workup.csv", workup);
        write("products.csv", new StringBuilder("Run,Product\n"));
        write("isolated.csv", new StringBuilder("Run,Lot\n"));
        book = new BookReader().read(folder);
        assertEquals(List.of(), book.findings());
    }

    private void write(String name, StringBuilder text) throws IOException {
        Files.writeString(folder.resolve(name), text);
    }

    @Test
    void everyComponentPutInStandsInThePortionsLeft() throws IOException {
        Substances substances = new Substances(Reference.load());
        RunTallying tallying = new RunTallying(book.limits(), substances);
        IngredientAccount materials = new IngredientAccount(substances);
        int portions = 0;
        for (Run run : book.runs()) {
            RunTally tally = tallying.tally(run);
            LayerGraph graph = LayerGraph.of(run);
            List<Addition> additions =
                    new AdditionAccount(run, new Readings(), book.limits(), graph, substances).list();
            LayerFlow flow = LayerFlow.of(LayerGraph.of(run), substances, tally.amounts(), additions, tally.layers());
            Map<String, Double> in = new LinkedHashMap<>();
            tally.amounts().forEach(a -> add(in, materials.of(a)));
            additions.forEach(a -> add(in, materials.of(a)));
            Map<String, Double> left = new LinkedHashMap<>();
            for (String label : graph.layerLabels()) {
                if (graph.isTerminal(label)) {
                    add(left, flow.portion(label));
                    portions++;
                }
            }
            if (graph.isTerminal(Step.REACTION_MIXTURE)) {
                add(left, flow.portion(Step.REACTION_MIXTURE));
            }
            in.forEach((component, grams) ->
                    assertEquals(grams, left.getOrDefault(component, 0.0), 1e-6 * grams, run.id() + " " + component));
        }
        assertTrue(portions > 2 * RUNS, "only " + portions);
    }

    private static void add(Map<String, Double> sums, Ingredients mixture) {
        mixture.parts().forEach((component, part) -> sums.merge(component, part.grams(), Double::sum));
    }
}
