package workuptally.property;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import workuptally.property.CsvTables.Row;

/**
 * One reading of a run, and how it is worsened: taken away, made coarser, or contradicted.
 *
 * @param table file name of its table
 * @param row index among the run's rows of that table
 * @param heading its column
 * @param worse what happens to it
 */
record WorsenedReading(String table, int row, String heading, Worse worse) {
    /** Columns that hold readings; what a row declares (names, kinds, formulas, limits, what a step gives) is no reading. */
    static final Map<String, List<String>> COLUMNS = Map.of(
            "charges.csv", List.of("Actual amount", "Titre (mol/L)"),
            "workup.csv", List.of("Volume (mL)", "Mass (g)", "Temperature (°C)", "pH after"),
            "layers.csv", List.of("Volume (mL)", "Gross (g)", "Tare (g)", "Net (g)", "Temperature (°C)", "pH"),
            "assays.csv", List.of("Result", "Aliquot (mL)", "Residue (mg)"),
            "nmr-assays.csv",
                    List.of("Standard mass (mg)", "Sample mass (mg)", "Standard integral", "Substance integral"),
            "isolated.csv", List.of("Gross (g)", "Tare (g)", "Net (g)", "Assay (% w/w)", "Second weighing (g)"),
            "containers.csv", List.of("Gross then (g)"),
            "transfers.csv", List.of("Amount (g)"));

    /** Columns that say what a reading is of or by: left empty or with a question mark they settle nothing more. */
    static final Map<String, List<String>> DECLARED = Map.of(
            "charges.csv", List.of("Coefficient"),
            "workup.csv", List.of("Operation", "Checked by", "Emulsion", "Quench test"),
            "layers.csv", List.of("Phase", "Status"),
            "assays.csv", List.of("Method", "Unit"),
            "containers.csv", List.of("Waste stream", "Capacity (L)"));

    /** Tables in which a whole row is a reading, so that it can go, or stand twice. */
    static final List<String> ROWS_ARE_READINGS = List.of("layers.csv", "assays.csv", "nmr-assays.csv", "isolated.csv");

    /** Where the standard uncertainty of a reading is typed, and whether in percent. */
    private static final Map<String, String> UNCERTAINTY = Map.of(
            "assays.csv Result", "Relative standard uncertainty (%)",
            "isolated.csv Assay (% w/w)", "Relative standard uncertainty (%)",
            "layers.csv Volume (mL)", "Volume uncertainty (mL)",
            "charges.csv Titre (mol/L)", "Titre uncertainty (%)");

    /** Columns in which 0 is as good a reading as any other; a tare is 0 where the balance was set to zero with the vessel on it. */
    private static final List<String> ZERO_IS_A_READING = List.of("Temperature (°C)", "pH", "pH after", "Tare (g)");

    private static final Pattern NUMBER = Pattern.compile("\\d+(\\.\\d+)?");

    /** How a reading is worsened. */
    enum Worse {
        DELETED,
        BLANK,
        WIDER,
        ABOUT,
        CONTRADICTED_HIGHER,
        CONTRADICTED_LOWER,
        ZERO,
        BELOW_MORE,
        TEXT,
        QUESTION;

        boolean isCoarser() {
            return this == WIDER || this == ABOUT || this == BELOW_MORE;
        }
    }

    /** Whether it can be done to the rows of a run. */
    boolean applies(Row cells) {
        boolean typed =
                cells.headings().contains(heading) && !cells.get(heading).isBlank();
        boolean isRow = ROWS_ARE_READINGS.contains(table);
        boolean declared = DECLARED.getOrDefault(table, List.of()).contains(heading);
        if (declared || worse == Worse.QUESTION) {
            return typed && declared && (worse == Worse.QUESTION || worse == Worse.BLANK);
        }
        return typed
                && switch (worse) {
                    case DELETED, CONTRADICTED_HIGHER, CONTRADICTED_LOWER -> isRow;
                    case WIDER ->
                        uncertainty().filter(cells.headings()::contains).isPresent();
                    case ZERO -> !ZERO_IS_A_READING.contains(heading);
                    default -> true;
                };
    }

    /** Changes the rows of the table, of which {@link #row} is the one. */
    void worsen(List<Row> rows, List<List<String>> cells) {
        Row here = rows.get(row);
        String was = here.get(heading);
        switch (worse) {
            case DELETED -> cells.remove(row);
            case BLANK -> here.set(heading, "");
            case TEXT -> here.set(heading, "see notebook");
            case QUESTION -> here.set(heading, "?");
            case ZERO -> here.set(heading, "0");
            case ABOUT -> here.set(heading, was.startsWith("<") ? was : "ca. " + number(was));
            case BELOW_MORE -> here.set(heading, "<" + times(was, heading.startsWith("Gross") ? 1.05 : 1.4));
            case WIDER -> here.set(uncertainty().orElseThrow(), doubled(here, was));
            case CONTRADICTED_HIGHER -> cells.add(second(here, times(was, 1.5)));
            case CONTRADICTED_LOWER -> cells.add(second(here, times(was, 0.5)));
        }
    }

    private static List<String> second(Row row, String text, String heading) {
        Row copy = new Row(row.headings(), new java.util.ArrayList<>(row.cells()));
        copy.set(heading, text);
        return copy.cells();
    }

    private List<String> second(Row row, String text) {
        return second(row, text, heading);
    }

    private Optional<String> uncertainty() {
        return Optional.ofNullable(UNCERTAINTY.get(table + " " + heading));
    }

    private String doubled(Row row, String was) {
        String typed = row.get(uncertainty().orElseThrow());
        if (!typed.isBlank()) {
            return times(typed, 2);
        }
        double value = Double.parseDouble(number(was));
        return heading.startsWith("Volume") ? text(2 * Math.max(0.6, 0.012 * value)) : "10";
    }

    private static String number(String cell) {
        Matcher number = NUMBER.matcher(cell);
        if (!number.find()) {
            throw new IllegalArgumentException(cell);
        }
        return number.group();
    }

    private static String times(String cell, double factor) {
        return text(factor * Double.parseDouble(number(cell)));
    }

    private static String text(double number) {
        return String.format(Locale.ROOT, "%.4f", number);
    }
}
