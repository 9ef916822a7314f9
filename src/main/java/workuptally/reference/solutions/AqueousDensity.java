package workuptally.reference.solutions;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import workuptally.reference.tables.Basis;
import workuptally.reference.tables.Cited;
import workuptally.reference.tables.IllegalReferenceException;
import workuptally.reference.tables.ReferenceCells;
import workuptally.reference.tables.TableFile;

/**
 * Density of the aqueous solutions of one solute at 20 °C.
 *
 * <p>Between the table's points the density is taken as linear in mass per cent, from pure water to the strongest point; outside there is
 * no answer. The points lie close enough that the chord differs from the curve by less than 0.001 g/mL for the salts of a workup.
 *
 * @param solute full name
 * @param formula formula
 * @param molarMassGramsPerMole g/mol of the anhydrous solute
 * @param points in order of mass per cent
 * @param sources keys of the bibliography of all points
 * @param basis the weakest of all points
 */
public record AqueousDensity(
        String solute,
        String formula,
        double molarMassGramsPerMole,
        List<Point> points,
        List<String> sources,
        Basis basis)
        implements Cited {
    /** Density of water at 20 °C, g/mL. Source: CRC Handbook of Chemistry and Physics, density of water. */
    public static final double WATER_GRAMS_PER_MILLILITRE = 0.9982;

    /** Halvings of the range of strengths; 60 exhaust the digits of a double. */
    private static final int BISECTIONS = 60;

    /** Copies and sorts the points. */
    public AqueousDensity {
        points = points.stream()
                .sorted(Comparator.comparingDouble(Point::massPercent))
                .toList();
        sources = List.copyOf(sources);
    }

    /**
     * One point of the table.
     *
     * @param massPercent solute, mass %
     * @param gramsPerMillilitre density, g/mL
     * @param saturated whether this is the saturated solution
     * @param basis how firmly the point is known
     */
    public record Point(double massPercent, double gramsPerMillilitre, boolean saturated, Basis basis) {}

    /** One table a solute, of a file that has a row for each strength. */
    static List<AqueousDensity> ofAll(TableFile file) throws IllegalReferenceException {
        Map<String, List<ReferenceCells>> bySolute = new LinkedHashMap<>();
        for (ReferenceCells row : file.rows()) {
            bySolute.computeIfAbsent(row.text("solute"), solute -> new ArrayList<>())
                    .add(row);
        }
        List<AqueousDensity> read = new ArrayList<>();
        for (List<ReferenceCells> rows : bySolute.values()) {
            read.add(of(rows));
        }
        return List.copyOf(read);
    }

    private static AqueousDensity of(List<ReferenceCells> rows) throws IllegalReferenceException {
        List<Point> points = new ArrayList<>();
        List<String> sources = new ArrayList<>();
        Basis weakest = Basis.SOURCE;
        for (ReferenceCells row : rows) {
            Basis basis = row.basis("basis");
            points.add(new Point(
                    row.number("mass (%)", 0, 100),
                    row.number("density at 20 C (g/mL)", 0.6, 3),
                    saturated(row),
                    basis));
            weakest = weakest.weaker(basis);
            for (String source : row.sources("source")) {
                if (!sources.contains(source)) {
                    sources.add(source);
                }
            }
        }
        ReferenceCells first = rows.get(0);
        return new AqueousDensity(
                first.text("solute"),
                first.text("formula"),
                first.number("molar mass (g/mol)", 1, 2000),
                points,
                sources,
                weakest);
    }

    private static boolean saturated(ReferenceCells row) throws IllegalReferenceException {
        String cell = row.text("kind");
        return switch (cell) {
            case "saturated" -> true;
            case "table point" -> false;
            default -> throw row.wrong("kind", cell, "table point or saturated");
        };
    }

    /** The saturated solution, where the table has one. */
    public Optional<Point> saturated() {
        return points.stream().filter(Point::saturated).findFirst();
    }

    /** Strongest solution of the table, mass %. */
    public double strongestMassPercent() {
        return points.get(points.size() - 1).massPercent();
    }

    /**
     * Density at a strength, linear between the points.
     *
     * @param massPercent solute, mass %
     * @return g/mL at 20 °C; empty below 0 or above {@link #strongestMassPercent()}
     */
    public OptionalDouble densityGramsPerMillilitre(double massPercent) {
        if (!(massPercent >= 0 && massPercent <= strongestMassPercent())) {
            return OptionalDouble.empty();
        }
        double belowPercent = 0;
        double belowDensity = WATER_GRAMS_PER_MILLILITRE;
        for (Point point : points) {
            if (massPercent <= point.massPercent()) {
                double span = point.massPercent() - belowPercent;
                double share = span == 0 ? 1 : (massPercent - belowPercent) / span;
                return OptionalDouble.of(belowDensity + share * (point.gramsPerMillilitre() - belowDensity));
            }
            belowPercent = point.massPercent();
            belowDensity = point.gramsPerMillilitre();
        }
        throw new IllegalStateException("points of " + solute + " are not in order");
    }

    /** How firmly the density at a strength is known: by the weaker of the points beside it. */
    Basis basisAt(double massPercent) {
        Basis below = Basis.SOURCE;
        for (Point point : points) {
            if (massPercent <= point.massPercent()) {
                return massPercent == point.massPercent() ? point.basis() : below.weaker(point.basis());
            }
            below = point.basis();
        }
        return basis;
    }

    /**
     * Amount concentration c = w·ρ·1000/M at a strength.
     *
     * @param massPercent solute, mass %
     * @return mol/L at 20 °C; empty outside the table
     */
    public OptionalDouble molarityMolesPerLitre(double massPercent) {
        OptionalDouble density = densityGramsPerMillilitre(massPercent);
        return density.isEmpty()
                ? density
                : OptionalDouble.of(massPercent / 100 * density.getAsDouble() * 1000 / molarMassGramsPerMole);
    }

    /**
     * Strength at an amount concentration; the inverse of {@link #molarityMolesPerLitre}.
     *
     * @param molesPerLitre mol/L at 20 °C
     * @return mass %; empty below 0 or above the strongest solution of the table
     */
    public OptionalDouble massPercentAt(double molesPerLitre) {
        double high = strongestMassPercent();
        if (!(molesPerLitre >= 0 && molesPerLitre <= molarityMolesPerLitre(high).orElseThrow())) {
            return OptionalDouble.empty();
        }
        double low = 0;
        for (int i = 0; i < BISECTIONS; i++) {
            double middle = (low + high) / 2;
            if (molarityMolesPerLitre(middle).orElseThrow() < molesPerLitre) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return OptionalDouble.of((low + high) / 2);
    }

    @Override
    public String table() {
        return "aqueous-densities";
    }

    @Override
    public String key() {
        return solute;
    }
}
