package workuptally.material;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import workuptally.chemistry.Formula;
import workuptally.reference.substances.MaterialClass;
import workuptally.reference.substances.Metal;

/** Finds heavy metals by element: in a formula, in the words of a name, or in the symbol with which a written formula begins. */
final class HeavyMetals {
    private static final int SHORTEST_IN_COMPOUND = 5;

    private final List<Metal> metals;

    HeavyMetals(List<Metal> metals) {
        this.metals = metals.stream()
                .filter(metal -> metal.classes().contains(MaterialClass.HEAVY_METAL))
                .toList();
    }

    /** The metals of a formula. */
    Set<String> in(Optional<Formula> formula) {
        Set<String> symbols = new LinkedHashSet<>();
        formula.ifPresent(f -> metals.stream()
                .filter(metal -> f.count(metal.element()) > 0)
                .map(Metal::element)
                .forEach(symbols::add));
        return symbols;
    }

    /** The metals that a name tells. */
    Set<String> in(String name) {
        Set<String> symbols = new LinkedHashSet<>();
        String plain = name.toLowerCase(Locale.ROOT);
        for (Metal metal : metals) {
            boolean told = metal.words().stream().anyMatch(word -> stands(word.toLowerCase(Locale.ROOT), plain))
                    || standsAsSymbol(metal.element(), name);
            if (told) {
                symbols.add(metal.element());
            }
        }
        return symbols;
    }

    /** A word of its own, or with five letters and more the beginning or the end of a longer one, {@code Kupfersulfat}. */
    private static boolean stands(String word, String name) {
        for (int at = name.indexOf(word); at >= 0; at = name.indexOf(word, at + 1)) {
            int end = at + word.length();
            boolean begins = at == 0 || !Character.isLetter(name.charAt(at - 1));
            boolean ends = end == name.length() || !Character.isLetter(name.charAt(end));
            if (begins && ends || word.length() >= SHORTEST_IN_COMPOUND && (begins || ends)) {
                return true;
            }
        }
        return false;
    }

    /** A symbol before a figure, a bracket or another symbol, {@code Pd2(dba)3} or {@code [Rh(nbd)2]BF4}. */
    private static boolean standsAsSymbol(String symbol, String name) {
        if (symbol.length() < 2) {
            return false;
        }
        for (int at = name.indexOf(symbol); at >= 0; at = name.indexOf(symbol, at + 1)) {
            boolean begins = at == 0 || " [(".indexOf(name.charAt(at - 1)) >= 0;
            if (begins && isFollowedAsSymbol(name, at + symbol.length())) {
                return true;
            }
        }
        return false;
    }

    private static boolean isFollowedAsSymbol(String name, int index) {
        if (index >= name.length()) {
            return true;
        }
        char next = name.charAt(index);
        boolean joined = next == '-' && index + 1 < name.length() && Character.isUpperCase(name.charAt(index + 1));
        return joined || "([/0123456789".indexOf(next) >= 0 || Character.isUpperCase(next);
    }
}
