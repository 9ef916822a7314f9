package workuptally.book.lists;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import workuptally.book.cells.CellNumber;
import workuptally.book.cells.NumberText;
import workuptally.book.files.RawCell;
import workuptally.book.files.RawTable;
import workuptally.book.headings.OwnListHeader;
import workuptally.book.words.Unit;

/**
 * What the headings of a list mean, as far as its words, units and places tell: each heading understood in one way, open between several, or
 * not understood. A heading without a subject, such as {@code mg}, belongs to the material named last to its left; where a heading between
 * them was not understood, it could as well be that one's, and is asked about.
 */
final class OwnListReading {
    /** Subjects that are put into the reaction. */
    static final Set<String> MATERIALS;

    /** Kinds of compounds by which lists of one reaction name its partners. */
    static final Set<String> PARTNERS = Set.of(
            "acid",
            "amine",
            "alcohol",
            "aldehyde",
            "ketone",
            "ester",
            "halide",
            "boronic acid",
            "alkyne",
            "alkene",
            "nitrile",
            "acid chloride",
            "anhydride",
            "phenol");

    static {
        Set<String> all = new HashSet<>(Set.of("substrate", "reagent", "catalyst", "base", "additive", "solvent"));
        all.addAll(PARTNERS);
        MATERIALS = Set.copyOf(all);
    }

    /** Subjects that come out of it. */
    static final Set<String> PRODUCTS = Set.of("product", "crude", "purified");

    private static final Set<String> OF_MATERIALS = Set.of(
            "",
            "name",
            "formula",
            "molar mass",
            "mass",
            "amount",
            "equivalents",
            "volume",
            "density",
            "assay",
            "molarity",
            "titre",
            "coefficient");
    private static final Set<String> OF_SOLVENTS = Set.of("", "name", "mass", "volume", "density");
    /** Quantities of which any can be an amount charged. */
    private static final Set<String> AMOUNTS = Set.of("mass", "amount", "volume");

    private static final Set<String> OF_PRODUCTS = Set.of(
            "", "name", "formula", "molar mass", "mass", "amount", "yield", "assay", "coefficient", "tare", "gross");

    /** Largest concentration of any solution, mol/L: what is more under a lone M is a molar mass (common practice). */
    private static final double MOST_MOLAR = 30;

    private final RawTable raw;
    private final OwnListHeader header;
    private final HeadingWords words;
    private final Map<OwnListHeader.Heading, HeadingSense> understood = new LinkedHashMap<>();
    private final Map<OwnListHeader.Heading, List<HeadingSense>> open = new LinkedHashMap<>();
    private final List<OwnListHeader.Heading> byPlace = new ArrayList<>();
    private final Map<OwnListHeader.Heading, OwnListHeader.Heading> behind = new LinkedHashMap<>();
    private Optional<OwnListHeader.Heading> between = Optional.empty();
    private final List<OwnListHeader.Heading> unknown = new ArrayList<>();

    private OwnListReading(RawTable raw, OwnListHeader header, HeadingWords words) {
        this.raw = raw;
        this.header = header;
        this.words = words;
    }

    /** Reads the headings from left to right. */
    static OwnListReading of(RawTable raw, OwnListHeader header, HeadingWords words) {
        OwnListReading reading = new OwnListReading(raw, header, words);
        HeadingSense last = new HeadingSense("", 1, "", Optional.empty());
        for (OwnListHeader.Heading heading : header.headings()) {
            last = reading.read(heading, last);
        }
        return reading;
    }

