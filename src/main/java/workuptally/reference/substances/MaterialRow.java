package workuptally.reference.substances;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import workuptally.reference.hazards.Hazard;
import workuptally.reference.hazards.ReactivityGroup;
import workuptally.reference.tables.Basis;
import workuptally.reference.tables.Cited;
import workuptally.reference.tables.IllegalReferenceException;
import workuptally.reference.tables.ReferenceCells;

/**
 * A material of the bench by the names people type, with what it is and does.
 *
 * @param key key of the row
 * @param names what it is called
 * @param hazards key of its {@link Hazard}
 * @param behaviour what it does at the bench
 * @param usualForm form in which it is usually sold
 * @param rememberedStatements hazard statements from memory, harmonised and suppliers' ones mixed; empty where {@code hazards} is there
 * @param note remark
 * @param sources keys of the bibliography
 * @param basis how firmly the row is known: the weakest of its parts
 */
public record MaterialRow(
        String key,
        Names names,
        Optional<String> hazards,
        Behaviour behaviour,
        Optional<UsualForm> usualForm,
        List<String> rememberedStatements,
        Optional<String> note,
        List<String> sources,
        Basis basis)
        implements Cited {
    /** Copies the lists. */
    public MaterialRow {
        rememberedStatements = List.copyOf(rememberedStatements);
        sources = List.copyOf(sources);
    }

    /**
     * What a material is called.
     *
     * @param name what is printed
     * @param aliases other names and formulas, trade names among them: for reading, never for printing
     * @param sharedAliases names that mean other rows too; letter case may tell them apart
     * @param cas registry number
     * @param formula formula of the pure material
     */
    public record Names(
            String name,
            List<String> aliases,
            List<String> sharedAliases,
            Optional<String> cas,
            Optional<String> formula) {
        /** Copies the lists. */
        public Names {
            aliases = List.copyOf(aliases);
            sharedAliases = List.copyOf(sharedAliases);
        }

        private static Names of(ReferenceCells row) throws IllegalReferenceException {
            return new Names(
                    row.text("name"),
                    row.list("aliases"),
                    row.list("shared aliases"),
                    row.optionalText("cas"),
                    row.optionalText("formula"));
        }
    }

    /**
     * What a material does at the bench.
     *
     * @param classes its own {@link ReactivityGroup}s, at least one
     * @param parentClasses coarser classes of this row beside the parents of its own ones
     * @param destroyedByWater whether water in excess leaves nothing of what makes it reactive
     * @param quenchTest the test that shows it gone
     * @param persistent whether it follows the layers until it is destroyed
     * @param heavyMetals symbols of the heavy metals in it
     * @param acidMolesPerMole protons given to strong base, mol/mol, after full hydrolysis
     * @param baseMolesPerMole protons taken from strong acid, mol/mol, after full hydrolysis
     * @param gases what can come free
     */
    public record Behaviour(
            List<String> classes,
            List<String> parentClasses,
            boolean destroyedByWater,
            Optional<String> quenchTest,
            boolean persistent,
            List<String> heavyMetals,
            OptionalDouble acidMolesPerMole,
            OptionalDouble baseMolesPerMole,
            List<Gas> gases) {
        /** Copies the lists. */
        public Behaviour {
            classes = List.copyOf(classes);
            parentClasses = List.copyOf(parentClasses);
            heavyMetals = List.copyOf(heavyMetals);
            gases = List.copyOf(gases);
        }

        private static Behaviour of(ReferenceCells row) throws IllegalReferenceException {
            List<String> classes = row.list("classes");
            if (classes.isEmpty()) {
                throw row.wrong("classes", row.raw("classes"), "at least one key of reactivity-groups.csv");
            }
            return new Behaviour(
                    classes,
                    row.list("parent classes"),
                    row.yes("destroyed by water"),
                    row.optionalText("quench test"),
                    row.yes("persistent"),
                    row.list("heavy metal"),
                    row.optionalNumber("acid (mol/mol)", 0, 20),
                    row.optionalNumber("base (mol/mol)", 0, 20),
                    Gas.all(row));
        }
    }

    static MaterialRow of(ReferenceCells row) throws IllegalReferenceException {
        return new MaterialRow(
                row.text("key"),
                Names.of(row),
                row.optionalText("hazards"),
                Behaviour.of(row),
                row.optionalText("usual form").map(UsualForm::of),
                row.list("h-statements (memory)"),
                row.optionalText("note"),
                row.sources("source"),
                row.basis("basis"));
    }

    @Override
    public String table() {
        return "materials";
    }

    /**
     * A gas that a material can set free.
     *
     * @param name formula or name, for example {@code H2} or {@code methane}
     * @param molesPerMole mol per mol of material; absent where it depends
     * @param with what sets it free, for example {@code acid}; absent = water
     */
    public record Gas(String name, OptionalDouble molesPerMole, Optional<String> with) {
        private static final String COLUMN = "gas with water (mol/mol)";
        private static final Pattern FORM =
                Pattern.compile("(\\S[^()]*?)(?: (\\d{1,2}(?:\\.\\d{1,3})?))?(?: \\(([^()]+)\\))?");

        static List<Gas> all(ReferenceCells row) throws IllegalReferenceException {
            List<Gas> gases = new ArrayList<>();
            for (String cell : row.list(COLUMN)) {
                gases.add(of(row, cell));
            }
            return List.copyOf(gases);
        }

        private static Gas of(ReferenceCells row, String cell) throws IllegalReferenceException {
            Matcher parts = FORM.matcher(cell);
            if (!parts.matches()) {
                throw row.wrong(COLUMN, cell, "a gas, its amount, and in brackets what sets it free: CO2 1 (acid)");
            }
            return new Gas(
                    parts.group(1),
                    parts.group(2) == null
                            ? OptionalDouble.empty()
                            : OptionalDouble.of(Double.parseDouble(parts.group(2))),
                    Optional.ofNullable(parts.group(3)));
        }
    }
}
