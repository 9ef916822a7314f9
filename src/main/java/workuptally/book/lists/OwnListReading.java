package workuptally.book.lists;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import workuptally.book.files.RawTable;
import workuptally.book.headings.OwnListHeader;
import workuptally.book.words.BookWords;

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
    private static final Set<String> OF_PRODUCTS = Set.of(
            "", "name", "formula", "molar mass", "mass", "amount", "yield", "assay", "coefficient", "tare", "gross");

    /** Largest concentration of any solution, mol/L: what is more under a lone M is a molar mass (common practice). */
    private static final double MOST_MOLAR = 30;

    /** The letter behind a quantity, {@code mass B}, that tells of which product it is. */
    private static final Pattern LETTER = Pattern.compile("\\p{L}{2,}\\.? ([A-D])(?=\\s*(?:[(\\[/,:]|$))");

    private final CellsBelow cells;
    private final OwnListHeader header;
    private final HeadingWords words;
    private final SubjectWords subjects;
    private final Map<OwnListHeader.Heading, HeadingSense> understood = new LinkedHashMap<>();
    private final Map<OwnListHeader.Heading, List<HeadingSense>> open = new LinkedHashMap<>();
    private final List<OwnListHeader.Heading> byPlace = new ArrayList<>();
    private final Map<OwnListHeader.Heading, OwnListHeader.Heading> behind = new LinkedHashMap<>();
    private Optional<OwnListHeader.Heading> between = Optional.empty();
    private List<OwnListHeader.Heading> beside = List.of();
    private Optional<String> partnerForProduct = Optional.empty();
    private final List<OwnListHeader.Heading> unknown = new ArrayList<>();

    private OwnListReading(RawTable raw, OwnListHeader header, HeadingWords words) {
        this.cells = new CellsBelow(raw, header);
        this.header = header;
        this.words = words;
        this.subjects = new SubjectWords(header, words);
    }

    /** Reads the headings from left to right. */
    static OwnListReading of(RawTable raw, OwnListHeader header, HeadingWords words) {
        OwnListReading reading = new OwnListReading(raw, header, words);
        HeadingSense last = new HeadingSense("", 1, "", Optional.empty());
        for (OwnListHeader.Heading heading : header.headings()) {
            if (reading.beginsAnotherList(heading)) {
                reading.beside = header.headings().stream()
                        .filter(other -> other.column() >= heading.column())
                        .toList();
                break;
            }
            last = reading.read(heading, last);
        }
        reading.takePartnerForProduct();
        return reading;
    }

    /** True where the heading of the run's id stands again and with it most of those read so far: a list beside the list. */
    private boolean beginsAnotherList(OwnListHeader.Heading heading) {
        boolean id = understood.entrySet().stream()
                .anyMatch(entry -> entry.getValue().subject().equals("run")
                        && entry.getValue().quantity().equals("id")
                        && sameWords(entry.getKey(), heading));
        long again = header.headings().stream()
                .filter(other -> other.column() < heading.column())
                .filter(before -> header.headings().stream()
                        .anyMatch(other -> other.column() > heading.column() && sameWords(before, other)))
                .count();
        long before = header.headings().stream()
                .filter(other -> other.column() < heading.column())
                .count();
        return id && again >= 2 && 2 * again >= before;
    }

    private static boolean sameWords(OwnListHeader.Heading one, OwnListHeader.Heading other) {
        return BookWords.loose(one.text()).equals(BookWords.loose(other.text()));
    }

    /** Headings of another list beside this one, which were not read. */
    List<OwnListHeader.Heading> beside() {
        return beside;
    }

    /**
     * In a list without a name of the product, the last kind of compound before its weight of which nothing is charged names it: {@code Acid,
     * Amount, Alcohol, Amount, Ester, Isolated}.
     */
    private void takePartnerForProduct() {
        List<Map.Entry<OwnListHeader.Heading, HeadingSense>> products = understood.entrySet().stream()
                .filter(entry -> PRODUCTS.contains(entry.getValue().subject()))
                .toList();
        boolean described = products.stream()
                .map(Map.Entry::getValue)
                .anyMatch(sense -> !sense.called().isEmpty()
                        || List.of("", "name", "formula", "molar mass").contains(sense.quantity()));
        if (described || products.isEmpty()) {
            return;
        }
        int first = products.get(0).getKey().column();
        HeadingSense before = null;
        for (Map.Entry<OwnListHeader.Heading, HeadingSense> entry : understood.entrySet()) {
            if (entry.getKey().column() < first
                    && MATERIALS.contains(entry.getValue().subject())) {
                before = entry.getValue();
            }
        }
        if (before == null || !PARTNERS.contains(before.subject()) || isCharged(before)) {
            return;
        }
        HeadingSense named = before;
        boolean another = understood.values().stream()
                .anyMatch(sense -> MATERIALS.contains(sense.subject()) && !sense.isAbout(named) && isCharged(sense));
        if (another) {
            partnerForProduct = Optional.of(named.subject());
            HeadingSense product = products.get(0).getValue().withSubject("product", 1);
            understood.replaceAll((heading, sense) -> sense.isAbout(named) ? sense.ofThatOf(product) : sense);
        }
    }

    private boolean isCharged(HeadingSense whose) {
        return Stream.concat(
                        understood.values().stream(), open.values().stream().flatMap(List::stream))
                .anyMatch(sense -> sense.isAbout(whose)
                        && List.of("mass", "volume", "amount", "equivalents").contains(sense.quantity()));
    }

    /** The kind of compound that was taken for the product. */
    Optional<String> partnerForProduct() {
        return partnerForProduct;
    }

    /** Understands one heading; returns the sense that says whom the headings right of it are about. */
    private HeadingSense read(OwnListHeader.Heading heading, HeadingSense last) {
        List<HeadingSense> senses = cells.fitting(heading, words.senses(heading.text())).stream()
                .filter(sense -> isPossible(heading, sense))
                .map(sense -> subjects.apart(heading, sense))
                .toList();
        if (senses.isEmpty()) {
            unknown.add(heading);
            between = between.or(() -> Optional.of(heading));
            return last;
        }
        List<HeadingSense> placed = cells.settledByUnits(
                heading,
                senses.stream()
                        .map(sense -> placed(heading, sense, last))
                        .filter(OwnListReading::hasPlace)
                        .distinct()
                        .toList());
        boolean onlyByPlace = senses.stream().allMatch(s -> s.subject().isEmpty());
        if (onlyByPlace && between.isPresent() && !placed.isEmpty()) {
            behind.put(heading, between.get());
            open.put(heading, placed);
            return last;
        }
        if (placed.size() != 1 || isTaken(placed.get(0)) || subjects.isContested(heading, placed.get(0))) {
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
        if (sense.subject().equals(NamedInHeading.WORKUP) && between.isEmpty()) {
            // what follows may be its volume as well as that of the material before it
            between = Optional.of(heading);
        }
        if (!MATERIALS.contains(sense.subject()) && !PRODUCTS.contains(sense.subject())) {
            return last;
        }
        if (!onlyByPlace) {
            between = Optional.empty();
        }
        return sense;
    }

    /** A sense without a subject is about what was named last to its left; a letter behind it says which one of these. */
    private HeadingSense placed(OwnListHeader.Heading heading, HeadingSense sense, HeadingSense last) {
        if (!sense.subject().isEmpty() || last.subject().isEmpty()) {
            return sense;
        }
        Matcher letter = LETTER.matcher(heading.text());
        if (!letter.find()) {
            return sense.ofThatOf(last);
        }
        int which = letter.group(1).charAt(0) - 'A' + 1;
        return understood.values().stream()
                .filter(other -> other.subject().equals(last.subject()) && other.number() == which)
                .findFirst()
                .map(sense::ofThatOf)
                .orElse(sense);
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
        return cells.numbers(heading).stream().noneMatch(n -> n.value().doubleValue() > MOST_MOLAR);
    }

    /** True where a number without a unit of its own stands below a heading without one. */
    boolean lacksUnit(OwnListHeader.Heading heading, HeadingSense sense) {
        return cells.lackUnit(heading, sense);
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
