package workuptally.property;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import workuptally.material.MaterialReader;
import workuptally.model.Book;
import workuptally.model.Place;
import workuptally.reference.Reference;
import workuptally.tally.RunTally;
import workuptally.tally.RunTallying;
import workuptally.tally.amounts.Substances;
import workuptally.tally.balance.Closure;
import workuptally.tally.balance.MassBalance;
import workuptally.tally.layers.LayerTally;
import workuptally.tally.suspects.Suspect;
import workuptally.tally.suspects.SuspectAccount;
import workuptally.tally.suspects.UsualSlip;

/**
 * One usual slip is planted in each of many sound runs; the cell has to be named. A slip counts where it matters: it moves a balance by more
 * than the balance leaves open, which is its expanded uncertainty and what it allows for losses. {@code -Dslips.runs} sets how many runs,
 * {@code -Dslips.report=true} prints the table and every slip that was missed.
 */
@Tag("slow")
class PlantedSlipsTest {
    private static final int RUNS = Integer.getInteger("slips.runs", 150);
    private static final boolean REPORT = Boolean.getBoolean("slips.report");
    private static final long SEED = Long.getLong("slips.seed", 20260302L);

    /** Lost on glass without an explanation, %. */
    private static final double ALLOWED_LOSS_PERCENT = 2;

    /** Width within which a density fits its phase, of the density. */
    private static final double ALLOWED_DENSITY = 0.16;

    private static final List<UsualSlip> KINDS = List.of(
            UsualSlip.DECIMAL_POINT,
            UsualSlip.DECIMAL_POINT,
            UsualSlip.MILLIGRAMS_FOR_GRAMS,
            UsualSlip.DIGITS_SWAPPED,
            UsualSlip.DIGITS_SWAPPED,
            UsualSlip.TARE_OF_ANOTHER_VESSEL,
            UsualSlip.NEIGHBOURING_ROW,
            UsualSlip.CELLS_SWAPPED,
            UsualSlip.MILLILITRES_FOR_GRAMS,
            UsualSlip.COUNTED_TWICE,
            UsualSlip.SALT_FOR_BASE,
            UsualSlip.MISSING_ENTRY);

    @TempDir
    Path folder;

    private record Tallied(Book book, List<RunTally> tallies, List<List<Suspect>> suspects) {}

    private Tallied tallied(CsvTables tables) {
        Book book = tables.read(folder);
        Reference reference = Reference.load();
        Substances substances = new Substances(reference, MaterialReader.of(reference));
        SuspectAccount suspects = new SuspectAccount(book, substances);
        List<RunTally> tallies = book.runs().stream()
                .map(run -> new RunTallying(book.limits(), substances.apart()).tally(run))
                .toList();
        return new Tallied(
                book, tallies, tallies.stream().map(t -> suspects.of(t).list()).toList());
    }

    /** First, among three, of how many. */
    private static final class Score {
        int first;
        int amongThree;
        int planted;
    }

