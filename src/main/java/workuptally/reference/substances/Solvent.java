package workuptally.reference.substances;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import workuptally.reference.tables.Basis;
import workuptally.reference.tables.Cited;
import workuptally.reference.tables.IllegalReferenceException;
import workuptally.reference.tables.ReferenceCells;

/**
 * Solvent with the properties a workup needs. Hazard statements are the EU harmonised ones; none listed does not mean no hazard.
 *
 * @param key key of the row
 * @param name full name
 * @param aliases other names
 * @param cas registry number
 * @param formula formula; absent for a mixture
 * @param molarMassGramsPerMole g/mol
 * @param density at 20 °C
 * @param volatility boiling point and vapour pressure
 * @param waterMixing mutual solubility with water
 * @param hazards what it can do to people and in a container
 * @param note remark
 * @param sources keys of the bibliography
 * @param basis how firmly the row is known: the weakest of its parts
 */
public record Solvent(
        String key,
        String name,
        List<String> aliases,
        Optional<String> cas,
        Optional<String> formula,
        OptionalDouble molarMassGramsPerMole,
        Density density,
        Volatility volatility,
        WaterMixing waterMixing,
        Hazards hazards,
        Optional<String> note,
        List<String> sources,
        Basis basis)
        implements Cited {
    /** Copies the lists. */
    public Solvent {
        aliases = List.copyOf(aliases);
        sources = List.copyOf(sources);
    }

    /** Of the key alone; see the contributor guide on records as keys. */
    @Override
    public int hashCode() {
        return key.hashCode();
    }

    static Solvent of(ReferenceCells row) throws IllegalReferenceException {
        return new Solvent(
                row.text("key"),
                row.text("name"),
                row.list("aliases"),
                row.optionalText("cas"),
                row.optionalText("formula"),
                row.optionalNumber("molar mass (g/mol)", 1, 2000),
                Density.of(row),
                Volatility.of(row),
                WaterMixing.of(row),
                Hazards.of(row),
                row.optionalText("note"),
                row.sources("source"),
                row.basis("basis"));
    }

    @Override
    public String table() {
        return "solvents";
    }

    /**
     * Density at 20 °C.
     *
     * @param gramsPerMillilitre g/mL
     * @param changePerKelvin change of density with temperature, g/mL per K, where known
     * @param sources keys of the bibliography
     * @param basis how firmly it is known
     */
    public record Density(
            double gramsPerMillilitre, OptionalDouble changePerKelvin, List<String> sources, Basis basis) {
        static Density of(ReferenceCells row) throws IllegalReferenceException {
            return new Density(
                    row.number("density at 20 C (g/mL)", 0.3, 5),
                    row.optionalNumber("density change per kelvin (g/mL/K)", -0.01, 0.01),
                    row.sources("density source"),
                    row.basis("density basis"));
        }
    }

    /**
     * Mutual solubility with water near 20 °C.
     *
     * @param miscible how far the two mix
     * @param inWaterMassPercent solvent in the saturated water phase, mass %; absent if miscible or not known
     * @param waterInSolventMassPercent water in the saturated solvent phase, mass %; absent if miscible or not known
     * @param sources keys of the bibliography
     * @param basis how firmly it is known
     */
    public record WaterMixing(
            Miscibility miscible,
            OptionalDouble inWaterMassPercent,
            OptionalDouble waterInSolventMassPercent,
            List<String> sources,
            Basis basis) {
        static WaterMixing of(ReferenceCells row) throws IllegalReferenceException {
            return new WaterMixing(
                    Miscibility.of(row),
                    massPercent(row, "solubility in water (mass %)"),
                    massPercent(row, "water in solvent (mass %)"),
                    row.sources("solubility source"),
                    row.basis("solubility basis"));
        }

        private static OptionalDouble massPercent(ReferenceCells row, String column) throws IllegalReferenceException {
            return row.raw(column).equals("miscible") ? OptionalDouble.empty() : row.optionalNumber(column, 0, 100);
        }
    }

    /**
     * How readily it evaporates.
     *
     * @param boilingPointCelsius at 101.325 kPa, °C
     * @param antoine vapour pressure equation
     */
    public record Volatility(double boilingPointCelsius, Optional<Antoine> antoine) {
        static Volatility of(ReferenceCells row) throws IllegalReferenceException {
            return new Volatility(row.number("boiling point (C)", -100, 500), Antoine.of(row));
        }
    }

    /**
     * What it can do to people and in a container.
     *
     * @param flashPoint closed cup as written, °C; {@code none} = none
     * @param halogenated counts as halogenated
     * @param peroxideFormer listed as one
     * @param peroxideClass list A to D
     * @param statements harmonised hazard statements
     */
    public record Hazards(
            Optional<String> flashPoint,
            boolean halogenated,
            boolean peroxideFormer,
            Optional<String> peroxideClass,
            List<String> statements) {
        private static final String FLASH_POINT = "flash point (C)";
        private static final String NO_FLASH_POINT = "none";
        private static final String BELOW = "<";
        private static final Pattern FLASH_POINT_CELL = Pattern.compile("none|<?-?\\d+(\\.\\d+)?");

        /** Copies the list. */
        public Hazards {
            statements = List.copyOf(statements);
        }

        static Hazards of(ReferenceCells row) throws IllegalReferenceException {
            return new Hazards(
                    flashPoint(row),
                    row.yes("halogenated"),
                    row.yes("peroxide former"),
                    row.optionalText("peroxide class"),
                    row.list("h-statements"));
        }

        /** True where the closed cup flash point, or what it lies below, is under a temperature in °C; false where none is known. */
        public boolean flashesBelow(double celsius) {
            return flashPoint
                    .filter(point -> !point.equals(NO_FLASH_POINT))
                    .map(point -> point.startsWith(BELOW) ? point.substring(BELOW.length()) : point)
                    .filter(point -> Double.parseDouble(point) < celsius)
                    .isPresent();
        }

        private static Optional<String> flashPoint(ReferenceCells row) throws IllegalReferenceException {
            Optional<String> cell = row.optionalText(FLASH_POINT);
            if (cell.filter(point -> !FLASH_POINT_CELL.matcher(point).matches()).isPresent()) {
                throw row.wrong(FLASH_POINT, cell.get(), "a number, < and a number, none, or -");
            }
            return cell;
        }
    }

    /** How far a solvent mixes with water. */
    public enum Miscibility {
        /** In every proportion. */
        YES,
        /** Several per cent one way or the other. */
        PARTLY,
        /** Hardly. */
        NO;

        static Miscibility of(ReferenceCells row) throws IllegalReferenceException {
            String cell = row.text("water miscible");
            return switch (cell) {
                case "yes" -> YES;
                case "partly" -> PARTLY;
                case "no" -> NO;
                default -> throw row.wrong("water miscible", cell, "yes, partly or no");
            };
        }
    }

    /**
     * Vapour pressure equation log10(p/kPa) = A - B/(T/K + C).
     *
     * @param a A, dimensionless
     * @param b B, K
     * @param c C, K
     * @param fromCelsius lower end of validity, °C
     * @param toCelsius upper end of validity, °C
     * @param sources keys of the bibliography
     * @param basis how firmly it is known
     */
    public record Antoine(
            double a, double b, double c, double fromCelsius, double toCelsius, List<String> sources, Basis basis) {
        static Optional<Antoine> of(ReferenceCells row) throws IllegalReferenceException {
            if (row.optionalText("antoine A").isEmpty()) {
                return Optional.empty();
            }
            return Optional.of(new Antoine(
                    row.number("antoine A", 1, 30),
                    row.number("antoine B (K)", 1, 20_000),
                    row.number("antoine C (K)", -300, 300),
                    row.number("antoine from (C)", -200, 500),
                    row.number("antoine to (C)", -200, 500),
                    row.sources("antoine source"),
                    row.basis("antoine basis")));
        }
    }
}
