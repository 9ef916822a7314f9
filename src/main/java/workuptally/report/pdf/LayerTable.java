package workuptally.report.pdf;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.StringJoiner;
import workuptally.judgement.RunReview;
import workuptally.judgement.layers.LayerDecision;
import workuptally.measure.MeasuredValue;
import workuptally.model.Phrase;
import workuptally.model.Product;
import workuptally.report.pdf.layout.Block;
import workuptally.report.pdf.layout.Look;
import workuptally.report.pdf.layout.Paragraph;
import workuptally.report.pdf.layout.TableCell;
import workuptally.report.pdf.layout.TableColumn;
import workuptally.report.pdf.layout.TaggedTable;
import workuptally.report.view.wording.Wording;
import workuptally.tally.amounts.Content;
import workuptally.tally.layers.LayerTally;

/**
 * Layers with mass, volume and density, a row per substance with what is held and the most that can be, and the outcome; what the outcome
 * rests on beside these figures, what is missing and what a further extraction would bring stand below, once for all layers that share it.
 */
final class LayerTable {
    private static final int SHARE_DIGITS = 2;

    private final Look look;
    private final RunReview run;
    private final List<LayerTally> layers;
    private final Set<String> told;
    private final double coverageFactor;
    private final boolean judged;
    private final Optional<String> only;

    /**
     * Makes the table.
     *
     * @param told layers of which a finding above it says what is missing
     */
    LayerTable(Look look, RunReview run, List<LayerTally> layers, Set<String> told, double coverageFactor) {
        this.look = look;
        this.run = run;
        this.told = told;
        this.coverageFactor = coverageFactor;
        this.judged = !run.decisions().isEmpty();
        List<String> substances = layers.stream()
                .flatMap(l -> l.contents().stream())
                .map(this::substance)
                .distinct()
                .toList();
        this.only = substances.size() == 1 ? Optional.of(substances.get(0)) : Optional.empty();
        this.layers = List.copyOf(layers);
    }

    /** The one substance that all contents are of; empty where there are several, which then have a column. */
    Optional<String> onlySubstance() {
        return only;
    }

    List<Block> blocks() {
        List<List<TableCell>> rows = new ArrayList<>();
        for (LayerTally layer : layers) {
            rows.addAll(rows(layer));
        }
        List<TableColumn> columns = new ArrayList<>(List.of(
                TableColumn.word("Layer"),
                TableColumn.text("Phase, standing"),
                TableColumn.number("Mass\n(g)"),
                TableColumn.number("Volume\n(mL)")));
        if (only.isEmpty()) {
            columns.add(TableColumn.text("Substance"));
        }
        columns.addAll(List.of(
                TableColumn.number("Holds ± U\n(g)"),
                TableColumn.number("Share\n(%)"),
                TableColumn.number("At most\n(g)")));
        if (judged) {
            columns.add(TableColumn.number("At most\n(%)"));
            columns.add(TableColumn.text("Outcome"));
        }
        List<Block> blocks = new ArrayList<>();
        blocks.add(new TaggedTable(look, columns, rows));
        String remarks = remarks();
        if (!remarks.isEmpty()) {
            blocks.add(new Paragraph(look, remarks, look.table()));
        }
        return blocks;
    }

    private List<List<TableCell>> rows(LayerTally layer) {
        Optional<LayerDecision> decision = run.decision(layer.label());
        List<TableCell> head = List.of(
                TableCell.bold(layer.label()),
                TableCell.of(layer.phase().map(p -> p.word()).orElse("not stated") + ", " + standing(layer)),
                value(layer.massGrams()),
                value(layer.volumeMillilitres()));
        String outcome = decision.map(d -> d.outcome().word()).orElse("");
        List<Content> told = layer.contents().stream()
                .filter(c -> c.massGrams().isPresent() || c.upperBoundGrams().isPresent())
                .toList();
        if (told.isEmpty()) {
            List<TableCell> row = new ArrayList<>(head);
            if (only.isEmpty()) {
                row.add(TableCell.of("–"));
            }
            row.addAll(List.of(TableCell.of("–"), TableCell.of("–"), TableCell.of("–")));
            end(row, "", outcome);
            return List.of(row);
        }
        List<List<TableCell>> rows = new ArrayList<>();
        for (Content content : told) {
            boolean first = rows.isEmpty();
            List<TableCell> row = new ArrayList<>(
                    first ? head : head.stream().map(c -> TableCell.of("")).toList());
            if (only.isEmpty()) {
                row.add(TableCell.of(substance(content)));
            }
            row.addAll(content(content));
            end(row, mostPercent(decision, content), first ? outcome : "");
            rows.add(row);
        }
        return rows;
    }