    @Test
    void aSlipThatMattersNamesItsCellAndASoundRunNamesNone() {
        CsvTables tables = BenchRun.emptyBook();
        List<BenchRun> runs = new ArrayList<>();
        for (int i = 0; i < RUNS; i++) {
            runs.add(new BenchRun("R" + i, SEED + i, tables));
        }
        Tallied sound = tallied(tables);
        long shown = sound.suspects().stream().filter(s -> !s.isEmpty()).count();
        if (REPORT) {
            for (int i = 0; i < RUNS; i++) {
                if (!sound.suspects().get(i).isEmpty()) {
                    System.out.println("sound " + runs.get(i).run + " "
                            + sound.suspects().get(i).get(0));
                }
            }
        }
        Random random = new Random(SEED);
        List<Optional<PlantedSlip>> planted = new ArrayList<>();
        for (BenchRun run : runs) {
            UsualSlip kind = KINDS.get(random.nextInt(KINDS.size()));
            planted.add(PlantedSlip.in(tables, run.run, kind, random));
        }
        Tallied slipped = tallied(tables);
        Map<UsualSlip, Score> scores = new EnumMap<>(UsualSlip.class);
        Score all = new Score();
        int refused = 0;
        for (int i = 0; i < RUNS; i++) {
            if (planted.get(i).isEmpty()) {
                continue;
            }
            PlantedSlip slip = planted.get(i).get();
            boolean read = isRead(slip, slipped.book());
            refused += read ? 0 : 1;
            if (!read
                    || !matters(slip, sound.tallies().get(i), slipped.tallies().get(i))) {
                continue;
            }
            List<Suspect> suspects = slipped.suspects().get(i);
            int at = 0;
            while (at < suspects.size() && !names(suspects.get(at), slip)) {
                at++;
            }
            for (Score score : List.of(all, scores.computeIfAbsent(slip.slip(), k -> new Score()))) {
                score.planted++;
                score.first += at == 0 && !suspects.isEmpty() ? 1 : 0;
                score.amongThree += at < suspects.size() ? 1 : 0;
            }
            if (REPORT && (at > 0 || suspects.isEmpty())) {
                System.out.println((at < suspects.size() ? "later " : "missed ") + runs.get(i).run + " " + slip.slip()
                        + " " + slip.table() + slip.rows() + " " + slip.heading() + " read "
                        + slip.rows().stream()
                                .map(r -> slip.heading().isEmpty()
                                        ? ""
                                        : tables.rows(slip.table())
                                                .get(r)
                                                .cells()
                                                .toString())
                                .toList()
                        + " "
                        + suspects.stream()
                                .map(s -> s.place().inWords() + " " + s.slip() + " " + s.typed() + ">" + s.suggested())
                                .toList());
            }
        }
        if (REPORT) {
            System.out.println("| slip | planted | first | among three |");
            scores.forEach((kind, s) -> System.out.printf(
                    "| %s | %d | %.1f %% | %.1f %% |%n",
                    kind.word(), s.planted, 100.0 * s.first / s.planted, 100.0 * s.amongThree / s.planted));
            System.out.printf(
                    "| all | %d | %.1f %% | %.1f %% |%nsound: %d of %d; refused by the reader: %d%n",
                    all.planted,
                    100.0 * all.first / all.planted,
                    100.0 * all.amongThree / all.planted,
                    shown,
                    RUNS,
                    refused);
        }
        assertTrue(all.planted > RUNS / 4, "only " + all.planted + " slips that matter");
        assertTrue(shown <= Math.max(1, 0.02 * RUNS), shown + " sound runs name a cell");
        assertTrue(all.first >= 0.8 * all.planted, "first in " + all.first + " of " + all.planted);
        assertTrue(all.amongThree >= 0.95 * all.planted, "named in " + all.amongThree + " of " + all.planted);
    }

    /** A number out of range is refused by the reader, which names the cell itself. */
    private static boolean isRead(PlantedSlip slip, Book book) {
        return book.findings().stream().noneMatch(f -> isAt(f.place(), slip));
    }

    private static boolean isAt(Place place, PlantedSlip slip) {
        return place.file().equals(slip.table())
                && slip.rows().stream().anyMatch(r -> place.row() == r + 2)
                && (slip.heading().isEmpty()
                        || place.cell().endsWith(", " + slip.heading())
                        || place.cell().endsWith(", Gross") && slip.heading().equals("Tare"));
    }

    private static boolean names(Suspect suspect, PlantedSlip slip) {
        return isAt(suspect.place(), slip) || suspect.together().stream().anyMatch(p -> isAt(p, slip));
    }

    private static boolean matters(PlantedSlip slip, RunTally sound, RunTally slipped) {
        if (slip.slip() == UsualSlip.MISSING_ENTRY || slip.slip() == UsualSlip.SALT_FOR_BASE) {
            return true;
        }
        for (Closure before : sound.closures()) {
            Closure after = slipped.closures().stream()
                    .filter(c -> c.skeleton().equals(before.skeleton()))
                    .findFirst()
                    .orElse(before);
            double moved = Math.abs(after.percent().value() - before.percent().value());
            double open = before.expandedUncertaintyPercent() + after.expandedUncertaintyPercent();
            if (moved > open + ALLOWED_LOSS_PERCENT) {
                return true;
            }
        }
        return massMatters(sound.massBalance().orElseThrow(), slipped.massBalance())
                || sound.layers().stream()
                        .anyMatch(l -> slipped.layer(l.label())
                                .filter(s -> densityMatters(l, s))
                                .isPresent());
    }

    private static boolean massMatters(MassBalance before, Optional<MassBalance> slipped) {
        return slipped.filter(after -> {
                    double moved = Math.abs(
                            after.gapGrams().value() - before.gapGrams().value());
                    double open = 2 * before.gapGrams().standardUncertainty()
                            + 2 * after.gapGrams().standardUncertainty();
                    return moved > open + before.evaporationAllowanceGrams() + before.gasGrams();
                })
                .isPresent();
    }

    private static boolean densityMatters(LayerTally before, LayerTally after) {
        return before.densityGramsPerMillilitre()
                .flatMap(b -> after.densityGramsPerMillilitre()
                        .map(a -> Math.abs(a.value() / b.value() - 1)
                                > ALLOWED_DENSITY
                                        + 2 * b.relativeStandardUncertainty()
                                        + 2 * a.relativeStandardUncertainty()))
                .orElse(false);
    }
}
