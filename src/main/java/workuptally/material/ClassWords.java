package workuptally.material;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import workuptally.reference.substances.NameClass;

/** Tells the class of an unlisted material by the words in its name; a caution, no identity. */
final class ClassWords {
    private final List<NameClass> rows;

    ClassWords(List<NameClass> rows) {
        this.rows = rows;
    }

    /** The rows whose word stands in a name. */
    List<NameClass> in(String name) {
        String plain = name.toLowerCase(Locale.ROOT).replace("sulph", "sulf");
        List<NameClass> found = new ArrayList<>();
        for (NameClass row : rows) {
            boolean told = row.match() == NameClass.Match.FORMULA
                    ? endsFormula(row.word(), name)
                    : plain.contains(row.word()) && stands(row, plain);
            if (told) {
                found.add(row);
            }
        }
        return found;
    }

    private static boolean stands(NameClass row, String name) {
        String free = name;
        for (String longer : row.except()) {
            free = free.replace(longer.toLowerCase(Locale.ROOT), " ".repeat(longer.length()));
        }
        for (int at = free.indexOf(row.word()); at >= 0; at = free.indexOf(row.word(), at + 1)) {
            int end = at + row.word().length();
            boolean begins = at == 0 || !Character.isLetter(free.charAt(at - 1));
            boolean ends = end == free.length() || !Character.isLetter(free.charAt(end));
            boolean placed = switch (row.match()) {
                case WORD -> begins && ends;
                case ENDING -> ends;
                case START -> begins;
                case FORMULA -> false;
            };
            if (placed && isPreceded(row, free.substring(0, at))) {
                return true;
            }
        }
        return false;
    }

    /** {@code KN3} and {@code Zn(N3)2} end with N3 behind a metal; benzonitrile, {@code PhCN}, does not end so with CN. */
    private static boolean endsFormula(String ion, String name) {
        int to = name.length();
        while (to > 0 && Character.isDigit(name.charAt(to - 1)) && name.lastIndexOf(')', to) >= 0) {
            to--;
        }
        String text = name.substring(0, to);
        String bare = text.endsWith(")") ? text.substring(0, text.length() - 1) : name;
        if (!bare.endsWith(ion) || bare.length() == ion.length()) {
            return false;
        }
        String before = bare.substring(0, bare.length() - ion.length());
        String metal = before.endsWith("(") ? before.substring(0, before.length() - 1) : before;
        return SubstanceIndex.formula(metal)
                .filter(f -> !metal.isEmpty())
                .filter(SubstanceIndex::isOfMetalsAlone)
                .isPresent();
    }

    private static boolean isPreceded(NameClass row, String before) {
        if (row.before().isEmpty()) {
            return true;
        }
        int to = before.length();
        while (to > 0 && (before.charAt(to - 1) == ' ' || before.charAt(to - 1) == '-')) {
            to--;
        }
        String text = before.substring(0, to);
        // A metal may stand before the group that the word names: lithium tert-butoxide.
        return text.endsWith(row.before().get())
                || lastOfMetal(text).endsWith(row.before().get());
    }

    private static String lastOfMetal(String text) {
        int space = text.lastIndexOf(' ');
        return space > 0 ? text.substring(0, space) : text;
    }
}