    private void end(List<TableCell> row, String mostPercent, String outcome) {
        if (judged) {
            row.add(TableCell.of(mostPercent));
            row.add(TableCell.of(outcome));
        }
    }

    /** The substance, with what sets its figures apart. */
    private String substance(Content content) {
        boolean estimate = content.kind() == Content.Kind.CARRIED || content.kind() == Content.Kind.PREDICTED;
        boolean tracked = run.tally()
                .run()
                .product(content.substance())
                .filter(Product::wanted)
                .isEmpty();
        return content.substance()
                + (estimate ? ", " + content.kind().word() : "")
                + (tracked && content.percentOf().isPresent() ? ", of charged" : "");
    }

    private List<TableCell> content(Content content) {
        boolean held = content.massGrams().isPresent()
                && (content.kind() != Content.Kind.BOUND
                        || content.upperBoundGrams().isEmpty());
        return List.of(
                TableCell.of(
                        held
                                ? content.massGrams()
                                        .map(m -> look.figures()
                                                .pair(m, coverageFactor)
                                                .together())
                                        .orElse("–")
                                : "–"),
                significant(content.percentOf(), SHARE_DIGITS),
                most(content.upperBoundGrams()));
    }

    private TableCell most(OptionalDouble bound) {
        return TableCell.of(bound.isPresent() ? look.figures().most(bound.getAsDouble()) : "–");
    }

    private TableCell value(Optional<MeasuredValue> value) {
        return TableCell.of(
                value.map(v -> look.figures().pair(v, coverageFactor).value()).orElse("–"));
    }

    private TableCell significant(OptionalDouble value, int digits) {
        return TableCell.of(value.isPresent() ? look.figures().significant(value.getAsDouble(), digits) : "–");
    }

    private String mostPercent(Optional<LayerDecision> decision, Content content) {
        return decision.flatMap(LayerDecision::atMost)
                .filter(most -> most.isOf(content.substance()))
                .map(most -> look.figures().most(most.percentOfTheory()))
                .orElse("");
    }

    private static String standing(LayerTally layer) {
        if (layer.aliquot()) {
            return "aliquot";
        }
        if (!layer.terminal()) {
            return "passed on";
        }
        return layer.entry()
                .flatMap(l -> l.custody().status())
                .map(s -> s.word())
                .orElse("ends here");
    }

    /** What is missing and is not told in full by a finding above, each once with the layers it is said of. */
    private String remarks() {
        Map<List<Phrase>, List<String>> missing = new LinkedHashMap<>();
        Map<Phrase, List<String>> silent = new LinkedHashMap<>();
        for (LayerTally layer : layers) {
            run.decision(layer.label()).ifPresent(d -> {
                if (d.outcome() != LayerDecision.Outcome.KEEP && !d.missing().isEmpty()) {
                    missing.computeIfAbsent(d.missing(), k -> new ArrayList<>()).add(layer.label());
                }
                if (!d.silence().isEmpty()) {
                    silent.computeIfAbsent(d.silence(), k -> new ArrayList<>()).add(layer.label());
                }
            });
        }
        Wording wording = look.wording();
        StringJoiner text = new StringJoiner(". ", "", ".");
        text.setEmptyValue("");
        missing.forEach((what, labels) -> {
            boolean isTold = what.size() == 1 && labels.size() == 1 && told.contains(labels.get(0));
            if (!isTold) {
                text.add("Missing for " + String.join(", ", labels) + ": " + wording.of(Phrase.join("; ", what)));
            }
        });
        silent.forEach((what, labels) -> text.add(String.join(", ", labels) + ": " + wording.of(what)));
        together().forEach(text::add);
        return text.toString();
    }

    /** What layers hold together by one assay. */
    private List<String> together() {
        List<String> labels = layers.stream().map(LayerTally::label).toList();
        return run.tally().evidence().composites().list().stream()
                .filter(sample -> sample.labels().stream().anyMatch(labels::contains))
                .map(sample -> sample.name() + " together: at most "
                        + look.figures()
                                .most(sample.together().upperBoundGrams().orElse(0))
                        + "\u00A0g " + sample.substance() + " ("
                        + sample.together().evidence() + ")")
                .toList();
    }
}
