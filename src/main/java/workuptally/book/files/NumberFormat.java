package workuptally.book.files;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A number format with its sections (ISO/IEC 29500-1, 18.8.31): which one a number is shown by, and how.
 *
 * @param sections sections for numbers, one to three
 * @param text what it shows of a text; empty where it has no section for one
 */
public record NumberFormat(List<FormatSection> sections, Optional<FormatSection> text) {
    private static final int MOST_FOR_NUMBERS = 3;

    /** Reads a code. */
    public static NumberFormat of(String code) {
        List<FormatSection> sections = new ArrayList<>();
        StringBuilder section = new StringBuilder();
        boolean quoted = false;
        for (int i = 0; i < code.length(); i++) {
            char c = code.charAt(i);
            quoted ^= c == '"';
            if (c == ';' && !quoted) {
                sections.add(new SectionReader(section.toString()).read());
                section.setLength(0);
            } else {
                section.append(c);
                if (!quoted && (c == '\\' || c == '_' || c == '*') && i + 1 < code.length()) {
                    section.append(code.charAt(++i));
                }
            }
        }
        sections.add(new SectionReader(section.toString()).read());
        Optional<FormatSection> text =
                sections.stream().filter(FormatSection::isOfText).findFirst();
        if (sections.size() > 1) {
            sections.removeIf(FormatSection::isOfText);
        }
        return new NumberFormat(List.copyOf(sections.subList(0, Math.min(sections.size(), MOST_FOR_NUMBERS))), text);
    }

    /** What a text is shown as, {@code <0.10} for {@code 0.10} in {@code "<"@}. */
    String show(String written) {
        return text.map(section -> section.around(written)).orElse(written);
    }

    /** The section that shows a number; none where no condition holds, so that the cell shows no number. */
    public Optional<FormatSection> section(BigDecimal value) {
        boolean conditions = sections.stream().anyMatch(s -> s.condition().isPresent());
        if (!conditions) {
            int sign = value.signum();
            int at = sections.size() == 1 || sign > 0 || sign == 0 && sections.size() == 2 ? 0 : sign < 0 ? 1 : 2;
            return Optional.of(sections.get(at));
        }
        for (int i = 0; i < sections.size(); i++) {
            Optional<FormatSection.Condition> condition = sections.get(i).condition();
            boolean last = i == sections.size() - 1 && i > 0;
            boolean applies = condition
                    .map(c -> c.holds(value))
                    .orElse(last || i == 0 && value.signum() > 0 || i == 1 && value.signum() < 0);
            if (applies) {
                return Optional.of(sections.get(i));
            }
        }
        return Optional.empty();
    }

    /** True where the format of negative numbers leaves the sign to the section. */
    public boolean hidesSign(BigDecimal value) {
        return value.signum() < 0 && sections.size() > 1;
    }

    /** The text that a number is shown as; empty where none is. */
    public Optional<String> show(BigDecimal value) {
        return section(value).map(section -> section.show(hidesSign(value) ? value.abs() : value));
    }

    /** True where every number is shown as it is, so that nothing but decimals and the kind of format counts. */
    boolean isPlain() {
        FormatSection first = sections.get(0);
        return text.filter(section -> !section.around("").isEmpty()).isEmpty()
                && sections.stream().allMatch(s -> s.condition().isEmpty() && s.showsZero())
                && first.isPlain()
                && (sections.size() < 2 || isMinusOf(sections.get(1), first))
                && (sections.size() < MOST_FOR_NUMBERS
                        || sections.get(2).isPlain() && sections.get(2).digits().equals(first.digits()));
    }

    /** A section for negative numbers that shows the sign. */
    private static boolean isMinusOf(FormatSection negative, FormatSection positive) {
        return negative.before().strip().equals("-")
                && negative.after().isBlank()
                && negative.digits().equals(positive.digits());
    }
}
