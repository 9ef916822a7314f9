package workuptally.book.headings;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import workuptally.book.cells.CellNumber;
import workuptally.book.cells.NumberText;
import workuptally.book.files.FindingLog;
import workuptally.book.files.RawCell;
import workuptally.book.files.RawRow;
import workuptally.book.files.RawTable;
import workuptally.book.schema.SchemaColumn;
import workuptally.book.words.BookWords;
import workuptally.book.words.Quantity;
import workuptally.book.words.TypedText;
import workuptally.book.words.Unit;
import workuptally.model.FindingCode;
import workuptally.model.Place;

/** The units that the headings of a table name, for the numbers below them that have none of their own. */
final class HeadingUnits {
    private final RawTable raw;
    private final HeadingRow headings;
    private final Map<String, Unit> units = new HashMap<>();
    private final Map<String, Place> places = new HashMap<>();
    private final Set<String> withoutReadableUnit = new HashSet<>();
    private final Set<String> contradicted = new HashSet<>();

    HeadingUnits(RawTable raw, HeadingRow headings) {
        this.raw = raw;
        this.headings = headings;
    }

    /** True for a row that holds nothing but units, {@code (mg)}, {@code in mg}, {@code %}. */
    static boolean isRowOfUnits(RawRow row) {
        return row.cells().stream().allMatch(cell -> cell.type() == RawCell.Type.TEXT && isUnit(cell.text()));
    }

    private static boolean isUnit(String typed) {
        String text = bare(typed);
        return text.isEmpty()
                || text.equals("-")
                || text.equals("%")
                || Unit.named(text).isPresent();
    }

    /** A unit without brackets and "in". */
    static String bare(String typed) {
        return TypedText.plain(typed)
                .replaceAll("^[(\\[]|[)\\]]$", "")
                .replaceFirst("^(?i:in) ", "")
                .strip();
    }

    /** Unit in the heading of a column, if it names one. */
    Optional<Unit> of(String heading) {
        return Optional.ofNullable(units.get(heading));
    }

    /** False if the heading names a unit that is none of the column, or none where one is needed; this was reported. */
    boolean isReadable(String heading) {
        return !withoutReadableUnit.contains(heading);
    }

    /** Takes the unit that a heading names, if it names one; one that the column cannot have is reported. */
    void read(SchemaColumn column, HeadingRow.Typed typed, FindingLog log) {
        read(column, typed, headings.place(raw, typed.cell()), log);
    }

    /** The same of the cell of a row of units below the headings, which must not say otherwise than the heading. */
    void readBelow(SchemaColumn column, RawCell cell, RawRow row, FindingLog log) {
        Optional<Unit> ofHeading = of(column.heading());
        Optional<Unit> below = Unit.named(bare(cell.text()));
        Place place = new HeadingRow(row, Map.of(), Map.of()).place(raw, cell);
        if (ofHeading.isPresent() && below.filter(ofHeading.get()::isSameAs).isEmpty() && below.isPresent()) {
            withoutReadableUnit.add(column.heading());
            reportContradiction(
                    column, place, below.get().symbol(), ofHeading.get().symbol() + " in the heading", log);
            return;
        }
        read(column, new HeadingRow.Typed(cell, column.heading() + " (" + bare(cell.text()) + ")"), place, log);
    }

    /** True where the unit of a heading says otherwise than the unit column beside a number, which is then reported, once for the column. */
    boolean contradicts(SchemaColumn column, Unit beside, FindingLog log) {
        Optional<Unit> ofHeading = of(column.heading()).filter(unit -> !unit.isSameAs(beside));
        if (ofHeading.isPresent() && contradicted.add(column.heading())) {
            String unit = ofHeading.get().symbol();
            reportContradiction(
                    column, places.get(column.heading()), unit, beside.symbol() + " in the unit column", log);
        }
        return ofHeading.isPresent();
    }

