package workuptally.model;

import java.util.Locale;

/**
 * When two names of a run mean one substance. The reading has given names of Products and Charges one spelling wherever they stand; what is
 * left differs in capitals at most. What a name means as a material is another question.
 */
public final class SubstanceName {
    private SubstanceName() {}

    /** True for names of one substance. */
    public static boolean same(String one, String other) {
        return one.equalsIgnoreCase(other);
    }

    /** What counts of a name, to find a substance by it in a map or a set. */
    public static String key(String name) {
        return name.strip().toLowerCase(Locale.ROOT);
    }
}
