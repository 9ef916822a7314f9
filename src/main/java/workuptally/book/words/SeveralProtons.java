package workuptally.book.words;

import java.util.regex.Pattern;

/** Acids, bases and salts of which a mole is more than one equivalent (common practice), so that {@code 2 N} is not 2 M. */
public final class SeveralProtons {
    private static final Pattern NAMES = Pattern.compile(
            "H2SO4|H3PO4|sul(?:f|ph)uric|phosphoric|Schwefels|Phosphors|oxalic|citric|tartaric|maleic|malonic|succinic|CO3|carbonate"
                    + "|\\(OH\\)2|SO3|S2O|Cr2O7|MnO4|H2C2O4",
            Pattern.CASE_INSENSITIVE);

    private SeveralProtons() {}

    /** True where a name or formula holds one of them. */
    public static boolean named(String nameOrFormula) {
        return NAMES.matcher(nameOrFormula).find();
    }
}
