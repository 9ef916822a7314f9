package workuptally.tally.suspects;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import workuptally.model.Container;
import workuptally.model.Field;
import workuptally.model.Field.Entered;
import workuptally.model.Field.Figure;
import workuptally.model.Field.Qualifier;
import workuptally.model.Transfer;
import workuptally.tally.suspects.Entry.Sort;

/** The numbers that the ledger of a container rests on: its weighing, each part of its contents, and what was poured in. */
final class ContainerEntries {
    private ContainerEntries() {}

    static List<Entry> of(Container container, List<Transfer> transfers) {
        List<Entry> all = new ArrayList<>();
        String of = " of container " + container.id();
        container
                .tareGrams()
                .entered()
                .ifPresent(t -> all.add(new Entry(BookCell.of(t), t, "tare" + of, Sort.TARE, container.id())));
        container
                .grossThenGrams()
                .entered()
                .ifPresent(g -> all.add(new Entry(BookCell.of(g), g, "gross" + of, Sort.GROSS, container.id())));
        for (Container.Content content : container.contentsThen()) {
            all.add(new Entry(
                    cell(container, content),
                    typed(container, content),
                    content.substance() + " in container " + container.id(),
                    Sort.NET,
                    ""));
        }
        transfers.forEach(t -> all.addAll(BalanceEntries.of(t)));
        return all;
    }

    private static BookCell cell(Container container, Container.Content content) {
        return new BookCell(container.row(), EntryHeadings.CONTENTS_THEN, content.substance());
    }

    private static Entered typed(Container container, Container.Content content) {
        BigDecimal grams = BigDecimal.valueOf(content.massGrams()).stripTrailingZeros();
        return new Entered(
                new Figure(content.massGrams(), Qualifier.EXACT, Math.max(0, grams.scale()), grams.toPlainString()),
                container.row(),
                EntryHeadings.CONTENTS_THEN);
    }

    /** A container as it would read. */
    static Container changed(Container c, Changes changes) {
        return new Container(
                c.id(),
                c.wasteStream(),
                c.capacityLitres(),
                changes.at(c.row(), EntryHeadings.TARE, c.tareGrams()),
                c.weighedOn(),
                changes.at(c.row(), EntryHeadings.GROSS_THEN, c.grossThenGrams()),
                c.contentsThen().stream()
                        .map(part -> new Container.Content(
                                part.substance(),
                                changes.in(cell(c, part)).map(Entered::value).orElse(part.massGrams())))
                        .toList(),
                c.opened(),
                c.location(),
                c.contact(),
                c.row());
    }

    /** A transfer as it would read. */
    static Transfer changed(Transfer t, Changes changes) {
        Field amount = changes.at(t.row(), EntryHeadings.AMOUNT, t.massGrams());
        return new Transfer(
                t.id(),
                t.run(),
                t.layers(),
                t.material(),
                t.container(),
                amount,
                t.status(),
                t.by(),
                t.date(),
                t.row());
    }
}
