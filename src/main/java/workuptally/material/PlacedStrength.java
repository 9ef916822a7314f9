package workuptally.material;

import java.util.Locale;
import java.util.Optional;
import workuptally.material.Strength.Kind;

/**
 * A strength with its place in a text.
 *
 * @param strength what it says
 * @param from index of its first character
 * @param to index behind its last one
 */
record PlacedStrength(Strength strength, int from, int to) {
    private static final int MOST_DIGITS = 9;

    /** Unit spellings, the longer ones first; per cent without a word is by mass until what it is of says otherwise. */
    private enum Unit {
        VOLUME("% (v/v)|% v/v|%v/v|vol.-%|vol-%|vol%|vol.%|vol. %|vol %|% by volume", Kind.VOLUME_PERCENT),
        MASS_PER_VOLUME("% (w/v)|% w/v|%w/v|% m/v", Kind.GRAMS_PER_100_MILLILITRES),
        MASS(
                "% (w/w)|% w/w|%w/w|% (m/m)|% m/m|wt.-%|wt-%|wt.%|wt. %|wt%|wt %|w/w%|w/w %|mass%|mass %|m/m%|gew.-%|gew-%|gew.%|gew. %|gew%"
                        + "|gew %|ma%|% by mass|% by weight|%ige|-%ige|%iger|%iges|%igen|%ig|%",
                Kind.MASS_PERCENT),
        MOLAR("mol/l|mol l-1|mol.l-1|mol/dm3|molar", Kind.MOLES_PER_LITRE);

        private final String[] spellings;
        private final Kind kind;

        Unit(String spellings, Kind kind) {
            this.spellings = spellings.split("\\|");
            this.kind = kind;
        }
    }

    /** A strength that a text begins with. */
    static Optional<PlacedStrength> leading(String text) {
        int at = number(text, 0);
        return at == 0 ? Optional.empty() : withUnit(text, 0, at).filter(f -> isFollowed(text, f));
    }

    /** A strength that a text ends with. */
    static Optional<PlacedStrength> trailing(String text) {
        for (int from = text.length() - 1; from >= 0; from--) {
            boolean begins = isDigit(text, from) && (from == 0 || !continuesNumber(text, from - 1));
            if (begins && (from == 0 || isBoundary(text.charAt(from - 1)))) {
                int at = number(text, from);
                Optional<PlacedStrength> figure = withUnit(text, from, at).filter(f -> f.to() == text.length());
                if (figure.isPresent()) {
                    return figure;
                }
            }
        }
        return Optional.empty();
    }

    private static boolean continuesNumber(String text, int index) {
        char c = text.charAt(index);
        return isDigit(text, index)
                || c == '.'
                || c == '-' && index > 0 && isDigit(text, index - 1)
                || c == ',' && index > 0 && isDigit(text, index - 1);
    }

    private static boolean isBoundary(char c) {
        return c == ' ' || c == ',' || c == '(' || c == '~' || c == '<' || c == '>' || c == '\u2264';
    }

    private static boolean isFollowed(String text, PlacedStrength figure) {
        if (figure.to() >= text.length()) {
            return false;
        }
        char next = text.charAt(figure.to());
        boolean percent = text.substring(figure.from(), figure.to()).indexOf('%') >= 0;
        return next == ' ' || next == '(' || next == ',' || percent && Character.isLetterOrDigit(next);
    }

    /** Index behind a number with at most one decimal mark. */
    private static int number(String text, int from) {
        int at = from;
        boolean marked = false;
        while (at < text.length() && at - from < MOST_DIGITS) {
            boolean mark = at > from && (text.charAt(at) == '.' || text.charAt(at) == ',') && isDigit(text, at + 1);
            if (!isDigit(text, at) && (!mark || marked)) {
                break;
            }
            marked |= mark;
            at++;
        }
        return at;
    }

    private static boolean isDigit(String text, int index) {
        return index < text.length() && text.charAt(index) >= '0' && text.charAt(index) <= '9';
    }

    private static Optional<PlacedStrength> withUnit(String text, int from, int behindNumber) {
        int at = behindNumber;
        double value = value(text.substring(from, at));
        if (at < text.length() - 1 && text.charAt(at) == '-' && isDigit(text, at + 1)) {
            // A range stands for its middle: goods of 70-75 %.
            int to = number(text, at + 1);
            value = (value + value(text.substring(at + 1, to))) / 2;
            at = to;
        }
        int behind = at;
        if (at < text.length() && text.charAt(at) == ' ') {
            at++;
        }
        String rest = text.substring(at, Math.min(text.length(), at + 14));
        String plain = rest.toLowerCase(Locale.ROOT);
        for (Unit unit : Unit.values()) {
            for (String spelling : unit.spellings) {
                if (plain.startsWith(spelling)) {
                    return Optional.of(new PlacedStrength(Strength.of(unit.kind, value), from, at + spelling.length()));
                }
            }
        }
        return value > 0 ? ofLetters(rest, value, from, at, at > behind) : Optional.empty();
    }

    private static Optional<PlacedStrength> ofLetters(String rest, double value, int from, int at, boolean spaced) {
        if (rest.startsWith("mM")) {
            return Optional.of(new PlacedStrength(Strength.of(Kind.MOLES_PER_LITRE, value / 1000), from, at + 2));
        }
        boolean alone = rest.length() == 1 || rest.length() > 1 && " (,)".indexOf(rest.charAt(1)) >= 0;
        if (!alone) {
            return Optional.empty();
        }
        return switch (rest.charAt(0)) {
            case 'M' -> Optional.of(new PlacedStrength(Strength.of(Kind.MOLES_PER_LITRE, value), from, at + 1));
            case 'N' -> Optional.of(new PlacedStrength(Strength.of(Kind.EQUIVALENTS_PER_LITRE, value), from, at + 1));
            // A small n is how normal solutions are written in German; a small m is metre, milli and molal, and left
            // alone.
            case 'n' ->
                spaced && rest.length() > 1
                        ? Optional.of(new PlacedStrength(Strength.of(Kind.EQUIVALENTS_PER_LITRE, value), from, at + 1))
                        : Optional.empty();
            default -> Optional.empty();
        };
    }

    static double value(String number) {
        return Double.parseDouble(number.replace(',', '.'));
    }
}