    /** Understands one heading; returns the sense that says whom the headings right of it are about. */
    private HeadingSense read(OwnListHeader.Heading heading, HeadingSense last) {
        List<HeadingSense> senses = words.senses(heading.text()).stream()
                .filter(sense -> isPossible(heading, sense))
                .map(sense -> byCells(heading, sense))
                .toList();
        if (senses.isEmpty()) {
            unknown.add(heading);
            between = between.or(() -> Optional.of(heading));
            return last;
        }
        List<HeadingSense> ofPlace = senses.stream()
                .map(sense -> sense.subject().isEmpty() && !last.subject().isEmpty() ? sense.ofThatOf(last) : sense)
                .filter(OwnListReading::hasPlace)
                .distinct()
                .toList();
        List<HeadingSense> placed = byUnitsOfCells(heading, ofPlace);
        boolean onlyByPlace = senses.stream().allMatch(s -> s.subject().isEmpty());
        if (onlyByPlace && between.isPresent() && !placed.isEmpty()) {
            behind.put(heading, between.get());
            open.put(heading, placed);
            return last;
        }
        if (placed.size() != 1 || isTaken(placed.get(0))) {
            open.put(heading, placed.isEmpty() ? senses : placed);
            // a second one of the same name is another thing, whose quantities may follow
            if (placed.size() == 1 || !placed.stream().allMatch(last::isAbout)) {
                between = between.or(() -> Optional.of(heading));
            }
            return last;
        }
        HeadingSense sense = placed.get(0);
        understood.put(heading, sense);
        if (onlyByPlace) {
            byPlace.add(heading);
        }
        if (!MATERIALS.contains(sense.subject()) && !PRODUCTS.contains(sense.subject())) {
            return last;
        }
        if (!onlyByPlace) {
            between = Optional.empty();
        }
        return sense;
    }

    private static boolean hasPlace(HeadingSense sense) {
        if (sense.subject().equals("solvent")) {
            return OF_SOLVENTS.contains(sense.quantity());
        }
        if (MATERIALS.contains(sense.subject())) {
            return OF_MATERIALS.contains(sense.quantity());
        }
        return PRODUCTS.contains(sense.subject())
                ? OF_PRODUCTS.contains(sense.quantity())
                : sense.subject().equals("run") || sense.subject().equals(NamedInHeading.WORKUP);
    }

    /** True where another heading means the same; of several ids, dates or notes of the run the first is enough. */
    private boolean isTaken(HeadingSense sense) {
        return !sense.quantity().equals("no table")
                && !sense.quantity().equals("computed here")
                && understood.values().stream()
                        .anyMatch(other -> other.isAbout(sense) && sameQuantity(other.quantity(), sense.quantity()));
    }

    private static boolean sameQuantity(String one, String other) {
        return one.equals(other) || (one.isEmpty() || one.equals("name")) && (other.isEmpty() || other.equals("name"));
    }

    /** False for a sense that the numbers of the column rule out. */
    private boolean isPossible(OwnListHeader.Heading heading, HeadingSense sense) {
        if (!sense.quantity().equals("molarity") || sense.unit().isPresent()) {
            return true;
        }
        return numbers(heading).stream().noneMatch(n -> n.value().doubleValue() > MOST_MOLAR);
    }

    /** A heading that names only a thing, {@code Isolated}, over weights or volumes: it is their quantity, not a name. */
    private HeadingSense byCells(OwnListHeader.Heading heading, HeadingSense sense) {
        boolean thing = MATERIALS.contains(sense.subject()) || PRODUCTS.contains(sense.subject());
        if (!thing || !sense.quantity().isEmpty() || sense.unit().isPresent()) {
            return sense;
        }
        List<NumberText.Number> numbers = numbers(heading);
        if (numbers.isEmpty() || numbers.size() * 2 <= texts(heading).size()) {
            return sense;
        }
        Set<String> quantities = numbers.stream()
                .flatMap(n -> n.unit().stream())
                .map(OwnListReading::quantity)
                .collect(Collectors.toSet());
        if (quantities.isEmpty()) {
            // compounds are named by whole numbers, weights have decimals
            return numbers.stream().allMatch(n -> n.decimals() == 0) ? sense : sense.withQuantity("mass");
        }
        boolean product = PRODUCTS.contains(sense.subject());
        if (product && quantities.equals(Set.of("%"))) {
            return sense.withQuantity("yield");
        }
        return quantities.contains("") || quantities.contains("%")
                ? sense
                : sense.withQuantity(
                        product || quantities.size() > 1
                                ? "mass"
                                : quantities.iterator().next());
    }

    /** Of mass, amount and volume the one that the units in the cells say; any of them holds where each cell has its own. */
    private List<HeadingSense> byUnitsOfCells(OwnListHeader.Heading heading, List<HeadingSense> placed) {
        List<NumberText.Number> numbers = numbers(heading);
        boolean amounts = placed.size() > 1
                && placed.stream().allMatch(s -> s.isAbout(placed.get(0)) && AMOUNTS.contains(s.quantity()));
        if (!amounts
                || numbers.isEmpty()
                || numbers.stream().anyMatch(n -> n.unit().isEmpty())) {
            return placed;
        }
        Set<String> said =
                numbers.stream().map(n -> quantity(n.unit().orElseThrow())).collect(Collectors.toSet());
        Optional<HeadingSense> same =
                placed.stream().filter(s -> said.equals(Set.of(s.quantity()))).findFirst();
        boolean material = MATERIALS.contains(placed.get(0).subject());
        return same.or(() -> material ? Optional.of(placed.get(0)) : Optional.empty())
                .map(List::of)
                .orElse(placed);
    }

