package workuptally.book.lists;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import workuptally.book.cells.CellNumber;
import workuptally.book.cells.NumberText;
import workuptally.book.files.RawCell;
import workuptally.book.files.RawTable;
import workuptally.book.headings.OwnListHeader;
import workuptally.book.words.Quantity;
import workuptally.book.words.Unit;

/**
 * What the cells below a heading say of it: a heading {@code Isolated} over {@code 1.09 g} is a weight, not a name, and {@code Amount} over
 * {@code 1.22 g} and {@code 5 mmol} needs no unit of its own.
 */
final class CellsBelow {
    private static final Set<String> AMOUNTS = Set.of("mass", "amount", "volume", "equivalents");

    private final RawTable raw;
    private final OwnListHeader header;

    CellsBelow(RawTable raw, OwnListHeader header) {
        this.raw = raw;
        this.header = header;
    }

    /** The filled cells below a heading. */
    private List<RawCell> filled(OwnListHeader.Heading heading) {
        return raw.rows().stream()
                .filter(row -> row.row() > header.lastRow().row())
                .flatMap(row -> row.cell(heading.column()).stream())
                .filter(cell -> !cell.isBlank() && !(CellNumber.read(cell) instanceof NumberText.Nothing))
                .toList();
    }

    /** The numbers below a heading. */
    List<NumberText.Number> numbers(OwnListHeader.Heading heading) {
        return filled(heading).stream()
                .map(CellNumber::read)
                .filter(NumberText.Number.class::isInstance)
                .map(NumberText.Number.class::cast)
                .toList();
    }

    /** The senses that the cells leave a heading. */
    List<HeadingSense> fitting(OwnListHeader.Heading heading, List<HeadingSense> senses) {
        return senses.stream()
                .flatMap(sense -> fitting(heading, sense).stream())
                .distinct()
                .toList();
    }

    private List<HeadingSense> fitting(OwnListHeader.Heading heading, HeadingSense sense) {
        boolean product = OwnListReading.PRODUCTS.contains(sense.subject());
        if (!product && !OwnListReading.MATERIALS.contains(sense.subject())) {
            return List.of(sense);
        }
        int filled = filled(heading).size();
        List<NumberText.Number> numbers = numbers(heading);
        boolean named = sense.quantity().isEmpty() || sense.quantity().equals("name");
        if (named) {
            return 2 * numbers.size() > filled ? asNumbers(sense, numbers, product) : List.of(sense);
        }
        // names under a heading with a unit, Catalyst (mol %) over Pd(PPh3)4
        boolean namesOnly = filled > 0 && numbers.isEmpty() && AMOUNTS.contains(sense.quantity()) && !product;
        return namesOnly && !hasNothingButQualified(heading)
                ? List.of(sense, sense.withQuantity("name"))
                : List.of(sense);
    }

    /** True where no cell holds a letter that a name could consist of. */
    private boolean hasNothingButQualified(OwnListHeader.Heading heading) {
        return filled(heading).stream().noneMatch(cell -> cell.text().matches(".*\\p{L}.*"));
    }

    /** A heading for a name over numbers: what these are by their units; without units a name may be a number as well. */
    private static List<HeadingSense> asNumbers(HeadingSense sense, List<NumberText.Number> numbers, boolean product) {
        Set<Quantity> quantities = new HashSet<>();
        numbers.forEach(number -> number.unit().map(Unit::quantity).ifPresent(quantities::add));
        if (quantities.isEmpty()) {
            // a compound's number, or a weight whose unit nobody wrote
            return sense.subject().equals("crude") || sense.subject().equals("purified")
                    ? List.of(sense.withQuantity("mass"))
                    : List.of(sense, sense.withQuantity("mass"));
        }
        if (product) {
            return quantities.equals(Set.of(Quantity.MASS))
                    ? List.of(sense.withQuantity("mass"))
                    : quantities.equals(Set.of(Quantity.PERCENT))
                            ? List.of(sense.withQuantity("yield"))
                            : List.of(sense, sense.withQuantity("mass"));
        }
        boolean amounts = quantities.stream().allMatch(CellsBelow::isAmount);
        return amounts ? List.of(sense.withQuantity("mass")) : List.of(sense);
    }

    private static boolean isAmount(Quantity quantity) {
        return quantity == Quantity.MASS
                || quantity == Quantity.VOLUME
                || quantity == Quantity.AMOUNT
                || quantity == Quantity.EQUIVALENTS;
    }

    /** One sense where several differ by the dimension of an amount alone and every number below writes its unit. */
    List<HeadingSense> settledByUnits(OwnListHeader.Heading heading, List<HeadingSense> senses) {
        boolean onlyAmounts = senses.size() > 1
                && senses.stream()
                        .allMatch(sense -> AMOUNTS.contains(sense.quantity()) && sense.isAbout(senses.get(0)));
        List<NumberText.Number> numbers = numbers(heading);
        boolean allWithUnits =
                !numbers.isEmpty() && numbers.stream().noneMatch(n -> n.unit().isEmpty());
        boolean fits = !OwnListReading.PRODUCTS.contains(
                        senses.isEmpty() ? "" : senses.get(0).subject())
                || numbers.stream()
                        .allMatch(n -> n.unit()
                                .filter(u -> u.quantity() == Quantity.MASS)
                                .isPresent());
        return onlyAmounts && allWithUnits && fits
                ? senses.stream()
                        .filter(sense -> sense.quantity().equals("mass"))
                        .limit(1)
                        .toList()
                : senses;
    }

    /** True where a number without a unit of its own stands below a heading without one. */
    boolean lackUnit(OwnListHeader.Heading heading, HeadingSense sense) {
        return sense.unit().isEmpty()
                && numbers(heading).stream().anyMatch(n -> n.unit().isEmpty());
    }
}
