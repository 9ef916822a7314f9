package workuptally.reference.hazards;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import workuptally.reference.tables.Basis;
import workuptally.reference.tables.Cited;
import workuptally.reference.tables.IllegalReferenceException;
import workuptally.reference.tables.ReferenceCells;

/**
 * What happens where two classes of material meet.
 *
 * @param classA a {@link ReactivityGroup}
 * @param classB another; their order means nothing
 * @param thirdClass a class that has to be there as well
 * @param consequence what happens
 * @param gases formulas or names of the gas set free
 * @param severity how grave
 * @param inWorkup whether they may meet in a workup
 * @param where places the row speaks of: funnel (flask and funnel), waste (container), concentration, reaction
 * @param note remark
 * @param sources keys of the bibliography
 * @param basis how firmly the row is known
 */
public record ReactivityPair(
        String classA,
        String classB,
        Optional<String> thirdClass,
        String consequence,
        List<String> gases,
        Severity severity,
        InWorkup inWorkup,
        List<String> where,
        Optional<String> note,
        List<String> sources,
        Basis basis)
        implements Cited {
    /** Copies the lists. */
    public ReactivityPair {
        gases = List.copyOf(gases);
        where = List.copyOf(where);
        sources = List.copyOf(sources);
    }

    static ReactivityPair of(ReferenceCells row) throws IllegalReferenceException {
        List<String> where = row.list("where");
        if (where.isEmpty() || !List.of(FUNNEL, WASTE, CONCENTRATION, REACTION).containsAll(where)) {
            throw row.wrong("where", row.raw("where"), "funnel, waste, concentration, reaction, joined by ;");
        }
        return new ReactivityPair(
                row.text("class a"),
                row.text("class b"),
                row.optionalText("third class"),
                row.text("consequence"),
                row.list("gas"),
                Severity.of(row),
                InWorkup.of(row),
                where,
                row.optionalText("note"),
                row.sources("source"),
                row.basis("basis"));
    }

    @Override
    public String table() {
        return "reactivity-pairs";
    }

    @Override
    public String key() {
        return classA + " | " + classB + thirdClass.map(third -> " | " + third).orElse("");
    }

    /** Whether the row is a cell of the published chart, which speaks of wide groups. */
    public boolean ofChart() {
        return classA.startsWith(CHART);
    }

    /** True where it sets a gas free, by its name or, of a reagent whose own hydrocarbon goes, as an alkane. */
    public boolean setsFree(String gas) {
        return gases.contains(gas) || gases.contains(ALKANE);
    }

    /** The first clause of what happens, for where there is little room. */
    public String danger() {
        return FIRST_CLAUSE_END.split(consequence)[0];
    }

    /** The same in a word or two, {@code explodes}: behind a colon and without what comes along. */
    public String dangerInAWord() {
        String danger = danger();
        String shorter = danger.substring(danger.lastIndexOf(": ") + 1).strip();
        return shorter.split(" and ")[0];
    }

    /** The gas set free in brackets behind a blank, without what the consequence has named; empty where nothing is left to say. */
    public String gasInBrackets() {
        List<String> words = List.of(consequence.split("[^\\p{L}\\p{N}]+"));
        List<String> left = gases.stream().filter(gas -> !words.contains(gas)).toList();
        return left.isEmpty() ? "" : " (" + String.join(", ", left) + ")";
    }

    private static final String ALKANE = "alkane";

    private static final Pattern FIRST_CLAUSE_END = Pattern.compile("[;,]");

    /** Flask and funnel. */
    public static final String FUNNEL = "funnel";

    /** A waste container. */
    public static final String WASTE = "waste";

    /** Stripping and distilling. */
    public static final String CONCENTRATION = "concentration";

    /** A known reaction that wants the pair in its flask, be one of the two its solvent or not. */
    public static final String REACTION = "reaction";

    /** How keys of the published chart begin. */
    public static final String CHART = "epa-";

    /** Whether two materials may meet in a workup. */
    public enum InWorkup {
        /** An ordinary wash or quench. */
        ORDINARY("ordinary"),
        /** Only as a step of its own, cold, slow and vented; never in a container. */
        PLANNED_QUENCH("planned quench"),
        /** Not at all. */
        NEVER("never");

        private final String word;

        InWorkup(String word) {
            this.word = word;
        }

        /** The word as the file writes it. */
        public String word() {
            return word;
        }

        static InWorkup of(ReferenceCells row) throws IllegalReferenceException {
            String cell = row.text("in workup");
            for (InWorkup value : values()) {
                if (value.word.equals(cell)) {
                    return value;
                }
            }
            throw row.wrong("in workup", cell, "never, planned quench or ordinary");
        }
    }

    /** How grave a meeting is. */
    public enum Severity {
        /** Heat, some gas, or a bookkeeping matter. */
        CAUTION,
        /** Toxic gas or strong heat. */
        HIGH,
        /** Deadly gas, fire or explosion. */
        CRITICAL;

        /** The word as the file writes it. */
        public String word() {
            return name().toLowerCase(java.util.Locale.ROOT);
        }

        static Severity of(ReferenceCells row) throws IllegalReferenceException {
            String cell = row.text("severity");
            return switch (cell) {
                case "caution" -> CAUTION;
                case "high" -> HIGH;
                case "critical" -> CRITICAL;
                default -> throw row.wrong("severity", cell, "caution, high or critical");
            };
        }
    }
}
