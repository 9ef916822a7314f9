package workuptally.property;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import workuptally.judgement.ReviewBuilder;
import workuptally.reference.Reference;

/**
 * Evidence is monotone: with a reading less, a coarser one or one that is contradicted, no layer comes nearer to complete evidence, no
 * balance to closing (but for coarser readings, within the resolution that closing needs), no transfer to fitting, and no stop or hold goes without another.
 *
 * <p>A quarter of the demo week's readings and a sample of random workups with every build; {@code -Dmonotone.every=1} takes all of the demo week,
 * {@code -Dmonotone.runs=2000} that many random workups.
 */
@Tag("slow")
class EvidenceIsMonotoneTest {
    private static final int RUNS = Integer.getInteger("monotone.runs", 25);

    /** Of the demo week each so many readings. */
    private static final int EVERY = Integer.getInteger("monotone.every", 4);

    /** Runs of one book: enough that reading it costs little, few enough that it stays small. */
    private static final int RUNS_OF_A_BOOK = 600;

    /** Of a random workup, so many of its worsened readings are tried; each seed draws others. */
    private static final int OF_A_RANDOM_RUN = Integer.getInteger("monotone.readings", 40);

    @TempDir
    private Path folder;

    private final Reference reference = Reference.load();

    @Test
    void theDemoWeek() throws IOException {
        CsvTables week = CsvTables.ofTheDemoWeek();
        List<Trial> trials = new ArrayList<>();
        for (RowsOfRun run : RowsOfRun.of(week)) {
            run.readings().forEach(reading -> trials.add(new Trial(run, reading)));
        }
        assertTrue(trials.size() > 3000, "only " + trials.size());
        assertMonotone(
                week,
                IntStream.range(0, trials.size())
                        .filter(i -> i % EVERY == 0)
                        .mapToObj(trials::get)
                        .toList());
    }

    @Test
    void randomWorkups() throws IOException {
        CsvTables book = RandomWorkup.emptyBook();
        for (int seed = 1; seed <= RUNS; seed++) {
            new RandomWorkup("seed-" + seed, 7_000_000 + seed, RandomWorkup.Style.SOUND).addTo(book);
        }
        List<Trial> trials = new ArrayList<>();
        int seed = 0;
        for (RowsOfRun run : RowsOfRun.of(book)) {
            List<WorsenedReading> readings = run.readings();
            java.util.Collections.shuffle(readings, new Random(++seed));
            readings.stream().limit(OF_A_RANDOM_RUN).forEach(reading -> trials.add(new Trial(run, reading)));
        }
        assertMonotone(book, trials);
    }

    /** One reading of one run, worsened. */
    private record Trial(RowsOfRun run, WorsenedReading reading) {}

    private void assertMonotone(CsvTables book, List<Trial> trials) throws IOException {
        List<String> violations = new ArrayList<>();
        Map<String, Integer> count = new LinkedHashMap<>();
        for (int from = 0; from < trials.size(); from += RUNS_OF_A_BOOK) {
            List<Trial> some = trials.subList(from, Math.min(trials.size(), from + RUNS_OF_A_BOOK));
            for (String violation : violations(book, some)) {
                violations.add(violation);
                count.merge(
                        violation.replaceFirst("^\\S+ Reading", "").replaceFirst(" of \\[.*\\] =", " ="),
                        1,
                        Integer::sum);
            }
        }
        if (Boolean.getBoolean("monotone.report")) {
            violations.forEach(System.out::println);
        }
        assertEquals(List.of(), violations.stream().limit(20).toList(), violations.size() + " of " + trials.size());
    }

    private List<String> violations(CsvTables book, List<Trial> trials) throws IOException {
        CsvTables worse = book.emptied(List.of("limits.csv", "vessels.csv"));
        Map<RowsOfRun, String> untouched = new LinkedHashMap<>();
        int number = 0;
        List<String> names = new ArrayList<>();
        for (Trial trial : trials) {
            if (!untouched.containsKey(trial.run())) {
                String name = trial.run().run() + "~" + ++number;
                untouched.put(trial.run(), name);
                trial.run().addTo(worse, name, List.of());
            }
            String name = trial.run().run() + "~" + ++number;
            names.add(name);
            trial.run().addTo(worse, name, List.of(trial.reading()));
        }
        Map<String, Standing> standings = Standing.of(new ReviewBuilder(reference, "test").review(worse.read(folder)));
        List<String> violations = new ArrayList<>();
        for (int i = 0; i < trials.size(); i++) {
            Trial trial = trials.get(i);
            Standing before = standings.get(untouched.get(trial.run()));
            List<String> better = standings
                    .get(names.get(i))
                    .betterThan(before, trial.reading().worse().isCoarser());
            if (!better.isEmpty()) {
                violations.add(trial.run().describe(trial.reading()) + " = " + better);
            }
        }
        return violations;
    }
}
