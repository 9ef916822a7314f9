package workuptally.reference.tables;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** One row of a reference file: cells by heading, with the place for messages. */
public final class ReferenceCells {
    /** Stands for not known or not applicable. */
    public static final String NONE = "-";

    private final String file;
    private final long line;
    private final Map<String, Integer> positions;
    private final List<String> inOrder;

    /**
     * A row.
     *
     * @param positions where each heading stands, the same map for all rows of a file
     * @param inOrder the cells, one for each heading
     */
    ReferenceCells(String file, long line, Map<String, Integer> positions, List<String> inOrder) {
        this.file = file;
        this.line = line;
        this.positions = positions;
        this.inOrder = List.copyOf(inOrder);
    }

    /**
     * What stands in a column, - included.
     *
     * @throws IllegalArgumentException if the table has no such column, which is a fault of ours
     */
    public String raw(String column) {
        Integer position = positions.get(column);
        if (position == null) {
            throw new IllegalArgumentException(file + " has no column " + column);
        }
        return inOrder.get(position);
    }

    /**
     * What stands in a column.
     *
     * @throws IllegalReferenceException if that is -
     */
    public String text(String column) throws IllegalReferenceException {
        String cell = raw(column);
        if (cell.equals(NONE)) {
            throw wrong(column, cell, "a value is needed here");
        }
        return cell;
    }

    /** What stands in a column; empty for -. */
    public Optional<String> optionalText(String column) {
        String cell = raw(column);
        return cell.equals(NONE) ? Optional.empty() : Optional.of(cell);
    }

    /**
     * A number, in the unit of its column.
     *
     * @param least smallest value allowed
     * @param most largest value allowed
     * @throws IllegalReferenceException if it is none, or out of that range
     */
    public double number(String column, double least, double most) throws IllegalReferenceException {
        return toNumber(column, text(column), least, most);
    }

    /**
     * A number, in the unit of its column; empty for -.
     *
     * @param least smallest value allowed
     * @param most largest value allowed
     * @throws IllegalReferenceException if it is none, or out of that range
     */
    public OptionalDouble optionalNumber(String column, double least, double most) throws IllegalReferenceException {
        String cell = raw(column);
        return cell.equals(NONE) ? OptionalDouble.empty() : OptionalDouble.of(toNumber(column, cell, least, most));
    }

    /**
     * True for yes.
     *
     * @throws IllegalReferenceException if neither yes nor no stands there
     */
    public boolean yes(String column) throws IllegalReferenceException {
        String cell = text(column);
        return switch (cell) {
            case "yes" -> true;
            case "no" -> false;
            default -> throw wrong(column, cell, "yes or no");
        };
    }

    /** One of some words; empty for none. */
    public Optional<String> oneOf(String column, String... words) throws IllegalReferenceException {
        Optional<String> cell = optionalText(column);
        if (cell.isPresent() && !List.of(words).contains(cell.get())) {
            throw wrong(column, cell.get(), String.join(", ", words) + " or -");
        }
        return cell;
    }

    /** The parts of a cell joined by {@code ;}; empty for -. */
    public List<String> list(String column) {
        List<String> parts = new ArrayList<>();
        String cell = raw(column);
        if (!cell.equals(NONE)) {
            for (String part : cell.split(";")) {
                if (!part.isBlank()) {
                    parts.add(part.strip());
                }
            }
        }
        return List.copyOf(parts);
    }

    /** Numbers joined by {@code ;} in rising order; empty for none. */
    public List<Double> rising(String column, double least, double most) throws IllegalReferenceException {
        List<Double> numbers = new ArrayList<>();
        for (String part : list(column)) {
            double number = toNumber(column, part, least, most);
            if (!numbers.isEmpty() && number < numbers.get(numbers.size() - 1)) {
                throw wrong(column, raw(column), "numbers in rising order");
            }
            numbers.add(number);
        }
        return List.copyOf(numbers);
    }

    /**
     * Keys of the bibliography.
     *
     * @throws IllegalReferenceException if there is none
     */
    public List<String> sources(String column) throws IllegalReferenceException {
        List<String> keys = list(column);
        if (keys.isEmpty()) {
            throw wrong(column, raw(column), "at least one key of sources.csv");
        }
        return keys;
    }

    /**
     * What a row rests on.
     *
     * @throws IllegalReferenceException if the word is not known
     */
    public Basis basis(String column) throws IllegalReferenceException {
        String cell = raw(column);
        Optional<Basis> basis = Basis.of(cell);
        if (basis.isEmpty()) {
            throw wrong(column, cell, "source, local, common practice or memory");
        }
        return basis.get();
    }

    /**
     * What to throw for a cell that cannot be used.
     *
     * @param allowed what may stand there
     */
    public IllegalReferenceException wrong(String column, String cell, String allowed) {
        return new IllegalReferenceException(file, line, column + " reads '" + cell + "'; allowed: " + allowed);
    }

    private double toNumber(String column, String cell, double least, double most) throws IllegalReferenceException {
        double value;
        try {
            value = Double.parseDouble(cell);
        } catch (NumberFormatException e) {
            throw wrong(column, cell, "a number with a decimal point");
        }
        if (!(value >= least && value <= most)) {
            throw wrong(column, cell, "a number from " + least + " to " + most);
        }
        return value;
    }
}
