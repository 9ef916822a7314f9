package workuptally.book.files;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;

/** Takes the code of one section of a number format apart (ISO/IEC 29500-1, 18.8.31). */
final class SectionReader {
    private static final String PLACEHOLDERS = "0#?";

    private final String code;
    private final StringBuilder before = new StringBuilder();
    private final StringBuilder digits = new StringBuilder();
    private final StringBuilder after = new StringBuilder();
    private final StringBuilder letters = new StringBuilder();
    private final Set<FormatSection.Trait> traits = EnumSet.noneOf(FormatSection.Trait.class);
    private Optional<FormatSection.Condition> condition = Optional.empty();
    private int at;

    SectionReader(String code) {
        this.code = code;
    }

    FormatSection read() {
        while (at < code.length()) {
            char c = code.charAt(at);
            boolean more = at + 1 < code.length();
            if (c == '"') {
                int end = code.indexOf('"', at + 1);
                literal(code.substring(at + 1, end < 0 ? code.length() : end));
                at = end < 0 ? code.length() : end + 1;
            } else if (c == '[') {
                int end = code.indexOf(']', at);
                bracket(end < 0 ? "" : code.substring(at + 1, end).strip());
                at = end < 0 ? code.length() : end + 1;
            } else if (c == '\\' && more) {
                literal(code.substring(at + 1, at + 2));
                at += 2;
            } else if ((c == '_' || c == '*') && more) {
                at += 2; // a space as wide as the next character, or that character repeated
            } else if (code.regionMatches(true, at, "General", 0, 7)) {
                traits.add(FormatSection.Trait.GENERAL);
                at += 7;
            } else if (c == '@') {
                traits.add(FormatSection.Trait.TEXT);
                at++;
            } else if (isExponent(c)) {
                digits.append(code, at, at + 2);
                at += 2;
            } else if (isOfNumber(c)) {
                placeholder(c);
                at++;
            } else {
                if (Character.isLetter(c)) {
                    letters.append(Character.toLowerCase(c));
                }
                literal(String.valueOf(c));
                at++;
            }
        }
        if (letters.toString().matches(".*[ymdhsbge].*")) {
            traits.add(FormatSection.Trait.DATE);
        }
        return new FormatSection(condition, before.toString(), digits.toString(), after.toString(), traits);
    }

    private void literal(String text) {
        boolean shown = !digits.isEmpty()
                || traits.contains(FormatSection.Trait.GENERAL)
                || traits.contains(FormatSection.Trait.TEXT);
        (shown ? after : before).append(text);
    }

    private void bracket(String inner) {
        if (inner.matches("[hHmMsS]+")) {
            traits.add(FormatSection.Trait.DATE);
        } else if (FormatSection.condition(inner).isPresent()) {
            condition = FormatSection.condition(inner);
        } else if (inner.matches("[<>=].*")) {
            traits.add(FormatSection.Trait.UNKNOWN_CONDITION);
        } else {
            FormatSection.bracketed(inner).ifPresent(this::literal);
        }
    }

    private boolean isExponent(char c) {
        return (c == 'E' || c == 'e')
                && !digits.isEmpty()
                && at + 1 < code.length()
                && "+-".indexOf(code.charAt(at + 1)) >= 0;
    }

    /** True for a sign that belongs to the number: a placeholder, or what stands between or behind some. */
    private boolean isOfNumber(char c) {
        boolean fraction = digits.indexOf("/") >= 0;
        return PLACEHOLDERS.indexOf(c) >= 0
                || c == '.'
                || c == ','
                || c == '%'
                || c == '/' && !digits.isEmpty()
                || c >= '1' && c <= '9' && fraction && after.isEmpty()
                || c == ' ' && !digits.isEmpty() && code.substring(at).matches("[ ]+[0-9?#]+/[ 0-9?#]+.*");
    }

    private void placeholder(char c) {
        if (c != '%' && c != ',' && !after.toString().isBlank()) {
            traits.add(FormatSection.Trait.TEXT_BETWEEN_DIGITS);
        }
        digits.append(c);
    }
}
