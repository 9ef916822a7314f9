package workuptally.property;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import workuptally.property.CsvTables.Row;
import workuptally.tally.suspects.UsualSlip;

/**
 * One usual slip written into the tables of a run: which cells it spoilt.
 *
 * @param slip the slip
 * @param table file name of the table
 * @param rows rows of the table, by number from 0, that it touched
 * @param heading heading of the column without its unit; empty where the whole row is meant
 * @param undo what stood there, to put the cells back
 */
record PlantedSlip(UsualSlip slip, String table, List<Integer> rows, String heading, List<Runnable> undo) {
    private static final String[][] NUMBERS = {
        {"charges.csv", "Actual amount"},
        {"charges.csv", "Assay (% w/w)"},
        {"charges.csv", "Density (g/mL)"},
        {"workup.csv", "Volume (mL)"},
        {"workup.csv", "Mass (g)"},
        {"layers.csv", "Volume (mL)"},
        {"layers.csv", "Gross (g)"},
        {"layers.csv", "Tare (g)"},
        {"layers.csv", "Net (g)"},
        {"assays.csv", "Result"},
        {"isolated.csv", "Gross (g)"},
        {"isolated.csv", "Tare (g)"},
        {"isolated.csv", "Assay (% w/w)"},
    };

    /** A slip of that kind in a run, or nothing where the dice found no place for one. */
    static java.util.Optional<PlantedSlip> in(CsvTables book, String run, UsualSlip kind, Random random) {
        return switch (kind) {
            case DECIMAL_POINT -> number(book, run, kind, random, t -> t.movePointRight(random.nextBoolean() ? 1 : -1));
            case MILLIGRAMS_FOR_GRAMS -> mass(book, run, kind, random);
            case DIGITS_SWAPPED -> number(book, run, kind, random, t -> swapped(t, random));
            case TARE_OF_ANOTHER_VESSEL -> tare(book, run, random);
            case NEIGHBOURING_ROW -> neighbour(book, run, kind, random, false);
            case CELLS_SWAPPED -> neighbour(book, run, kind, random, true);
            case MILLILITRES_FOR_GRAMS -> unit(book, run, random);
            case COUNTED_TWICE -> twice(book, run, random);
            case SALT_FOR_BASE -> molarMass(book, run, random);
            case MISSING_ENTRY -> missing(book, run, random);
            default -> java.util.Optional.empty();
        };
    }

    private static List<Integer> rowsOf(CsvTables book, String table, String run) {
        List<Integer> rows = new ArrayList<>();
        List<Row> all = book.rows(table);
        for (int i = 0; i < all.size(); i++) {
            if (all.get(i).is("Run", run)) {
                rows.add(i);
            }
        }
        return rows;
    }

