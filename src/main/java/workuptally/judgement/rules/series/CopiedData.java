package workuptally.judgement.rules.series;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import workuptally.judgement.rules.BookRule;
import workuptally.judgement.rules.FindingList;
import workuptally.model.Assay;
import workuptally.model.Book;
import workuptally.model.Field;
import workuptally.model.Field.Qualifier;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Layer;
import workuptally.model.Lot;
import workuptally.model.Phrase;
import workuptally.model.Place;
import workuptally.model.Run;
import workuptally.model.Severity;
import workuptally.model.Subject;
import workuptally.tally.RunTally;
import workuptally.tally.series.EqualByChance;

/** Gross and tare both equal to those of another portion, or assay and net mass both equal, to the last digit, where chance does not explain it; rows of one lot share its weighing. */
public final class CopiedData implements BookRule {

    @Override
    public List<FindingCode> codes() {
        return List.of(FindingCode.COPIED_WEIGHING, FindingCode.COPIED_ASSAY);
    }

    @Override
    public List<Finding> judge(Book book, List<RunTally> tallies) {
        List<Finding> findings = new ArrayList<>();
        Map<String, Row> weighings = new LinkedHashMap<>();
        Map<String, Row> assays = new LinkedHashMap<>();
        List<Row> rows = rows(book);
        Map<String, List<Double>> massesByAssay = new LinkedHashMap<>();
        for (Row row : rows) {
            if (row.assay().isPresent() && row.net().isPresent()) {
                massesByAssay
                        .computeIfAbsent(row.assay().get(), a -> new ArrayList<>())
                        .add(Double.valueOf(row.net().get()));
            }
        }
        Set<String> ofMany = new HashSet<>();
        massesByAssay.forEach((assay, masses) -> {
            if (new EqualByChance(masses).isLikely()) {
                ofMany.add(assay);
            }
        });
        for (Row row : rows) {
            if (row.weighing().isPresent()) {
                compare(
                        findings,
                        weighings,
                        row.weighing().get(),
                        row,
                        FindingCode.COPIED_WEIGHING,
                        "gross and tare of " + row.name() + " equal those of ");
            }
            boolean telling =
                    row.assay().filter(assay -> !ofMany.contains(assay)).isPresent();
            if (row.weighing().isPresent() && telling) {
                compare(
                        findings,
                        assays,
                        row.net().orElse(row.weighing().get()) + "|"
                                + row.assay().get(),
                        row,
                        FindingCode.COPIED_ASSAY,
                        "net mass and assay of " + row.name() + " equal those of ");
            }
        }
        book.runs().forEach(run -> typedOnceMore(run, findings));
        return List.copyOf(findings);
    }

    /** A lot whose net mass, typed, is to the last digit that of the lot it was made from, with the same assay or none. */
    private static void typedOnceMore(Run run, List<Finding> findings) {
        for (Lot lot : run.lots()) {
            Optional<String> net = net(lot);
            for (Lot source : run.lots()) {
                boolean byGross = weighing(lot).isPresent() && weighing(source).isPresent();
                boolean same = lot.from().contains(source.label())
                        && source.isOf(lot.product())
                        && net.isPresent()
                        && net.equals(net(source))
                        && assay(lot).equals(assay(source));
                if (same && !byGross) {
                    boolean assayed = assay(lot).isPresent();
                    findings.add(new Finding(
                            assayed ? FindingCode.COPIED_ASSAY : FindingCode.COPIED_WEIGHING,
                            Severity.CHECK,
                            Subject.ofRun(run.id()),
                            lot.row().at(lot.weighing().heading()),
                            Phrase.of(
                                    "{} of lot {} {} of lot {}, of which it was made, to the last digit",
                                    assayed ? "net mass and assay" : "net mass",
                                    lot.label(),
                                    assayed ? "equal those" : "equals that",
                                    source.label()),
                            Phrase.of("a weighing of its own, less what the purification cost"),
                            FindingList.PRACTICE,
                            Phrase.of(
                                    "Compare with the balance printout; where nothing was purified, {} alone stands for it.",
                                    source.label())));
                }
            }
        }
    }

    private static Optional<String> weighing(Lot lot) {
        return weighing(lot.weighing().grossGrams(), lot.weighing().tareGrams());
    }

    /** As gross less tare, else as typed, to 0.1 mg. */
    private static Optional<String> net(Lot lot) {
        return net(lot.weighing().grossGrams(), lot.weighing().tareGrams())
                .or(() -> lot.weighing().netGrams().entered().map(n -> String.format(Locale.ROOT, "%.4f", n.value())));
    }

    private static Optional<String> assay(Lot lot) {
        return lot.assayPercent().entered().map(e -> lot.product() + " " + e.asTyped());
    }

    private static void compare(
            List<Finding> findings, Map<String, Row> seen, String key, Row row, FindingCode code, String words) {
        Row first = seen.putIfAbsent(key, row);
        boolean isSameLot =
                first != null && first.run().equals(row.run()) && first.name().equals(row.name());
        if (first != null && !isSameLot) {
            findings.add(new Finding(
                    code,
                    Severity.CHECK,
                    Subject.ofRun(row.run()),
                    row.place(),
                    Phrase.of("{}{} of run {} to the last digit", words, first.name(), first.run()),
                    Phrase.of("numbers of its own for each weighing"),
                    FindingList.PRACTICE,
                    Phrase.of("Compare with the balance printout; correct the copied row.")));
        }
    }

    private record Row(
            String run,
            String name,
            Optional<String> weighing,
            Optional<String> net,
            Optional<String> assay,
            Place place) {}

    private static List<Row> rows(Book book) {
        List<Row> rows = new ArrayList<>();
        for (Run run : book.runs()) {
            for (Layer layer : run.layers()) {
                rows.add(new Row(
                        run.id(),
                        "layer " + layer.label(),
                        weighing(layer.weighing().grossGrams(), layer.weighing().tareGrams()),
                        net(layer.weighing().grossGrams(), layer.weighing().tareGrams()),
                        assay(run, layer.label()),
                        layer.row().at("Gross")));
            }
            for (Lot lot : run.lots()) {
                rows.add(new Row(
                        run.id(),
                        "lot " + lot.label(),
                        weighing(lot),
                        net(lot.weighing().grossGrams(), lot.weighing().tareGrams()),
                        assay(lot),
                        lot.row().at("Gross")));
            }
        }
        return rows;
    }

    private static Optional<String> weighing(Field gross, Field tare) {
        return gross.entered().flatMap(g -> tare.entered().map(t -> g.asTyped() + "|" + t.asTyped()));
    }

    private static Optional<String> net(Field gross, Field tare) {
        return gross.entered()
                .flatMap(g -> tare.entered().map(t -> String.format(Locale.ROOT, "%.4f", g.value() - t.value())));
    }

    /** The first number assayed in a layer; a non-detect is no sign, since many layers share a limit. */
    private static Optional<String> assay(Run run, String label) {
        return run.assays().stream()
                .filter(a -> a.sample().equals(label))
                .flatMap(a -> a
                        .result()
                        .entered()
                        .filter(r -> r.qualifier() == Qualifier.EXACT)
                        .map(r -> a.substance() + " " + r.asTyped() + unit(a))
                        .stream())
                .findFirst();
    }

    private static String unit(Assay assay) {
        return assay.unit().map(Assay.Unit::word).orElse("");
    }
}
