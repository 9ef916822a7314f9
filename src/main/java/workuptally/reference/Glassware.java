package workuptally.reference;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Vessel with its nominal volume and largest permissible error at 20 °C.
 *
 * @param key key of the row
 * @param kind for example {@code measuring-cylinder}
 * @param nominalMillilitres mL
 * @param gradeClass A or B
 * @param toleranceMillilitres largest permissible error as half-width, mL; absent for a funnel
 * @param randomErrorMillilitres standard deviation allowed, mL; piston pipettes only
 * @param smallestDivisionMillilitres mL
 * @param standard norm
 * @param note remark
 * @param sources keys of the bibliography
 * @param basis how firmly the row is known: the weakest of its parts
 */
public record Glassware(
        String key,
        String kind,
        double nominalMillilitres,
        Optional<String> gradeClass,
        OptionalDouble toleranceMillilitres,
        OptionalDouble randomErrorMillilitres,
        OptionalDouble smallestDivisionMillilitres,
        String standard,
        Optional<String> note,
        List<String> sources,
        Basis basis)
        implements Cited {
    /** Copies the lists. */
    public Glassware {
        sources = List.copyOf(sources);
    }

    static Glassware of(Cells row) throws IllegalReferenceException {
        return new Glassware(
                row.text("key"),
                row.text("kind"),
                row.number("nominal (mL)", 0.0001, 100_000),
                row.optionalText("class"),
                row.optionalNumber("tolerance (mL)", 0, 1000),
                row.optionalNumber("random error (mL)", 0, 1000),
                row.optionalNumber("smallest division (mL)", 0, 1000),
                row.text("standard"),
                row.optionalText("note"),
                row.sources("source"),
                row.basis("basis"));
    }

    @Override
    public String table() {
        return "glassware";
    }
}
