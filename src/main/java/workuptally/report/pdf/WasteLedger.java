package workuptally.report.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import workuptally.judgement.Review;
import workuptally.judgement.RunReview;
import workuptally.report.pdf.layout.Block;
import workuptally.report.pdf.layout.Gap;
import workuptally.report.pdf.layout.Heading;
import workuptally.report.pdf.layout.Look;
import workuptally.report.pdf.layout.TableCell;
import workuptally.report.pdf.layout.TableColumn;
import workuptally.report.pdf.layout.TaggedTable;
import workuptally.tally.waste.WasteLine;

/** The layers of each run with the stream that their make-up suggests. */
final class WasteLedger {
    private final Look look;
    private final Review review;

    WasteLedger(Look look, Review review) {
        this.look = look;
        this.review = review;
    }

    /** Empty where no layer has a stream. */
    List<Block> blocks() {
        AccountTables tables = new AccountTables(look);
        List<List<TableCell>> rows = new ArrayList<>();
        for (RunReview run : review.runs()) {
            for (WasteLine line : run.tally().waste()) {
                rows.add(List.of(
                        TableCell.bold(run.id()),
                        TableCell.of(line.layer()),
                        TableCell.of(line.streamName()),
                        TableCell.of(look.figures().inWords(line.why())),
                        TableCell.of(line.standing().word()),
                        line.massGrams().isPresent()
                                ? tables.kilograms(line.massGrams().getAsDouble())
                                : TableCell.of("?")));
            }
        }
        if (rows.isEmpty()) {
            return List.of();
        }
        return List.of(
                new Gap(8),
                new Heading(look, Heading.Level.SECTION, "Layers by run", Optional.of("layers")),
                new TaggedTable(
                        look,
                        List.of(
                                TableColumn.word("Run"),
                                TableColumn.word("Layer"),
                                TableColumn.text("Stream suggested"),
                                TableColumn.text("Because"),
                                TableColumn.word("Standing"),
                                TableColumn.number("Mass\n(kg)")),
                        rows));
    }
}
