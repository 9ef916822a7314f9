package workuptally.material;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;
import workuptally.chemistry.Formula;
import workuptally.reference.Reference;
import workuptally.reference.solutions.Wash;

/**
 * Reads what people write for a material: {@code 2.5 M n-BuLi in hexanes}, {@code ges. NaHCO3}, {@code hexane/EtOAc 4:1}, {@code Pd/C},
 * {@code CuSO4·5H2O}.
 *
 * <p>A name is read once; asked again, the same answer comes back. Safe for use by several threads.
 */
public final class MaterialReader {
    private static final int MOST_ANSWERS = 20_000;
    private static final int LONGEST_NAME = 160;
    private static final Pattern SPACES = Pattern.compile("[\\s\\u00A0]+");
    private static final Pattern MIDDLE_DOT = Pattern.compile("\\s*[\u00B7\u2022\u2219\u22C5\u2027*]\\s*");
    private static final Pattern TIMES_WATER = Pattern.compile("\\s+x\\s+(?=\\d{0,2}(?:[.,]\\d)?\\s*H2O\\b)");
    private static final Pattern WATERS = Pattern.compile("(?<=\\.)(\\d{1,2}(?:[.,]\\d)?)\\s+(?=H2O\\b)");
    private static final Pattern DASHES = Pattern.compile("[\u2010\u2011\u2012\u2212]");

    private final Reference reference;
    private final SubstanceIndex index;
    private final NameReading reading;
    private final NearestNames nearest;
    private final Map<String, Material> answers = new ConcurrentHashMap<>();

    /** Over the reference data in force; that over the packed tables is made once. */
    public static MaterialReader of(Reference reference) {
        return reference.isPacked() ? Packed.READER : new MaterialReader(reference);
    }

    /** How wet a solid is that is sold with water on it, behind its name: {@code 10 % Pd/C, 50 % wet}. */
    private static final Pattern WETNESS = Pattern.compile(
            "(?iu)[, ]+(?:ca\\.? ?|~ ?)?\\d[\\d.]* ?% ?(?:water[- ])?(?:wet|moist|damp|feucht|wasserfeucht|humide)$");

    /** Over the tables packed with the program; made at the first call. */
    public static MaterialReader packed() {
        return Packed.READER;
    }

    private static final class Packed {
        static final MaterialReader READER = new MaterialReader(Reference.load());
    }

    private MaterialReader(Reference reference) {
        this.reference = reference;
        this.index = new SubstanceIndex(reference);
        this.reading = new NameReading(reference, index);
        this.nearest = new NearestNames(index);
    }

    /** True where a note beside a name, such as what stands on a bottle, says that the material was used before. */
    public boolean saysRecovered(String note) {
        return reading.saysRecovered(note);
    }

    /** What a name means. */
    public Material read(String written) {
        return read(written, Optional.empty());
    }

    /**
     * What a name means.
     *
     * @param written text of the cell; a blank one is unlisted
     * @param given formula that the user gave beside it: it tells shared names apart, and gives a name that no table has its mass
     */
    public Material read(String written, Optional<Formula> given) {
        String key = given.isPresent() ? written + '\u0000' + given.get() : written;
        Material before = answers.get(key);
        if (before != null) {
            return before;
        }
        Material material = understood(written, given);
        if (written.length() <= LONGEST_NAME && answers.size() < MOST_ANSWERS) {
            answers.put(key, material);
        }
        return material;
    }

    /** Listed names that a name which no table has may be meant for, at most three; a suggestion, never a reading. */
    public List<String> nearest(String written) {
        return nearest.of(tidy(written));
    }

    private Material understood(String written, Optional<Formula> given) {
        String text = WETNESS.matcher(tidy(written)).replaceFirst("");
        if (text.isEmpty() || text.length() > LONGEST_NAME) {
            return material(written, reading.unlisted(text, given));
        }
        if (text.indexOf(';') > 0) {
            return ofList(written, text);
        }
        return material(written, reading.read(text, given).orElseGet(() -> reading.unlisted(text, given)));
    }

    /** Several materials, one after the other: the contents of a container, a composition. */
    private Material ofList(String written, String text) {
        List<Part> parts = new ArrayList<>();
        for (String each : text.split(";")) {
            String name = each.strip();
            if (!name.isEmpty()) {
                parts.addAll(reading.readShare(name)
                        .orElseGet(() -> reading.unlisted(name, Optional.empty()))
                        .parts());
            }
        }
        return parts.isEmpty()
                ? material(written, reading.unlisted(text, Optional.empty()))
                : new Material(written, parts, Optional.empty(), false);
    }

    private Material material(String written, Parsed parsed) {
        Part main = parsed.parts().get(0);
        Optional<Wash> wash = main.solution();
        if (wash.isEmpty() && parsed.parts().size() == 1 && main.choices().isEmpty()) {
            wash = reference
                    .solutions()
                    .named(main.substance().filter(Substance::isWater).isPresent() ? main.name() : main.written());
        }
        return new Material(written, parsed.parts(), wash, parsed.recovered());
    }

    /** One spelling of spaces, dashes, subscripts and the dot of hydrates. */
    static String tidy(String written) {
        String text = Normalizer.normalize(written, Normalizer.Form.NFKC);
        text = SPACES.matcher(text).replaceAll(" ").strip();
        text = DASHES.matcher(text).replaceAll("-");
        text = MIDDLE_DOT.matcher(text).replaceAll(".");
        text = TIMES_WATER.matcher(text).replaceAll(".");
        return WATERS.matcher(text).replaceAll("$1");
    }
}
