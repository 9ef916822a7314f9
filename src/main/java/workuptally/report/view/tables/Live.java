package workuptally.report.view.tables;

import java.util.List;
import java.util.OptionalDouble;
import java.util.StringJoiner;
import java.util.function.DoubleBinaryOperator;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import workuptally.model.Limit;
import workuptally.model.Place;

/**
 * How a number follows from entries of the book and from other figures of the tables, so that a spreadsheet can compute it anew when an
 * entry is changed. It says no more than the number beside it: where both differ, the number counts.
 */
public sealed interface Live {

    /**
     * The expression as a spreadsheet formula, without the equals sign.
     *
     * @param sheets where the cells stand
     */
    String formula(LiveSheets sheets);

    /**
     * The value of the expression; empty where it needs an entry that is no plain number.
     *
     * @param sheets the values of the cells
     */
    OptionalDouble value(LiveSheets sheets);

    /**
     * An entry of the book, in the unit in which the tables count it.
     *
     * @param place where it stands
     * @param number the number as it was read, in that unit; the cell may hold it in another one
     */
    record Entry(Place place, double number) implements Live {
        private static final double[] UNIT_FACTORS = {1, 1e-3, 1e3, 1e-6, 1e6, 1e2, 1e-2};

        @Override
        public String formula(LiveSheets sheets) {
            double factor = factor(sheets).orElse(1);
            return factor == 1
                    ? sheets.address(place)
                    : "(" + sheets.address(place) + "*" + new Fixed(factor).formula(sheets) + ")";
        }

        @Override
        public OptionalDouble value(LiveSheets sheets) {
            return factor(sheets).isPresent() ? OptionalDouble.of(number) : OptionalDouble.empty();
        }

        /** What the number in the cell is to be multiplied with; empty where the cell holds no number of that kind. */
        private OptionalDouble factor(LiveSheets sheets) {
            OptionalDouble held = sheets.value(place);
            return held.isEmpty()
                    ? held
                    : DoubleStream.of(UNIT_FACTORS)
                            .filter(factor -> agree(held.getAsDouble() * factor, number))
                            .findFirst();
        }
    }

    /**
     * Another cell of the same row.
     *
     * @param name name of the column
     */
    record InRow(String name) implements Live {
        @Override
        public String formula(LiveSheets sheets) {
            return sheets.address(name);
        }

        @Override
        public OptionalDouble value(LiveSheets sheets) {
            return sheets.value(name);
        }
    }

    /**
     * A cell of another table.
     *
     * @param table title of the table
     * @param row row from 0
     * @param column name of the column
     */
    record InTable(String table, int row, String column) implements Live {
        @Override
        public String formula(LiveSheets sheets) {
            return sheets.address(table, row, column);
        }

        @Override
        public OptionalDouble value(LiveSheets sheets) {
            return sheets.value(table, row, column);
        }
    }

    /**
     * A number that has a name in the workbook, as limits have.
     *
     * @param name its name, see {@link TableView.Name}
     */
    record Named(String name) implements Live {
        /** The value of a limit. */
        public static Named of(Limit limit) {
            return new Named("Limit_" + limit.title().replaceAll("[^A-Za-z0-9]+", "_"));
        }

        @Override
        public String formula(LiveSheets sheets) {
            return sheets.nameOf(name);
        }

        @Override
        public OptionalDouble value(LiveSheets sheets) {
            return sheets.named(name);
        }
    }

    /**
     * A fixed number.
     *
     * @param number the number
     */
    record Fixed(double number) implements Live {
        @Override
        public String formula(LiveSheets sheets) {
            return number == Math.rint(number) && Math.abs(number) < 1e9
                    ? Long.toString((long) number)
                    : Double.toString(number);
        }

        @Override
        public OptionalDouble value(LiveSheets sheets) {
            return OptionalDouble.of(number);
        }
    }

    /**
     * Sum over the rows of another table that have the same key.
     *
     * @param table title of the table
     * @param column column to add up
     * @param keyColumn column of the key there
     * @param ownKeyColumn column of the key in this row
     */
    record SumWhere(String table, String column, String keyColumn, String ownKeyColumn) implements Live {
        @Override
        public String formula(LiveSheets sheets) {
            return "SUMIFS(" + sheets.range(table, column) + "," + sheets.range(table, keyColumn) + ","
                    + sheets.address(ownKeyColumn) + ")";
        }

        @Override
        public OptionalDouble value(LiveSheets sheets) {
            return OptionalDouble.of(sheets.sumWhere(table, column, keyColumn, ownKeyColumn));
        }
    }

    /**
     * Terms joined by one sign, from left to right.
     *
     * @param operator the sign
     * @param terms the terms, one or more
     */
    record Joined(Operator operator, List<Live> terms) implements Live {
        /** Copies the list. */
        public Joined {
            terms = List.copyOf(terms);
        }

        @Override
        public String formula(LiveSheets sheets) {
            StringJoiner formula = new StringJoiner(operator.sign, "(", ")");
            for (Live term : terms) {
                formula.add(term.formula(sheets));
            }
            return formula.toString();
        }

