package workuptally.report.json;

import java.util.Locale;

/** The word of a constant that has no wording of its own: {@code IN_WORKUP} is {@code in workup}. */
final class EnumWord {
    private EnumWord() {}

    static String of(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
