package workuptally.reference.solutions;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import workuptally.reference.tables.Basis;
import workuptally.reference.tables.Cited;
import workuptally.reference.tables.IllegalReferenceException;
import workuptally.reference.tables.ReferenceCells;

/**
 * Solute of washes and quenches: protons it gives or takes and gas it can set free.
 *
 * @param name full name
 * @param aliases other names and formulas
 * @param formula formula
 * @param cas registry number
 * @param molarMassGramsPerMole g/mol
 * @param acidBase protons it gives and takes
 * @param gas gas that can be set free
 * @param note remark
 * @param sources keys of the bibliography
 * @param basis how firmly the row is known: the weakest of its parts
 */
public record Solute(
        String name,
        List<String> aliases,
        String formula,
        String cas,
        double molarMassGramsPerMole,
        AcidBase acidBase,
        Optional<GasRelease> gas,
        Optional<String> note,
        List<String> sources,
        Basis basis)
        implements Cited {
    /** Copies the lists. */
    public Solute {
        aliases = List.copyOf(aliases);
        sources = List.copyOf(sources);
    }

    static Solute of(ReferenceCells row) throws IllegalReferenceException {
        return new Solute(
                row.text("name"),
                row.list("aliases"),
                row.text("formula"),
                row.text("cas"),
                row.number("molar mass (g/mol)", 1, 2000),
                AcidBase.of(row),
                GasRelease.of(row),
                row.optionalText("note"),
                row.sources("source"),
                row.basis("basis"));
    }

    @Override
    public String table() {
        return "solutes";
    }

    @Override
    public String key() {
        return name;
    }

    /**
     * Protons that a solute gives and takes.
     *
     * @param acidMolesPerMole protons given to strong base per mole
     * @param baseMolesPerMole protons taken from strong acid per mole
     * @param behaviour what it does with acid and base; empty for neither
     * @param pKa constants of the buffering acid in rising order, 25 °C, water; empty where it does not buffer
     * @param bufferingIonsPerMole buffering ions in one mole
     */
    public record AcidBase(
            double acidMolesPerMole,
            double baseMolesPerMole,
            Optional<Behaviour> behaviour,
            List<Double> pKa,
            OptionalDouble bufferingIonsPerMole) {
        /** Copies the list. */
        public AcidBase {
            pKa = List.copyOf(pKa);
        }

        static AcidBase of(ReferenceCells row) throws IllegalReferenceException {
            return new AcidBase(
                    row.number("acid (mol/mol)", 0, 10),
                    row.number("base (mol/mol)", 0, 10),
                    Behaviour.of(row),
                    row.rising("pKa", -10, 40),
                    row.optionalNumber("buffering ions (mol/mol)", 0.1, 10));
        }
    }

    /** What a solute does with acid and base. */
    public enum Behaviour {
        /** Gives its protons to every base. */
        STRONG_ACID,
        /** Gives its protons to hydrogencarbonate and stronger bases. */
        WEAK_ACID,
        /** Gives its protons to strong base only. */
        VERY_WEAK_ACID,
        /** Takes protons from every acid. */
        STRONG_BASE,
        /** Takes two protons, and gives carbon dioxide with the second. */
        CARBONATE,
        /** Takes a proton and gives carbon dioxide. */
        HYDROGENCARBONATE,
        /** Takes protons without gas, as far as its pKa reaches. */
        WEAK_BASE;

        static Optional<Behaviour> of(ReferenceCells row) throws IllegalReferenceException {
            Optional<String> word = row.oneOf(
                    "behaviour",
                    "strong acid",
                    "weak acid",
                    "very weak acid",
                    "strong base",
                    "carbonate",
                    "hydrogencarbonate",
                    "weak base");
            return word.map(w -> valueOf(w.toUpperCase(Locale.ROOT).replace(' ', '_')));
        }
    }
}
