package workuptally.book.lists;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import workuptally.book.words.Quantity;
import workuptally.book.words.Unit;
import workuptally.material.Material;
import workuptally.material.MaterialReader;
import workuptally.material.State;

/**
 * Headings that name a material with a unit: {@code HATU (eq)}, {@code m (DIPEA) / mg}, {@code dibenzalacetone crude (g)}. Only a material
 * that the reference tables know is put into the reaction; a word for a stage of the product names the product, whatever it is called.
 */
final class NamedInHeading {
    /** Whom a material serves that is usually met after the reaction; the heading is asked about. */
    static final String WORKUP = "workup";

    private static final int SHORTEST_NAME_OF_A_PRODUCT = 6;

    /** Ends of names of compounds; a flask, a vial or a paper beside "crude" has none of them (common practice). */
    private static final String ENDS_LIKE_A_COMPOUND =
            "(?i).*(?:one|ene|ane|yne|ol|al|ine|in|ate|at|ide|ite|amide|amid|acid|s\u00e4ure|ether|ester|nitrile|nitril|aldehyde?|keton"
                    + "|phenyl|oxime?|benzene|benzol|on|en|an|yl|id)";

    private static final MaterialReader MATERIALS = MaterialReader.packed();

    private final Function<String, List<HeadingSense>> words;

    /**
     * Over what words of headings mean.
     *
     * @param words the senses of a text without a unit
     */
    NamedInHeading(Function<String, List<HeadingSense>> words) {
        this.words = words;
    }

    /** The senses of a heading whose words are not all known; none where it names no material. */
    List<HeadingSense> senses(String rest, Unit unit) {
        if (!isOfMaterials(unit.quantity())) {
            return List.of();
        }
        String text = rest.replaceAll("(?<=\\S)\\((.+)\\)$", " ($1)").strip();
        String[] parts = text.split("\\s+");
        HeadingSense bare = new HeadingSense("", 1, "", Optional.of(unit));
        List<HeadingSense> whole = material(text, bare);
        for (int i = 1; whole.isEmpty() && i < parts.length; i++) {
            String left = joined(parts, 0, i);
            String right = joined(parts, i, parts.length);
            whole = with(left, right, bare);
            if (whole.isEmpty()) {
                whole = with(right, left, bare);
            }
        }
        return whole;
    }

    private static boolean isOfMaterials(Quantity quantity) {
        return switch (quantity) {
            case MASS, VOLUME, AMOUNT, EQUIVALENTS, MOLAR_MASS -> true;
            default -> false;
        };
    }

    private static String joined(String[] parts, int from, int to) {
        return String.join(" ", List.of(parts).subList(from, to));
    }

    /** A word that is known beside a name. */
    private List<HeadingSense> with(String known, String name, HeadingSense bare) {
        String called = withoutBrackets(name);
        List<HeadingSense> all = new ArrayList<>();
        for (HeadingSense sense : words.apply(known)) {
            boolean stage = OwnListReading.PRODUCTS.contains(sense.subject());
            if (stage && isCompound(called)) {
                all.add(new HeadingSense(sense.subject(), sense.number(), sense.quantity(), bare.unit(), called));
            } else if (sense.subject().isEmpty() && !sense.quantity().isEmpty()) {
                material(called, bare.withQuantity(sense.quantity())).forEach(all::add);
            }
        }
        return all;
    }

    private static String withoutBrackets(String name) {
        return name.startsWith("(") && name.endsWith(")") ? name.substring(1, name.length() - 1) : name;
    }

    private static boolean isCompound(String name) {
        boolean looksLikeOne = name.length() >= SHORTEST_NAME_OF_A_PRODUCT && name.matches(ENDS_LIKE_A_COMPOUND);
        return looksLikeOne || MATERIALS.read(name).state() == State.LISTED;
    }

    private static List<HeadingSense> material(String name, HeadingSense bare) {
        Material material = MATERIALS.read(name);
        if (material.state() != State.LISTED || material.isAmbiguous()) {
            return List.of();
        }
        // amines that dissolve others are charged as bases
        boolean solvent = material.solvent().isPresent()
                && !material.is("amine")
                && bare.unit().filter(u -> u.quantity() == Quantity.VOLUME).isPresent();
        HeadingSense charge =
                bare.withSubject(solvent ? "solvent" : "reagent", 1).called(name);
        boolean workup =
                material.dryingAgent().isPresent() || name.matches("(?i).*(?:brine|saumure|^(?:sat|ges)\\b.*)");
        return workup ? List.of(charge, bare.withSubject(WORKUP, 1)) : List.of(charge);
    }
}