    private static void reportContradiction(
            SchemaColumn column, Place place, String unit, String other, FindingLog log) {
        log.add(
                FindingCode.UNIT_CONTRADICTION,
                column.need().severity(),
                "",
                place,
                "read " + unit + " over numbers of " + column.heading() + " without a unit, against " + other,
                "one unit for a number",
                "Correct one of the two and run again; these numbers were not used.");
    }

    private void read(SchemaColumn column, HeadingRow.Typed typed, Place place, FindingLog log) {
        String mapped = HeadingText.of(typed.heading()).unitText();
        String onSheet = HeadingText.of(BookWords.tidy(typed.cell().text())).unitText();
        String unitText = mapped.isEmpty() && Unit.named(onSheet).isPresent() ? onSheet : mapped;
        if (unitText.isEmpty()) {
            return;
        }
        Optional<Unit> unit = Unit.named(unitText);
        if (areApart(unit, Unit.named(onSheet))) {
            withoutReadableUnit.add(column.heading());
            log.add(
                    FindingCode.UNIT_CONTRADICTION,
                    column.need().severity(),
                    "",
                    place,
                    "read the heading '" + BookWords.tidy(typed.cell().text()) + "', which the headings file calls '"
                            + typed.heading() + "'",
                    "one unit for a number",
                    "Correct the unit in the headings file and run again; the numbers of this column were not used.");
            return;
        }
        if (column.kind() == SchemaColumn.Kind.NUMBER_WITH_UNIT) {
            unit.ifPresent(u -> units.put(column.heading(), u));
            places.put(column.heading(), place);
        }
        if (column.kind() != SchemaColumn.Kind.NUMBER) {
            return;
        }
        Unit own = column.unit().orElse(Unit.ONE);
        if (unit.isPresent() && unit.get().quantity() == own.quantity()) {
            units.put(column.heading(), unit.get());
            return;
        }
        if (own == Unit.ONE && unit.isEmpty()) {
            return;
        }
        withoutReadableUnit.add(column.heading());
        log.add(
                unit.isPresent() ? FindingCode.UNIT_WRONG : FindingCode.UNIT_UNKNOWN,
                column.need().severity(),
                "",
                place,
                "read the heading '" + BookWords.tidy(typed.cell().text()) + "'",
                "a unit for " + column.expected(),
                "Correct the unit in the heading and run again; the numbers of this column were not used.");
    }

    private static boolean areApart(Optional<Unit> one, Optional<Unit> other) {
        return one.isPresent()
                && other.isPresent()
                && one.get().quantity() == other.get().quantity()
                && !one.get().isSameAs(other.get());
    }

    /** In a list of its own a laboratory uses units of its own: a mass or volume without any is not taken to be in that of the form. */
    void require(SchemaColumn column, HeadingRow.Typed typed, FindingLog log) {
        boolean sized = column.unit()
                .map(Unit::quantity)
                .filter(q -> q == Quantity.MASS || q == Quantity.VOLUME || q == Quantity.AMOUNT)
                .isPresent();
        if (!sized || units.containsKey(column.heading()) || withoutReadableUnit.contains(column.heading())) {
            return;
        }
        boolean bare = raw.rows().stream()
                .filter(row -> row.row() > headings.row().row())
                .flatMap(row -> row.cell(typed.cell().column()).stream())
                .anyMatch(cell -> CellNumber.read(cell) instanceof NumberText.Number number
                        && number.unit().isEmpty());
        if (bare) {
            withoutReadableUnit.add(column.heading());
            log.add(
                    FindingCode.UNIT_MISSING,
                    column.need().severity(),
                    "",
                    headings.place(raw, typed.cell()),
                    "read the heading '" + typed.cell().text() + "' without a unit over numbers without one",
                    "a unit for " + column.expected(),
                    "Write the unit in the headings file, such as \"" + column.heading() + " (mg)\", and run again; the"
                            + " numbers of this column were not used.");
        }
    }
}
