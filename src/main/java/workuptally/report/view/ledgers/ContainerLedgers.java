package workuptally.report.view.ledgers;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import workuptally.judgement.Review;
import workuptally.judgement.containers.ContainerReview;
import workuptally.model.Field;
import workuptally.model.Transfer;
import workuptally.report.view.lines.ProposalLine;
import workuptally.report.view.tables.Cell;
import workuptally.report.view.tables.Column;
import workuptally.report.view.tables.TableView;
import workuptally.report.view.wording.Words;
import workuptally.tally.containers.ContainerState;

/** The ledgers of a book's waste containers: what stands in them, and what was or is to be put into them. */
final class ContainerLedgers {
    private final Review review;

    ContainerLedgers(Review review) {
        this.review = review;
    }

    /** What stands in each container now, a row for each substance. */
    TableView containers() {
        return TableView.of(
                "Containers",
                "",
                List.of(
                        Column.text("Book", 24),
                        Column.text("Container", 14),
                        Column.text("Stream as named", 28),
                        Column.text("Opened", 12),
                        Column.number("Capacity", "L", 2),
                        Column.text("Substance", 28),
                        Column.text("CAS", 12),
                        Column.number("Mass", "g", 1),
                        Column.number("Share", "%", 2)),
                review.containers(),
                this::container);
    }

    private Stream<TableView.Row> container(ContainerReview container) {
        ContainerState now = container.tally().now();
        return now.grams().entrySet().stream()
                .map(part -> Ledgers.row(
                        List.of(
                                Cell.of(review.book().name()),
                                Cell.of(container.id()),
                                Cell.of(container.tally().container().wasteStream()),
                                Cell.of(container
                                        .tally()
                                        .container()
                                        .opened()
                                        .map(LocalDate::toString)
                                        .orElse("")),
                                Cell.of(now.capacityLitres())),
                        List.of(
                                Cell.of(part.getKey()),
                                cas(part.getKey()),
                                Cell.of(part.getValue()),
                                Cell.of(100 * part.getValue() / now.totalGrams()))));
    }

    /** Every transfer, done or proposed, with what speaks against it. */
    TableView transfers() {
        Map<String, ProposalLine> proposals = new HashMap<>();
        ProposalLine.of(review).forEach(line -> proposals.put(line.transfer(), line));
        Map<String, List<String>> made = ProposalLine.againstMade(review);
        return TableView.of(
                "Transfers",
                "",
                List.of(
                        Column.text("Book", 24),
                        Column.text("Date", 12),
                        Column.text("Transfer", 12),
                        Column.text("Run", 14),
                        Column.text("Layers", 14),
                        Column.text("Material", 20),
                        Column.text("Container", 14),
                        Column.number("Mass", "g", 1),
                        Column.text("Status", 10),
                        Column.text("By", 12),
                        Column.text("Fits", 10),
                        Column.text("Against it", 40)),
                review.book().transfers(),
                transfer -> Stream.of(transfer(
                        transfer,
                        Optional.ofNullable(proposals.get(transfer.id())),
                        made.getOrDefault(transfer.id(), List.of()))));
    }

    private TableView.Row transfer(Transfer transfer, Optional<ProposalLine> proposal, List<String> againstMade) {
        return Ledgers.row(
                List.of(
                        Cell.of(review.book().name()),
                        Cell.of(transfer.date().map(LocalDate::toString).orElse("")),
                        Cell.of(transfer.id()),
                        Cell.of(transfer.run()),
                        Cell.of(String.join(" + ", transfer.layers())),
                        Cell.of(transfer.material()),
                        Cell.of(transfer.container())),
                List.of(
                        mass(transfer, proposal),
                        Cell.of(Words.of(transfer.status())),
                        Cell.of(transfer.by()),
                        Cell.of(proposal.map(p -> p.group().word()).orElse("")),
                        Cell.of(String.join(
                                "; ", proposal.map(ProposalLine::reasons).orElse(againstMade)))));
    }

    private static Cell mass(Transfer transfer, Optional<ProposalLine> proposal) {
        return transfer.massGrams()
                .entered()
                .map(Field.Entered::value)
                .or(() -> proposal.map(ProposalLine::grams))
                .map(Cell::of)
                .orElseGet(() -> new Cell.Missing(""));
    }

    private Cell cas(String substance) {
        return Cell.of(review.registryNumbers().getOrDefault(substance, ""));
    }
}
