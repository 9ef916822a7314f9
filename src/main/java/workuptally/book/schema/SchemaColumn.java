package workuptally.book.schema;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import workuptally.book.words.Quantity;
import workuptally.book.words.Range;
import workuptally.book.words.Unit;
import workuptally.model.Field;

/**
 * One column of a table.
 *
 * @param heading heading without unit, as findings and places name it
 * @param kind what its cells hold
 * @param unit unit in which the book's form has it; empty where a column beside it names the unit, or for words
 * @param need how much depends on it
 * @param range values it can take
 * @param choices words to choose from; empty unless {@code CHOICE}
 * @param help one line of help for the person who fills it in
 */
public record SchemaColumn(
        String heading, Kind kind, Optional<Unit> unit, Need need, Range range, List<String> choices, String help) {

    /** Columns of amounts that an analysis can leave at a limit. */
    private static final Set<String> LIMITED = Set.of("Result", "Residue");

    /** Columns that count things. */
    private static final Set<String> COUNTS =
            Set.of("Portions", "Loads", "Standard nuclei", "Substance nuclei", "Replicates");

    /** What cells hold. */
    public enum Kind {
        NUMBER,
        /** A number whose unit stands in another column or in the cell. */
        NUMBER_WITH_UNIT,
        TEXT,
        CHOICE,
        DATE,
        /** Labels joined by +. */
        LABELS,
        /** Parts joined by ;, each a name with a number. */
        PARTS,
        /** A number, date or text, as the row's name says. */
        SETTING
    }

    static SchemaColumn number(String heading, Unit unit, Need need, Range range, String help) {
        return new SchemaColumn(heading, Kind.NUMBER, Optional.of(unit), need, range, List.of(), help);
    }

    /** The same column, as a detail in a row whose theory does not need it. */
    public SchemaColumn detailIf(boolean aside) {
        return aside ? new SchemaColumn(heading, kind, unit, Need.DETAIL, range, choices, help) : this;
    }

    static SchemaColumn numberWithUnit(String heading, Need need, Range range, String help) {
        return new SchemaColumn(heading, Kind.NUMBER_WITH_UNIT, Optional.empty(), need, range, List.of(), help);
    }

    static SchemaColumn choice(String heading, Need need, List<String> choices, String help) {
        return new SchemaColumn(heading, Kind.CHOICE, Optional.empty(), need, Range.ANY, List.copyOf(choices), help);
    }

    static SchemaColumn words(String heading, Kind kind, Need need, String help) {
        return new SchemaColumn(heading, kind, Optional.empty(), need, Range.ANY, List.of(), help);
    }

    static SchemaColumn text(String heading, String help) {
        return words(heading, Kind.TEXT, Need.DETAIL, help);
    }

    static SchemaColumn key(String heading, String help) {
        return words(heading, Kind.TEXT, Need.KEY, help);
    }

    static SchemaColumn date(String heading, String help) {
        return words(heading, Kind.DATE, Need.DETAIL, help);
    }

    /** Of the heading alone; see the contributor guide on records as keys. */
    @Override
    public int hashCode() {
        return heading.hashCode();
    }

    /** The heading with its unit, {@code Gross (g)}. */
    public String headingWithUnit() {
        return unit.map(Unit::symbol)
                .filter(symbol -> !symbol.isEmpty())
                .map(symbol -> heading + " (" + symbol + ")")
                .orElse(heading);
    }

    /** What several numbers in one cell mean. */
    public enum Several {
        /** The first without the second. */
        DIFFERENCE,
        /** Two steps of a scale, {@code 6/7}, between which it lies. */
        STEPS,
        /** A fraction. */
        QUOTIENT,
        /** A ratio, {@code 60:1}. */
        RATIO
    }

    /** True where several numbers of a cell mean one, and which way. */
    public boolean means(Several several) {
        return switch (several) {
            case DIFFERENCE -> heading.equals("Net");
            case STEPS -> range == Range.PH;
            case QUOTIENT -> heading.equals("Coefficient") || heading.equals("Partition ratio");
            case RATIO -> heading.equals("Partition ratio");
        };
    }

    /** True where only whole numbers count something. */
    public boolean isCount() {
        return COUNTS.contains(heading);
    }

    /** True for a stated uncertainty, of which nought is no statement. */
    public boolean isUncertainty() {
        return heading.endsWith("uncertainty");
    }

    /** True for the result of an analysis, where not detected is an answer. */
    public boolean isResult() {
        return heading.equals("Result");
    }

    /** True where {@code <0.10} is an answer: of an assay, its residue, a pH or a percentage, but not of an amount or a count. */
    public boolean takesLimits() {
        return LIMITED.contains(heading)
                || !COUNTS.contains(heading)
                        && !heading.equals("Coefficient")
                        && unit.map(Unit::quantity)
                                .filter(q -> q == Quantity.PURE || q == Quantity.PERCENT || q == Quantity.TEMPERATURE)
                                .isPresent();
    }

    /** Whether a number so qualified is an answer: a lower limit is no result and no uncertainty, a range no point of a series. */
    public boolean takes(Field.Qualifier qualifier) {
        return switch (qualifier) {
            case BELOW -> takesLimits() || kind == Kind.SETTING;
            case ABOVE -> takesLimits() && !LIMITED.contains(heading) && !isUncertainty() || kind == Kind.SETTING;
            case RANGE -> takesLimits() && !heading.equals("Yield");
            default -> true;
        };
    }

    /** What a cell must hold, {@code a mass in g of 0 or more}. */
    public String expected() {
        return switch (kind) {
            case NUMBER -> expectedIn(unit.orElse(Unit.ONE));
            case NUMBER_WITH_UNIT -> ("a number " + range.words()).strip();
            case TEXT -> "a text";
            case SETTING -> "a number, date or text, as the name says";
            case CHOICE -> "one of: " + String.join(", ", choices);
            case DATE -> "a date such as 2026-03-06";
            case LABELS -> "labels joined by +";
            case PARTS -> "parts joined by ;";
        };
    }

    /** What a number must be, in a unit of its own. */
    public String expectedIn(Unit unit) {
        String in = unit.symbol().isEmpty() || unit.quantity() == Quantity.PERCENT ? "" : " in " + unit.symbol();
        return (unit.quantity().words() + in + " " + range.words()).strip();
    }
}
