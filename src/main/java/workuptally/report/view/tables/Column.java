package workuptally.report.view.tables;

/**
 * A column of a result table.
 *
 * @param name heading without unit, unique in its table
 * @param unit unit; empty if none
 * @param decimals decimals to show for numbers; -1 for text
 * @param widthCharacters width in characters
 */
public record Column(String name, String unit, int decimals, int widthCharacters) {
    /** A text column. */
    public static Column text(String name, int widthCharacters) {
        return new Column(name, "", -1, widthCharacters);
    }

    /** A number column. */
    public static Column number(String name, String unit, int decimals) {
        return new Column(name, unit, decimals, Math.max(10, name.length() + (unit.isEmpty() ? 0 : unit.length() + 3)));
    }

    /** Heading with unit: {@code Theory (g)}. */
    public String heading() {
        return unit.isEmpty() ? name : name + " (" + unit + ")";
    }

    /** True for a number column. */
    public boolean isNumber() {
        return decimals >= 0;
    }
}