    private static PlantedSlip set(
            CsvTables book, UsualSlip slip, String table, List<Integer> rows, String heading, List<String> texts) {
        List<Runnable> undo = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            Row row = book.rows(table).get(rows.get(i));
            String before = row.get(heading);
            undo.add(() -> row.set(heading, before));
            row.set(heading, texts.get(i));
        }
        return new PlantedSlip(slip, table, rows, heading.replaceAll(" \\(.*", ""), undo);
    }

    private static java.util.Optional<PlantedSlip> number(
            CsvTables book,
            String run,
            UsualSlip slip,
            Random random,
            java.util.function.UnaryOperator<BigDecimal> change) {
        String[] column = NUMBERS[random.nextInt(NUMBERS.length)];
        List<Integer> rows = rowsOf(book, column[0], run);
        int row = rows.get(random.nextInt(rows.size()));
        String text = book.rows(column[0]).get(row).get(column[1]);
        if (!text.matches("[\\d.]+")) {
            return java.util.Optional.empty();
        }
        String other = change.apply(new BigDecimal(text)).toPlainString();
        return new BigDecimal(other).compareTo(new BigDecimal(text)) == 0
                ? java.util.Optional.empty()
                : java.util.Optional.of(set(book, slip, column[0], List.of(row), column[1], List.of(other)));
    }

    private static java.util.Optional<PlantedSlip> mass(CsvTables book, String run, UsualSlip slip, Random random) {
        boolean thousandTimes = random.nextBoolean();
        return number(book, run, slip, random, t -> t.movePointRight(thousandTimes ? 3 : -3))
                .filter(p -> {
                    boolean mass = !p.heading().equals("Assay")
                            && !p.heading().equals("Result")
                            && !p.heading().equals("Density");
                    if (!mass) {
                        p.undo().forEach(Runnable::run);
                    }
                    return mass;
                });
    }

    private static BigDecimal swapped(BigDecimal typed, Random random) {
        char[] digits = typed.toPlainString().toCharArray();
        int at = random.nextInt(digits.length - 1 > 0 ? digits.length - 1 : 1);
        int next = at + 1 < digits.length && digits[at + 1] == '.' ? at + 2 : at + 1;
        if (digits[at] == '.' || next >= digits.length) {
            return typed;
        }
        char first = digits[at];
        digits[at] = digits[next];
        digits[next] = first;
        return new BigDecimal(new String(digits));
    }

    private static java.util.Optional<PlantedSlip> tare(CsvTables book, String run, Random random) {
        String table = random.nextBoolean() ? "layers.csv" : "isolated.csv";
        List<Integer> rows = rowsOf(book, table, run).stream()
                .filter(r -> !book.rows(table).get(r).get("Tare (g)").isBlank())
                .toList();
        int row = rows.get(random.nextInt(rows.size()));
        List<Row> register = book.rows("vessels.csv");
        String other = register.get(random.nextInt(register.size())).get("Clean dry tare (g)");
        return other.equals(book.rows(table).get(row).get("Tare (g)"))
                ? java.util.Optional.empty()
                : java.util.Optional.of(
                        set(book, UsualSlip.TARE_OF_ANOTHER_VESSEL, table, List.of(row), "Tare (g)", List.of(other)));
    }

    private static java.util.Optional<PlantedSlip> neighbour(
            CsvTables book, String run, UsualSlip slip, Random random, boolean both) {
        String[] column = NUMBERS[random.nextInt(NUMBERS.length)];
        List<Integer> rows = rowsOf(book, column[0], run);
        if (rows.size() < 2) {
            return java.util.Optional.empty();
        }
        int at = rows.get(random.nextInt(rows.size() - 1));
        String first = book.rows(column[0]).get(at).get(column[1]);
        String second = book.rows(column[0]).get(at + 1).get(column[1]);
        boolean twoNumbers = first.matches("[\\d.]+") && second.matches("[\\d.]+") && !first.equals(second);
        if (!twoNumbers || first.replace(".", "").length() < 3) {
            return java.util.Optional.empty();
        }
        return java.util.Optional.of(
                both
                        ? set(book, slip, column[0], List.of(at, at + 1), column[1], List.of(second, first))
                        : set(book, slip, column[0], List.of(at + 1), column[1], List.of(first)));
    }

    private static java.util.Optional<PlantedSlip> unit(CsvTables book, String run, Random random) {
        List<Integer> rows = rowsOf(book, "charges.csv", run).stream()
                .filter(r ->
                        !book.rows("charges.csv").get(r).get("Density (g/mL)").isBlank())
                .toList();
        int row = rows.get(random.nextInt(rows.size()));
        return java.util.Optional.of(
                set(book, UsualSlip.MILLILITRES_FOR_GRAMS, "charges.csv", List.of(row), "Actual unit", List.of("g")));
    }

    private static java.util.Optional<PlantedSlip> twice(CsvTables book, String run, Random random) {
        List<Integer> rows = rowsOf(book, "layers.csv", run).stream()
                .filter(r -> book.rows("layers.csv").get(r).is("Phase", "aqueous"))
                .toList();
        int row = rows.get(random.nextInt(rows.size()));
        List<String> copy = new ArrayList<>(book.rows("layers.csv").get(row).cells());
        String label = copy.get(1);
        copy.set(1, "X9");
        copy.set(3, copy.get(3) + "b");
        book.add("layers.csv", copy);
        int added = book.rows("layers.csv").size() - 1;
        for (Row assay : book.rows("assays.csv")) {
            if (assay.is("Run", run) && assay.is("Sample", label)) {
                List<String> second = new ArrayList<>(assay.cells());
                second.set(1, "X9");
                book.add("assays.csv", second);
            }
        }
        return java.util.Optional.of(new PlantedSlip(
                UsualSlip.COUNTED_TWICE,
                "layers.csv",
                List.of(row, added),
                "",
                List.of(
                        () -> book.remove("layers.csv", r -> r.is("Run", run) && r.is("Layer", "X9")),
                        () -> book.remove("assays.csv", r -> r.is("Run", run) && r.is("Sample", "X9")))));
    }

    private static java.util.Optional<PlantedSlip> molarMass(CsvTables book, String run, Random random) {
        int row = rowsOf(book, "charges.csv", run).get(random.nextBoolean() ? 0 : 1);
        String typed = book.rows("charges.csv").get(row).get("Molar mass (g/mol)");
        // hydrochloride, or monohydrate: atomic weights of 2021
        BigDecimal other = new BigDecimal(typed).add(new BigDecimal(random.nextBoolean() ? "36.46" : "18.02"));
        return java.util.Optional.of(set(
                book,
                UsualSlip.SALT_FOR_BASE,
                "charges.csv",
                List.of(row),
                "Molar mass (g/mol)",
                List.of(other.toPlainString())));
    }

    private static java.util.Optional<PlantedSlip> missing(CsvTables book, String run, Random random) {
        String table = random.nextBoolean() ? "layers.csv" : "isolated.csv";
        String heading = random.nextBoolean() ? "Tare (g)" : "Gross (g)";
        List<Integer> rows = rowsOf(book, table, run).stream()
                .filter(r -> !book.rows(table).get(r).get(heading).isBlank())
                .toList();
        int row = rows.get(random.nextInt(rows.size()));
        return java.util.Optional.of(set(book, UsualSlip.MISSING_ENTRY, table, List.of(row), heading, List.of("")));
    }
}