    private static String quantity(Unit unit) {
        return switch (unit.quantity()) {
            case MASS -> "mass";
            case VOLUME -> "volume";
            case AMOUNT -> "amount";
            case EQUIVALENTS -> "equivalents";
            case PERCENT -> "%";
            default -> "";
        };
    }

    /** The cells below a heading that hold something. */
    private List<RawCell> texts(OwnListHeader.Heading heading) {
        return raw.rows().stream()
                .filter(row -> row.row() > header.lastRow().row())
                .flatMap(row -> row.cell(heading.column()).stream())
                .filter(cell -> !cell.isBlank() && !(CellNumber.read(cell) instanceof NumberText.Nothing))
                .toList();
    }

    /** The numbers below a heading. */
    List<NumberText.Number> numbers(OwnListHeader.Heading heading) {
        return raw.rows().stream()
                .filter(row -> row.row() > header.lastRow().row())
                .flatMap(row -> row.cell(heading.column()).stream())
                .map(CellNumber::read)
                .filter(NumberText.Number.class::isInstance)
                .map(NumberText.Number.class::cast)
                .toList();
    }

    /** True where a number without a unit of its own stands below a heading without one. */
    boolean lacksUnit(OwnListHeader.Heading heading, HeadingSense sense) {
        return sense.unit().isEmpty()
                && numbers(heading).stream().anyMatch(n -> n.unit().isEmpty());
    }

    /** The name of the only product that headings name; other headings of the product are then about it. */
    String nameOfProduct() {
        List<String> names = understood.values().stream()
                .filter(sense -> PRODUCTS.contains(sense.subject()))
                .map(HeadingSense::called)
                .filter(called -> !called.isEmpty())
                .distinct()
                .toList();
        return names.size() == 1 ? names.get(0) : "";
    }

    /** The id of the run where it stands again in the same words: there a second list begins beside the first. */
    Optional<OwnListHeader.Heading> secondList() {
        return open.keySet().stream()
                .filter(heading -> understood.entrySet().stream()
                        .anyMatch(own -> own.getValue().subject().equals("run")
                                && own.getValue().quantity().equals("id")
                                && own.getKey().text().equals(heading.text())))
                .findFirst();
    }

    /** What is to be settled about a heading that could mean several things. */
    OwnListLayout.OpenHeading question(OwnListHeader.Heading heading, Collection<HeadingSense> senses) {
        List<String> could =
                senses.stream().map(HeadingSense::inWords).distinct().toList();
        Optional<OwnListHeader.Heading> before = between(heading);
        if (before.isPresent()) {
            return new OwnListLayout.OpenHeading(
                    heading.key(),
                    String.join(" or ", could) + ", or of '" + before.get().key()
                            + "', which stands between and was not understood?");
        }
        boolean lost = senses.stream().anyMatch(sense -> sense.subject().isEmpty());
        return new OwnListLayout.OpenHeading(
                heading.key(),
                String.join(" or ", could)
                        + (lost ? ", and whose?" : could.size() == 1 ? ", as another heading?" : "?"));
    }

    OwnListHeader header() {
        return header;
    }

    /** Headings understood in one way, from left to right. */
    Map<OwnListHeader.Heading, HeadingSense> understood() {
        return understood;
    }

    /** Headings that could mean several things, or what another one means, with what they could mean. */
    Map<OwnListHeader.Heading, List<HeadingSense>> open() {
        return open;
    }

    /** The heading that was not understood between an open heading and what it would else be about. */
    Optional<OwnListHeader.Heading> between(OwnListHeader.Heading heading) {
        return Optional.ofNullable(behind.get(heading));
    }

    /** Headings whose subject only their place tells. */
    Set<OwnListHeader.Heading> byPlace() {
        return new HashSet<>(byPlace);
    }

    /** Headings with a word that is not known. */
    List<OwnListHeader.Heading> unknown() {
        return unknown;
    }
}
