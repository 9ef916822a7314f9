package workuptally.reference.solutions;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import workuptally.reference.tables.Basis;
import workuptally.reference.tables.Cited;
import workuptally.reference.tables.IllegalReferenceException;
import workuptally.reference.tables.KnownTable;
import workuptally.reference.tables.NamedTable;
import workuptally.reference.tables.ReferenceCells;
import workuptally.reference.tables.TableFile;

/**
 * Partition of one compound between an organic phase and water.
 *
 * @param compound full name
 * @param cas registry number
 * @param formula formula
 * @param molarMassGramsPerMole g/mol
 * @param organicPhase name of the organic solvent
 * @param logP log10 of c(organic)/c(water) of the unionised form
 * @param temperatureCelsius °C
 * @param character what ionises
 * @param pKa in water at 25 °C, of the conjugate acid for a base; empty for a neutral
 * @param note remark
 * @param sources keys of the bibliography
 * @param basis how firmly the row is known: the weakest of its parts
 */
public record PartitionRow(
        String compound,
        String cas,
        String formula,
        double molarMassGramsPerMole,
        String organicPhase,
        double logP,
        double temperatureCelsius,
        Character character,
        List<Double> pKa,
        Optional<String> note,
        List<String> sources,
        Basis basis)
        implements Cited {
    /** Copies the lists. */
    public PartitionRow {
        pKa = List.copyOf(pKa);
        sources = List.copyOf(sources);
    }

    /**
     * Reads them all: found by name or CAS number of the compound, which has a row for each solvent.
     *
     * @throws IllegalReferenceException if a value is malformed or out of range
     */
    public static NamedTable<PartitionRow> all(Map<KnownTable, TableFile> files) throws IllegalReferenceException {
        return NamedTable.spelledFreely(files.get(KnownTable.PARTITION).each(PartitionRow::of))
                .by(PartitionRow::compound)
                .by(PartitionRow::cas);
    }

    private static PartitionRow of(ReferenceCells row) throws IllegalReferenceException {
        return new PartitionRow(
                row.text("compound"),
                row.text("cas"),
                row.text("formula"),
                row.number("molar mass (g/mol)", 1, 2000),
                row.text("organic phase"),
                row.number("log P", -10, 15),
                row.number("temperature (C)", -20, 100),
                Character.of(row),
                pKaOf(row),
                row.optionalText("note"),
                row.sources("source"),
                row.basis("basis"));
    }

    @Override
    public String table() {
        return "partition";
    }

    @Override
    public String key() {
        return compound + " | " + organicPhase + " | " + logP;
    }

    /** P = c(organic)/c(water) of the unionised form, dimensionless. */
    public double partitionRatio() {
        return Math.pow(10, logP);
    }

    private static List<Double> pKaOf(ReferenceCells row) throws IllegalReferenceException {
        List<Double> values = new ArrayList<>();
        for (String part : row.list("pKa")) {
            try {
                values.add(Double.valueOf(part));
            } catch (NumberFormatException e) {
                throw row.wrong("pKa", part, "numbers joined by ;");
            }
        }
        return values;
    }

    /** What ionises. */
    public enum Character {
        /** Nothing in the usual pH range. */
        NEUTRAL,
        /** Gives a proton to base. */
        ACID,
        /** Takes a proton from acid. */
        BASE,
        /** Both. */
        AMPHOLYTE;

        static Character of(ReferenceCells row) throws IllegalReferenceException {
            String cell = row.text("character");
            return switch (cell) {
                case "neutral" -> NEUTRAL;
                case "acid" -> ACID;
                case "base" -> BASE;
                case "ampholyte" -> AMPHOLYTE;
                default -> throw row.wrong("character", cell, "neutral, acid, base or ampholyte");
            };
        }
    }
}
