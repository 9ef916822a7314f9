package workuptally.book.lists;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import workuptally.book.cells.CellNumber;
import workuptally.book.cells.NumberText;
import workuptally.book.files.RawRow;
import workuptally.book.headings.OwnListFeed;
import workuptally.book.headings.OwnListHeader;
import workuptally.book.schema.Schema;
import workuptally.book.schema.SchemaColumn;

/**
 * Where a headings file makes one lot of a row from another one, {@code Lot = product} from {@code Lot = crude}, each under a heading of its
 * own: a row without a weight of the crude has a product and no lot that it came from.
 *
 * @param crude what feeds the other lot
 */
record LotSource(OwnListFeed crude) {
    /** The feed of the lot that a feed names as its source; nothing where a heading, or no constant, names it. */
    static Optional<LotSource> of(OwnListLayout layout, OwnListFeed feed) {
        if (feed.table() != Schema.ISOLATED) {
            return Optional.empty();
        }
        Optional<String> from = constant(feed, "From");
        return layout.feeds().stream()
                .filter(other -> other != feed && other.table() == Schema.ISOLATED)
                .filter(other -> from.isPresent() && constant(other, "Lot").equals(from))
                .findFirst()
                .map(LotSource::new);
    }

    private static Optional<String> constant(OwnListFeed feed, String heading) {
        return feed.constants().entrySet().stream()
                .filter(entry -> entry.getKey().heading().equals(heading))
                .map(Map.Entry::getValue)
                .findFirst();
    }

    /** Whether a row gives the other lot: it has a weight or a yield of it. */
    boolean isIn(RawRow row, OwnListHeader header) {
        return crude.columns().entrySet().stream()
                .filter(entry -> Schema.WEIGHT_OR_YIELD.contains(entry.getKey().heading()))
                .flatMap(entry -> entry.getValue().stream())
                .flatMap(name -> header.heading(name).stream())
                .flatMap(heading -> row.cell(heading.column()).stream())
                .anyMatch(cell -> !cell.isBlank() && !(CellNumber.read(cell) instanceof NumberText.Nothing));
    }

    /** The feed of the lot without what it came from. */
    static OwnListFeed unnamed(OwnListFeed feed) {
        Map<SchemaColumn, String> constants = new LinkedHashMap<>(feed.constants());
        constants.keySet().removeIf(column -> column.heading().equals("From"));
        return new OwnListFeed(feed.table(), feed.columns(), feed.units(), constants);
    }
}