        @Override
        public OptionalDouble value(LiveSheets sheets) {
            boolean missing = false;
            OptionalDouble joined = OptionalDouble.empty();
            for (Live term : terms) {
                OptionalDouble value = term.value(sheets); // each is asked, whatever the ones before it said
                if (value.isEmpty()) {
                    missing = true;
                } else {
                    joined = joined.isEmpty()
                            ? value
                            : OptionalDouble.of(
                                    operator.operation.applyAsDouble(joined.getAsDouble(), value.getAsDouble()));
                }
            }
            return missing ? OptionalDouble.empty() : joined;
        }
    }

    /**
     * The least of several.
     *
     * @param terms the terms, one or more
     */
    record Least(List<Live> terms) implements Live {
        /** Copies the list. */
        public Least {
            terms = List.copyOf(terms);
        }

        @Override
        public String formula(LiveSheets sheets) {
            return terms.stream().map(term -> term.formula(sheets)).collect(Collectors.joining(",", "MIN(", ")"));
        }

        @Override
        public OptionalDouble value(LiveSheets sheets) {
            List<OptionalDouble> values =
                    terms.stream().map(term -> term.value(sheets)).toList();
            return values.stream().anyMatch(OptionalDouble::isEmpty)
                    ? OptionalDouble.empty()
                    : values.stream().mapToDouble(OptionalDouble::getAsDouble).min();
        }
    }

    /**
     * How far two figures lie apart.
     *
     * @param one a figure
     * @param other another one
     */
    record Apart(Live one, Live other) implements Live {
        @Override
        public String formula(LiveSheets sheets) {
            return "ABS(" + one.formula(sheets) + "-" + other.formula(sheets) + ")";
        }

        @Override
        public OptionalDouble value(LiveSheets sheets) {
            OptionalDouble first = one.value(sheets);
            OptionalDouble second = other.value(sheets);
            return first.isEmpty() || second.isEmpty()
                    ? OptionalDouble.empty()
                    : OptionalDouble.of(Math.abs(first.getAsDouble() - second.getAsDouble()));
        }
    }

    /**
     * A figure about the numbers in a part of a column; empty cells do not count.
     *
     * @param of which figure
     * @param table title of the table
     * @param firstRow first row, from 0
     * @param lastRow last row, from 0
     * @param column name of the column
     */
    record OfColumn(Of of, String table, int firstRow, int lastRow, String column) implements Live {
        @Override
        public String formula(LiveSheets sheets) {
            String last = sheets.address(table, lastRow, column);
            return of.function + "(" + sheets.address(table, firstRow, column) + ":"
                    + last.substring(last.lastIndexOf('!') + 1) + ")";
        }

        @Override
        public OptionalDouble value(LiveSheets sheets) {
            double[] numbers = IntStream.rangeClosed(firstRow, lastRow)
                    .mapToObj(row -> sheets.value(table, row, column))
                    .filter(OptionalDouble::isPresent)
                    .mapToDouble(OptionalDouble::getAsDouble)
                    .sorted()
                    .toArray();
            return numbers.length == 0 ? OptionalDouble.empty() : OptionalDouble.of(of.figure.applyAsDouble(numbers));
        }
    }

    /** Figures about many numbers. */
    enum Of {
        MEAN("AVERAGE", sorted -> DoubleStream.of(sorted).average().orElseThrow()),
        MEDIAN("MEDIAN", sorted -> (sorted[(sorted.length - 1) / 2] + sorted[sorted.length / 2]) / 2);

        private final String function;
        private final ToDoubleFunction<double[]> figure;

        Of(String function, ToDoubleFunction<double[]> figure) {
            this.function = function;
            this.figure = figure;
        }
    }

    /** Signs between terms. */
    enum Operator {
        PLUS("+", (a, b) -> a + b),
        MINUS("-", (a, b) -> a - b),
        TIMES("*", (a, b) -> a * b),
        OVER("/", (a, b) -> a / b);

        private final String sign;
        private final DoubleBinaryOperator operation;

        Operator(String sign, DoubleBinaryOperator operation) {
            this.sign = sign;
            this.operation = operation;
        }
    }

    /** True where two numbers agree to nine digits, so that one may stand for the other. */
    static boolean agree(double one, double other) {
        return Math.abs(one - other) <= 1e-9 * Math.max(Math.abs(one), Math.abs(other));
    }

    /** Sum. */
    static Live sum(List<Live> terms) {
        return terms.size() == 1 ? terms.get(0) : new Joined(Operator.PLUS, terms);
    }

    /** Difference. */
    static Live minus(Live from, Live subtracted) {
        return new Joined(Operator.MINUS, List.of(from, subtracted));
    }

    /** Product. */
    static Live times(Live... factors) {
        return new Joined(Operator.TIMES, List.of(factors));
    }

    /** Quotient. */
    static Live over(Live dividend, Live divisor) {
        return new Joined(Operator.OVER, List.of(dividend, divisor));
    }

    /** Percentage of one figure of another. */
    static Live percent(Live part, Live whole) {
        return over(times(new Fixed(100), part), whole);
    }
}
