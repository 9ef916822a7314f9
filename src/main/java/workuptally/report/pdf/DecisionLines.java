package workuptally.report.pdf;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.StringJoiner;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import workuptally.judgement.Review;
import workuptally.judgement.RunReview;
import workuptally.model.Finding;
import workuptally.model.Product;
import workuptally.model.Severity;
import workuptally.tally.amounts.Content;
import workuptally.tally.layers.LayerTally;

/** Stops and holds as one short line per run; their full texts stand in the run's own block. */
final class DecisionLines {
    private static final Pattern LABELS = Pattern.compile("^layers? ([^:]+):.*", Pattern.DOTALL);
    private static final Pattern TRANSFER = Pattern.compile("^(\\S+): [^;]* into .*", Pattern.DOTALL);
    /** That layers wait for what stands before it on the line; the action names them. */
    private static final String WAITS = "layer-waits";

    private static final int SHORTEST_ACTION = 12;

    private final Look look;
    private final Review review;
    private final RunPlaces places;

    DecisionLines(Look look, Review review, RunPlaces places) {
        this.look = look;
        this.review = review;
        this.places = places;
    }

    List<Block> blocks() {
        List<Line> lines = lines();
        List<Block> blocks = new ArrayList<>();
        blocks.add(look.heading("What needs a decision"));
        if (lines.isEmpty()) {
            blocks.add(new Paragraph(look, "No stop and no hold was found. Checks and notes stand with the runs."));
            return blocks;
        }
        List<List<TableCell>> rows = new ArrayList<>();
        for (Line line : lines) {
            rows.add(List.of(
                    line.cell(),
                    TableCell.of(line.severity()),
                    TableCell.of(line.what()),
                    TableCell.bold(line.action())));
        }
        blocks.add(new TaggedTable(
                look,
                List.of(
                        TableColumn.word("Run"),
                        TableColumn.word("State"),
                        TableColumn.brief("What was seen (in full with the run)"),
                        TableColumn.brief("What to do")),
                rows));
        return blocks;
    }

    /** Stops before holds, in each the largest product mass first; what concerns no run of the book leads. */
    private List<Line> lines() {
        List<Line> lines = new ArrayList<>();
        Set<String> runs = new LinkedHashSet<>();
        for (RunReview run : review.runs()) {
            runs.add(run.id());
            List<Finding> urgent = urgent(run.findings());
            if (!urgent.isEmpty()) {
                lines.add(line(places.link(run.id()), grams(run), urgent));
            }
        }
        List<Finding> ofTransfers = urgent(review.findings()).stream()
                .filter(f -> f.run().isEmpty() && TRANSFER.matcher(f.seen()).matches())
                .toList();
        if (!ofTransfers.isEmpty()) {
            lines.add(ofTransfers(ofTransfers));
        }
        for (Finding finding : urgent(review.findings())) {
            if (!runs.contains(finding.run()) && !ofTransfers.contains(finding)) {
                TableCell cell = TableCell.bold(finding.run().isEmpty() ? "book" : finding.run());
                lines.add(line(cell, Double.MAX_VALUE, List.of(finding)));
            }
        }
        lines.sort(Comparator.comparing(Line::severity).thenComparing(Line::grams, Comparator.reverseOrder()));
        return lines;
    }

    /** All transfers that should wait on one line: what stands against which. */
    private static Line ofTransfers(List<Finding> findings) {
        Map<String, Set<String>> byCode = new LinkedHashMap<>();
        for (Finding finding : findings) {
            Matcher transfer = TRANSFER.matcher(finding.seen());
            String id = transfer.matches() ? transfer.group(1) : "";
            byCode.computeIfAbsent(code(finding), c -> new LinkedHashSet<>()).add(id);
        }
        StringJoiner what = new StringJoiner("; ");
        byCode.forEach((code, ids) -> what.add(code.replace('-', ' ') + ": " + String.join(", ", ids)));
        return new Line(
                TableCell.link("transfers", "waste"),
                findings.get(0).severity(),
                Double.MAX_VALUE,
                what.toString(),
                "Make none of these before the account for safety staff is read; ask the person responsible for waste.");
    }

    private static String code(Finding finding) {
        return finding.code().split(" ", 2)[0];
    }

    private static List<Finding> urgent(List<Finding> findings) {
        return findings.stream()
                .filter(f -> f.severity() == Severity.STOP || f.severity() == Severity.HOLD)
                .sorted(Comparator.comparing(Finding::severity))
                .toList();
    }

    private static Line line(TableCell cell, double grams, List<Finding> urgent) {
        Set<String> seen = new LinkedHashSet<>();
        Set<String> actions = new LinkedHashSet<>();
        Set<String> codes = new LinkedHashSet<>();
        for (Finding finding : urgent) {
            String code = code(finding);
            boolean named = code.startsWith("layer-") || !codes.add(code);
            String first = finding.seen()
                    .split("; ", 2)[0]
                    .replaceFirst(", limit [\\d.,]+ %$", "")
                    .replaceFirst(" of theory$", "")
                    .replaceFirst("^layer (?=\\S+: at most)", "");
            boolean follows = code.equals(WAITS) && !seen.isEmpty();
            if (!follows) {
                seen.add(named ? first : code.replace('-', ' ') + ": " + first);
            }
            actions.add(action(finding));
        }
        return new Line(cell, urgent.get(0).severity(), grams, String.join("; ", seen), String.join(" ", actions));
    }

    /** The first sentence, or two where the first says next to nothing; layers by their labels, remarks in brackets left out. */
    private static String action(Finding finding) {
        Matcher labels = LABELS.matcher(finding.seen());
        String text = finding.action().replaceAll(" \\([^()]*\\)", "");
        if (labels.matches()) {
            text = text.replaceFirst("^Keep (it|them)\\b", Matcher.quoteReplacement("Keep " + labels.group(1)));
        }
        int end = text.indexOf(". ");
        if (end >= 0 && end < SHORTEST_ACTION) {
            end = text.indexOf(". ", end + 2);
        }
        return end < 0 ? text : text.substring(0, end + 1);
    }

    /** What is at stake: the whole run where a stop stands, else the most that one of its layers on hold may have, g. */
    private static double grams(RunReview run) {
        if (run.has(Severity.STOP)) {
            return run.tally().theory().stream()
                    .flatMap(t -> t.products().stream())
                    .filter(p -> p.product().wanted())
                    .mapToDouble(p -> p.massGrams().value())
                    .max()
                    .orElse(0);
        }
        return run.tally().layers().stream()
                .filter(l -> l.terminal() && !l.aliquot())
                .map(LayerTally::contents)
                .flatMap(List::stream)
                .filter(c -> run.tally()
                        .run()
                        .product(c.substance())
                        .map(Product::wanted)
                        .orElse(false))
                .map(Content::upperBoundGrams)
                .filter(OptionalDouble::isPresent)
                .mapToDouble(OptionalDouble::getAsDouble)
                .max()
                .orElse(0);
    }

    /**
     * A line of the table.
     *
     * @param cell run
     * @param severity the worst of the run
     * @param grams product mass at stake, g
     * @param what what was seen, in short
     * @param action what to do
     */
    private record Line(TableCell cell, Severity severity, double grams, String what, String action) {}
}
