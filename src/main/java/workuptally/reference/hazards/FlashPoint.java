package workuptally.reference.hazards;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import workuptally.reference.tables.Basis;
import workuptally.reference.tables.Cited;
import workuptally.reference.tables.IllegalReferenceException;
import workuptally.reference.tables.ReferenceCells;
import workuptally.reference.tables.TableFile;

/**
 * Flash point of a mixture of a solvent with water.
 *
 * @param hazard key of the {@link Hazard} of the solvent
 * @param massPercent solvent, mass % of solvent and water
 * @param celsius closed cup, °C
 * @param note how it was come by
 * @param sources keys of the bibliography
 * @param basis how firmly it is known
 */
public record FlashPoint(
        String hazard, double massPercent, double celsius, Optional<String> note, List<String> sources, Basis basis)
        implements Cited {
    private static final double LEAST_CELSIUS = -60;
    private static final double MOST_CELSIUS = 100;

    /** Copies the list. */
    public FlashPoint {
        sources = List.copyOf(sources);
    }

    /** All points in order of strength. */
    static List<FlashPoint> byStrength(TableFile file) throws IllegalReferenceException {
        return file.each(FlashPoint::of).stream()
                .sorted(Comparator.comparingDouble(FlashPoint::massPercent))
                .toList();
    }

    private static FlashPoint of(ReferenceCells row) throws IllegalReferenceException {
        return new FlashPoint(
                row.text("hazard"),
                row.number("mass (%)", 0, 100),
                row.number("flash point (C)", LEAST_CELSIUS, MOST_CELSIUS),
                row.optionalText("note"),
                row.sources("source"),
                row.basis("basis"));
    }

    @Override
    public String table() {
        return "flash-points";
    }

    @Override
    public String key() {
        return hazard + " " + massPercent;
    }
}
