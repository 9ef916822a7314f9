package workuptally.material;

import java.util.stream.Collectors;

/** Puts what a material means into one line, for tables of expected readings. */
final class Meaning {
    private Meaning() {}

    /** The parts with strength and form; a carrier behind "in". */
    static String of(Material material) {
        String parts = material.parts().stream()
                .filter(part -> !part.carrier())
                .map(Meaning::of)
                .collect(Collectors.joining(" + "));
        String carriers =
                material.parts().stream().filter(Part::carrier).map(Part::name).collect(Collectors.joining(" + "));
        return parts + (carriers.isEmpty() ? "" : " in " + carriers);
    }

    private static String of(Part part) {
        StringBuilder text = new StringBuilder(part.name());
        part.form()
                .ifPresent(form -> text.append(" <")
                        .append(form.kind().name().toLowerCase(java.util.Locale.ROOT))
                        .append(' ')
                        .append(form.of())
                        .append('>'));
        part.strength()
                .ifPresent(
                        strength -> text.append(" [").append(inWords(strength)).append(']'));
        part.volumeFraction().ifPresent(share -> text.append(' ').append(Math.round(share * 1000) / 1000.0));
        return text.toString();
    }

    private static String inWords(Strength strength) {
        String value = strength.value().isEmpty() ? "" : plain(strength.value().getAsDouble()) + " ";
        return value
                + switch (strength.kind()) {
                    case MASS_PERCENT -> "%";
                    case VOLUME_PERCENT -> "% v/v";
                    case GRAMS_PER_100_MILLILITRES -> "g/100 mL";
                    case MOLES_PER_LITRE -> "M";
                    case EQUIVALENTS_PER_LITRE -> "N";
                    case SATURATED -> "saturated";
                    case HALF_SATURATED -> "half-saturated";
                    case CONCENTRATED -> "concentrated";
                    case DILUTE -> "dilute";
                };
    }

    private static String plain(double value) {
        return value == Math.rint(value) ? Long.toString((long) value) : Double.toString(value);
    }
}
